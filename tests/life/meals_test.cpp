// SPDX-License-Identifier: BSL-1.0
#include <array>
#include <cmath>
#include <tankwright/life/meals.hpp>

#include "support/check.hpp"
#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using life::nitrogen_load;
using life::regular_meal;

namespace {

const evidence capacity{"tankwright::life::capacity_for_meals", kind::identity, "an own integration of the balance"};
const evidence highest{"tankwright::life::highest_ammonia", kind::identity, "an own integration of the balance"};

nitrogen_load per_day_of(double grams) { return nitrogen_load::from_nitrogen(grams_per_day(grams)); }

/// The highest level [mg/L] of a tank of `litres` that is fed for a day of every `every` days, after many rounds: the
/// balance dC/dt = P/V - R(C)/V by classical Runge-Kutta, R(C) = min(a C, b) [mg/d].
struct meal_train {
  double mean;   // mg/d
  double every;  // d
};
template <std::size_t N>
double integrated(const std::array<meal_train, N>& meals, double slope, double plateau, double litres, double period,
                  int rounds) {
  const int steps = 4200;  // a round, so that meals begin and end on a step
  const double h = period / steps;
  double c = 0.0, top = 0.0;
  for (int i = 0; i < rounds * steps; ++i) {
    const double middle = (i + 0.5) * h;
    double fed = 0.0;
    for (const auto& m : meals) {
      const double in_round = std::fmod(middle, m.every);
      // The day of a meal ends where its round does, so that several meals end theirs together.
      if (in_round > m.every - 1.0) fed += m.mean * m.every;
    }
    const auto slope_at = [&](double x) { return (fed - std::fmin(slope * x, plateau)) / litres; };
    const double k1 = slope_at(c), k2 = slope_at(c + 0.5 * h * k1), k3 = slope_at(c + 0.5 * h * k2),
                 k4 = slope_at(c + h * k3);
    c += h / 6.0 * (k1 + 2.0 * k2 + 2.0 * k3 + k4);
    top = i > (rounds - 1) * steps ? std::fmax(top, c) : top;
  }
  return top;
}

}  // namespace

TEST_CASE("meals: what a filter must take at a level is what holds that level in an own integration") {
  // 0.2 g/d of nitrogen as one meal a week, and 0.1 g/d daily, into 2 000 L, to stay below 0.1 mg/L.
  const std::array meals{regular_meal{.mean = per_day_of(0.2), .every = days(7.0)},
                         regular_meal{.mean = per_day_of(0.1)}};
  const auto level = water::total_ammonia::from_nitrogen(milligrams_per_litre(0.1));
  const double n = in_grams_per_day(life::capacity_for_meals(meals, level, litres(2000.0)).as_nitrogen()) * 1e3;
  CHECK(n > 300.0);
  CHECK(n < 1500.0);
  const std::array trains{meal_train{200.0, 7.0}, meal_train{100.0, 1.0}};
  const double top = integrated(trains, n / 0.1, 1e9, 2000.0, 7.0, 30);
  TW_CHECK(capacity, milligrams_per_litre(top), milligrams_per_litre(0.1), relative(1e-6));
}

TEST_CASE("meals: daily food asks for its mean, a meal into little water for all of it in a day") {
  const auto level = water::total_ammonia::from_nitrogen(milligrams_per_litre(0.1));
  const auto asked = [&](duration every, volume net) {
    const std::array meals{regular_meal{.mean = per_day_of(0.5), .every = every}};
    return life::capacity_for_meals(meals, level, net).as_nitrogen();
  };
  TW_CHECK(capacity, asked(days(1.0), litres(2000.0)), grams_per_day(0.5), relative(1e-14));
  TW_CHECK(capacity, asked(hours(6.0), litres(2000.0)), grams_per_day(0.5), relative(1e-14));
  TW_CHECK(capacity, asked(days(7.0), litres(1.0)), grams_per_day(3.5), relative(1e-9));  // nothing thins it out
  TW_CHECK(capacity, asked(days(7.0), litres(1e9)), grams_per_day(0.5), relative(1e-4));  // all of it does
  TW_CHECK(capacity, asked(days(1.0 + 1e-9), litres(10.0)), grams_per_day(0.5), relative(1e-8));  // no jump at a day
  double before = 0.0;
  for (double every = 0.5; every < 30.0; every *= 1.3) {
    const double now = asked(days(every), litres(2000.0)).value();
    TW_HOLDS(capacity, now >= before);  // rarer and larger is never easier
    before = now;
  }
  CHECK(life::capacity_for_meals({}, level, litres(1.0)).as_nitrogen().value() == 0.0);
}

TEST_CASE("meals: the highest ammonia of an own integration, in proportion and past it") {
  const auto at = celsius(24.0);
  const double rate = 0.28;  // g/(m2 d) at 24 degC and 1 mg/L, Nijhof and Bovendeur 1990
  const auto peak = [&](double mean, double every, double film) {
    const std::array meals{regular_meal{.mean = per_day_of(mean), .every = days(every)}};
    return life::highest_ammonia(
        {.meals = meals, .film = square_metres(film), .net = litres(2000.0), .temperature = at});
  };
  const auto own = [&](double mean, double every, double film, int rounds) {
    const std::array trains{meal_train{1e3 * mean, every}};
    return integrated(trains, 1e3 * rate * film, 1e3 * rate * film, 2000.0, every, rounds);
  };
  TW_CHECK(highest, peak(0.2, 7.0, 20.0)->as_nitrogen(), milligrams_per_litre(own(0.2, 7.0, 20.0, 30)), relative(1e-6));
  TW_CHECK(highest, peak(0.2, 1.0, 20.0)->as_nitrogen(), milligrams_per_litre(0.2 / (rate * 20.0)), relative(1e-12));
  // Past 1 mg/L the film works no faster: never below the integration.
  TW_HOLDS(highest, in_milligrams_per_litre(peak(0.6, 7.0, 4.0)->as_nitrogen()) >= own(0.6, 7.0, 4.0, 60));
  CHECK(own(0.6, 7.0, 4.0, 60) > 1.0);
  CHECK_FALSE(peak(0.6, 7.0, 2.0).has_value());  // 0.56 g/d at most
  CHECK_FALSE(peak(0.6, 1.0, 0.0).has_value());
  CHECK(peak(0.0, 7.0, 0.0)->as_nitrogen().value() == 0.0);
}

TEST_CASE("meals: the same level as a steady load where food is given daily") {
  const evidence steady{"tankwright::life::highest_ammonia", kind::property, "the balance of a steady load"};
  const std::array meals{regular_meal{.mean = per_day_of(0.6)}};
  for (const double film : {3.0, 5.0, 20.0, 200.0}) {
    const std::array surfaces{life::filter_surface{.wet = square_metres(film)}};
    const auto level =
        life::steady_ammonia({.load = per_day_of(0.6), .surfaces = surfaces, .temperature = celsius(21.0)});
    const auto fed = life::highest_ammonia(
        {.meals = meals, .film = square_metres(film), .net = litres(700.0), .temperature = celsius(21.0)});
    TW_CHECK(steady, fed->as_nitrogen(), level.central->as_nitrogen(), relative(1e-12));
  }
}

TEST_CASE("meals: what cannot be is refused") {
  const auto with = [](double every) {
    const std::array meals{regular_meal{.mean = per_day_of(0.6), .every = days(every)}};
    return life::capacity_for_meals(meals, water::total_ammonia::from_nitrogen(milligrams_per_litre(0.1)),
                                    litres(700.0));
  };
  CHECK_THROWS_AS((void)with(0.0), invalid_input);
  CHECK_THROWS_AS((void)with(-1.0), invalid_input);
  CHECK_THROWS_AS((void)with(std::nan("")), invalid_input);
  CHECK_THROWS_AS((void)with(4000.0), invalid_input);
  const std::array meals{regular_meal{.mean = per_day_of(0.6)}};
  CHECK_THROWS_AS((void)life::highest_ammonia(
                      {.meals = meals, .film = square_metres(1.0), .net = litres(1.0), .temperature = celsius(33.0)}),
                  out_of_range);
}

TEST_CASE("meals: what a filter must take, solved a second time by halving") {
  // Highest over mean of a first-order removal k [1/d] that is fed evenly for a day of every T days.
  const auto over_mean = [](double k, double every) {
    return every <= 1.0 ? 1.0 : every * (1.0 - std::exp(-k)) / (1.0 - std::exp(-k * every));
  };
  for (const double net : {30.0, 700.0, 20000.0}) {
    for (const double level : {0.02, 0.4}) {
      const std::array meals{regular_meal{.mean = per_day_of(0.2), .every = days(7.0)},
                             regular_meal{.mean = per_day_of(0.05), .every = days(2.5)},
                             regular_meal{.mean = per_day_of(0.3)}};
      const double holds = level * net * 1e-3;  // g
      double low = 0.55, high = 5.0;
      for (int i = 0; i < 100; ++i) {
        const double n = 0.5 * (low + high), k = n / holds;
        const double asked = 0.2 * over_mean(k, 7.0) + 0.05 * over_mean(k, 2.5) + 0.3;
        (n < asked ? low : high) = n;
      }
      const auto found = life::capacity_for_meals(
          meals, water::total_ammonia::from_nitrogen(milligrams_per_litre(level)), litres(net));
      TW_CHECK(capacity, found.as_nitrogen(), grams_per_day(low), relative(1e-11));
    }
  }
}

TEST_CASE("meals: the highest ammonia, solved a second time by halving") {
  const auto over_mean = [](double k, double every) {
    return every * (1.0 - std::exp(-k)) / (1.0 - std::exp(-k * every));
  };
  for (const double film_area : {1.3, 2.0, 6.0, 40.0}) {
    for (const double t : {18.0, 27.0}) {
      const std::array meals{regular_meal{.mean = per_day_of(0.3), .every = days(3.5)}};
      const double slope = 0.28 * std::pow(1.04275, t - 24.0), flat = 0.28 * std::pow(1.01108, t - 24.0);
      double low = 1e-6, high = 1e3;  // mg/L
      for (int i = 0; i < 200; ++i) {
        const double c = std::sqrt(low * high), takes = film_area * std::fmin(slope * c, flat);
        const double asked = 0.3 * over_mean(takes / (c * 0.5), 3.5);  // 500 L: 0.5 g for a mg/L
        (takes < asked ? low : high) = c;
      }
      const auto found = life::highest_ammonia(
          {.meals = meals, .film = square_metres(film_area), .net = litres(500.0), .temperature = celsius(t)});
      TW_CHECK(highest, found->as_nitrogen(), milligrams_per_litre(low), relative(1e-10));
    }
  }
}

TEST_CASE("meals: what is taken and what is refused") {
  const auto ask = [](double mean, double every, double level, double net) {
    const std::array meals{regular_meal{.mean = per_day_of(mean), .every = days(every)}};
    return life::capacity_for_meals(meals, water::total_ammonia::from_nitrogen(milligrams_per_litre(level)),
                                    litres(net));
  };
  check_ranges("life::capacity_for_meals",
               {TW_RANGE("nitrogen load", 0.0, 1e9, ask(x, 1.0, 0.1, 1e3)),
                {"time between meals", 0.0, 3650.0, [&](double x) { (void)ask(1.0, x, 0.1, 1e3); }, true},
                TW_RANGE("ammonia", 1e-12, 1e12, ask(1.0, 1.0, x, 1e3)),
                TW_RANGE("net volume", 1e-3, 1e10, ask(1.0, 1.0, 0.1, x))});
  const auto fed = [](double mean, double every, double film, double net, double t, double plateau = 0.28) {
    const std::array meals{regular_meal{.mean = per_day_of(mean), .every = days(every)}};
    life::film of = life::seawater_film;
    of.plateau = grams_per_square_metre_day(plateau);
    return life::highest_ammonia(
        {.meals = meals, .film = square_metres(film), .net = litres(net), .temperature = celsius(t), .of = of});
  };
  check_ranges("life::highest_ammonia",
               {TW_RANGE("nitrogen load", 0.0, 1e9, fed(x, 1.0, 1.0, 1e3, 24.0)),
                {"time between meals", 0.0, 3650.0, [&](double x) { (void)fed(1.0, x, 1.0, 1e3, 24.0); }, true},
                TW_RANGE("area", 0.0, 1e9, fed(1.0, 1.0, x, 1e3, 24.0)),
                TW_RANGE("net volume", 1e-3, 1e10, fed(1.0, 1.0, 1.0, x, 24.0)),
                TW_RANGE("temperature", 10.0, 30.0, fed(1.0, 1.0, 1.0, 1e3, x)),
                TW_RANGE("largest rate of the film", 1e-6, 1e6, fed(1.0, 1.0, 1.0, 1e3, 24.0, x))});
}

TEST_CASE("meals: a removal so slow that its powers lose their digits") {
  // (T/T1)(1 - e^(-k T1))/(1 - e^(-k T)) in extended precision.
  const auto over_mean = [](double k, double every) {
    const std::array one{
        regular_meal{.mean = nitrogen_load::from_nitrogen(mass_flow::from_value(1.0)), .every = days(every)}};
    return life::detail::asked_by(one, k);
  };
  CHECK(over_mean(0.0, 7.0) == 1.0);
  for (const double kt : {1e-12, 0.3e-9, 0.95e-9, 1.05e-9, 1e-7, 1e-3, 1.0, 50.0}) {
    for (const double every : {1.5, 7.0, 30.0}) {
      const long double t = static_cast<long double>(every) * 86400.0L, k = static_cast<long double>(kt) / t;
      const long double exact = static_cast<long double>(every) * std::expm1(-k * 86400.0L) / std::expm1(-k * t);
      TW_CHECK(capacity, over_mean(kt / (every * 86400.0), every), static_cast<double>(exact), relative(5e-15));
    }
  }
}

TEST_CASE("meals: a film in half order, solved a second time by halving") {
  // R = min(b sqrt(C), p) [g/d] at C [mg/L] into 500 L, where b sqrt(C) would be p at 0.8 mg/L and 20 degC.
  const auto over_mean = [](double k, double every) {
    return every <= 1.0 ? 1.0 : every * (1.0 - std::exp(-k)) / (1.0 - std::exp(-k * every));
  };
  life::film half = life::seawater_film;
  half.order = life::film_order::square_root;
  half.plateau_at = celsius(20.0);
  half.plateau_from = water::total_ammonia::from_nitrogen(milligrams_per_litre(0.8));
  for (const double every : {1.0, 3.5, 20.0}) {
    for (const double film_area : {1.3, 2.0, 6.0, 40.0, 3000.0}) {
      for (const double t : {18.0, 27.0}) {
        const std::array meals{regular_meal{.mean = per_day_of(0.3), .every = days(every)}};
        const double slope = 0.28 * std::pow(1.04275, t - 20.0), flat = 0.28 * std::pow(1.01108, t - 20.0);
        double low = 1e-9, high = 1e4;  // mg/L
        for (int i = 0; i < 200; ++i) {
          const double c = std::sqrt(low * high), takes = film_area * std::fmin(slope * std::sqrt(c / 0.8), flat);
          (takes < 0.3 * over_mean(takes / (c * 0.5), every) ? low : high) = c;
        }
        const auto found = life::highest_ammonia({.meals = meals,
                                                  .film = square_metres(film_area),
                                                  .net = litres(500.0),
                                                  .temperature = celsius(t),
                                                  .of = half});
        TW_CHECK(highest, found->as_nitrogen(), milligrams_per_litre(low), relative(1e-9));
      }
    }
  }
}

TEST_CASE("meals: as much as the film takes at its plateau is held there") {
  const auto most = nitrogen_load::from_nitrogen(mass_flow::from_value(life::seawater_film.plateau->value()));
  const std::array meals{regular_meal{.mean = most}};
  const auto level = life::highest_ammonia(
      {.meals = meals, .film = square_metres(1.0), .net = litres(700.0), .temperature = celsius(24.0)});
  REQUIRE(level);
  TW_CHECK(highest, level->as_nitrogen(), milligrams_per_litre(1.0), relative(1e-12));
}

TEST_CASE("meals: what the plateau takes in a mean is held at no level when it comes once a week") {
  const auto most = nitrogen_load::from_nitrogen(mass_flow::from_value(life::seawater_film.plateau->value()));
  const auto held = [&](nitrogen_load mean, double every, double film, life::film_order order) {
    const std::array meals{regular_meal{.mean = mean, .every = days(every)}};
    life::film of = life::seawater_film;
    of.order = order;
    return life::highest_ammonia(
        {.meals = meals, .film = square_metres(film), .net = litres(700.0), .temperature = celsius(24.0), .of = of});
  };
  for (const auto order : {life::film_order::linear, life::film_order::square_root}) {
    CHECK_FALSE(held(most, 7.0, 1.0, order));
    CHECK_FALSE(held(most, 1.0, 0.9999, order));
    CHECK_FALSE(held(most, 1.0, 0.0, order));
    TW_CHECK(highest, held(most, 1.0, 1.0, order)->as_nitrogen(), milligrams_per_litre(1.0), relative(1e-12));
    REQUIRE(held(per_day_of(0.0), 7.0, 0.0, order));
    CHECK(held(per_day_of(0.0), 7.0, 0.0, order)->as_nitrogen().value() == 0.0);
  }
  // What 1 m2 takes at 1 mg/L, on 100 m2: at a hundredth of it, with the square root at a ten-thousandth.
  TW_CHECK(highest, held(most, 1.0, 100.0, life::film_order::linear)->as_nitrogen(), milligrams_per_litre(1e-2),
           relative(1e-12));
  TW_CHECK(highest, held(most, 1.0, 100.0, life::film_order::square_root)->as_nitrogen(), milligrams_per_litre(1e-4),
           relative(1e-12));
  TW_CHECK(highest, held(per_day_of(1e-16), 1.0, 1e4, life::film_order::linear)->as_nitrogen(),
           milligrams_per_litre(1e-16 / 2800.0), relative(1e-12));
}

TEST_CASE("meals: into next to no water, food of every hour counts once and a weekly meal seven times") {
  const std::array meals{regular_meal{.mean = per_day_of(0.2), .every = days(7.0)},
                         regular_meal{.mean = per_day_of(0.3), .every = hours(6.0)}};
  const auto asked =
      life::capacity_for_meals(meals, water::total_ammonia::from_nitrogen(milligrams_per_litre(1e-6)), litres(1.0));
  TW_CHECK(capacity, asked.as_nitrogen(), grams_per_day(1.7), relative(1e-12));
}
