// SPDX-License-Identifier: BSL-1.0
#include <algorithm>
#include <cmath>
#include <random>
#include <tankwright/life/water_changes.hpp>

#include "support/check.hpp"
#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tl = tankwright::life;

namespace {

const evidence by_hand{"tankwright::life::ammonia_with_changes", kind::identity, "worked by hand"};
const evidence summed{"tankwright::life::ammonia_with_changes", kind::identity,
                      "the balance followed in small steps, change by change"};

/// 100 L, 0.5 g of nitrogen a day, a third changed every second day, for 12 days.
tl::changed_tank tank() {
  return {.net = litres(100.0),
          .load = tl::nitrogen_load::from_nitrogen(grams_per_day(0.5)),
          .part = fraction(1.0 / 3.0),
          .every = days(2.0),
          .lasts = days(12.0)};
}

double milligrams(const tl::changed_tank_course& c) { return in_milligrams_per_litre(c.highest.as_nitrogen()); }

/// The highest level [mg/L] of a course in steps of a minute, fed evenly or by meals that come at once every `meal` days.
double followed(double litres, double grams_a_day, double part, double every, double lasts, double k, double meal) {
  const int a_day = 1440, steps = static_cast<int>(std::lround(lasts * a_day));
  const int change = static_cast<int>(std::lround(every * a_day));
  const int feed = static_cast<int>(std::lround(meal * a_day));
  double c = 0.0, top = 0.0;
  for (int i = 0; i < steps; ++i) {
    if (i > 0 && i % change == 0) c *= 1.0 - part;
    if (feed > 0 && i % feed == 0) c += 1e3 * grams_a_day * meal / litres;
    top = std::max(top, c);
    const double made = feed > 0 ? 0.0 : 1e3 * grams_a_day / litres / a_day;
    c = (c + 0.5 * made) * std::exp(-k / a_day) + 0.5 * made;
    top = std::max(top, c);
  }
  return top;
}

}  // namespace

TEST_CASE("water changes: before the n-th change, by hand") {
  // 10 mg/L come in between two changes, of which two thirds stay: 10 (1 - (2/3)^6)/(1/3).
  const auto c = tl::ammonia_with_changes(tank());
  TW_CHECK(by_hand, milligrams(c), 30.0 * (1.0 - std::pow(2.0 / 3.0, 6.0)), relative(1e-12));
  TW_CHECK(by_hand, c.changes, 6.0, within(0.0));
  TW_CHECK(by_hand, c.changed, litres(200.0), relative(1e-12));
  // Without a change all of it stays: 12 days of 5 mg/L; all of it changed: what came since.
  auto none = tank();
  none.part = fraction(0.0);
  TW_CHECK(by_hand, milligrams(tl::ammonia_with_changes(none)), 60.0, relative(1e-12));
  auto all = tank();
  all.part = fraction(1.0);
  TW_CHECK(by_hand, milligrams(tl::ammonia_with_changes(all)), 10.0, relative(1e-12));
  // It ends before the first change.
  auto brief = tank();
  brief.lasts = days(1.5);
  TW_CHECK(by_hand, milligrams(tl::ammonia_with_changes(brief)), 7.5, relative(1e-12));
  TW_CHECK(by_hand, tl::ammonia_with_changes(brief).changes, 0.0, within(0.0));
  brief.part = fraction(1.0);
  TW_CHECK(by_hand, milligrams(tl::ammonia_with_changes(brief)), 7.5, relative(1e-12));
  // A filter that takes in proportion, never changed: L/(k V) in the end.
  auto filtered = none;
  filtered.removal = per_day(2.0);
  filtered.lasts = days(3000.0);
  TW_CHECK(by_hand, milligrams(tl::ammonia_with_changes(filtered)), 2.5, relative(1e-9));
}

TEST_CASE("water changes: random tanks against the balance followed in small steps") {
  std::mt19937 random{20261129};
  const auto between = [&](double a, double b) { return std::uniform_real_distribution<double>{a, b}(random); };
  for (int i = 0; i < 60; ++i) {
    const double every = 0.25 * std::ceil(between(0.0, 20.0)), lasts = 0.25 * std::ceil(between(0.0, 160.0));
    const double part = between(0.0, 1.0), k = i % 3 == 0 ? 0.0 : between(0.0, 3.0), load = between(0.01, 2.0);
    const tl::changed_tank t{.net = litres(150.0),
                             .load = tl::nitrogen_load::from_nitrogen(grams_per_day(load)),
                             .part = fraction(part),
                             .every = days(every),
                             .lasts = days(lasts),
                             .removal = per_day(k)};
    CAPTURE(every);
    CAPTURE(lasts);
    CAPTURE(part);
    TW_CHECK(summed, milligrams(tl::ammonia_with_changes(t)), followed(150.0, load, part, every, lasts, k, 0.0),
             relative(2e-3));
  }
}

TEST_CASE("water changes: meals at once stay below the bound, and come near it") {
  const evidence bound{"tankwright::life::ammonia_with_changes", kind::property, "above every train of meals"};
  std::mt19937 random{29};
  const auto between = [&](double a, double b) { return std::uniform_real_distribution<double>{a, b}(random); };
  double nearest = 0.0;
  for (int i = 0; i < 60; ++i) {
    const double every = 0.25 * std::ceil(between(0.0, 20.0)), lasts = 0.25 * std::ceil(between(40.0, 160.0));
    const double meal = std::ceil(between(1.0, 7.0)), part = between(0.0, 1.0), load = between(0.01, 2.0);
    tl::changed_tank t{.net = litres(150.0),
                       .load = tl::nitrogen_load::from_nitrogen(grams_per_day(load)),
                       .part = fraction(part),
                       .every = days(every),
                       .lasts = days(lasts)};
    t.largest_meal = grams(load * meal);
    const double most = milligrams(tl::ammonia_with_changes(t));
    const double seen = followed(150.0, load, part, every, lasts, 0.0, meal);
    TW_HOLDS(bound, seen <= most * (1.0 + 1e-9));
    nearest = std::max(nearest, seen / most);
  }
  CHECK(nearest > 0.9);
}

TEST_CASE("water changes: no jump where a change falls on the last moment, and small removals") {
  const evidence smooth{"tankwright::life::ammonia_with_changes", kind::property, "continuous"};
  auto a = tank(), b = tank();
  a.lasts = days(12.0 - 1e-9);
  b.lasts = days(12.0 + 1e-9);
  TW_CHECK(smooth, milligrams(tl::ammonia_with_changes(a)), milligrams(tl::ammonia_with_changes(b)), relative(1e-8));
  auto still = tank();
  still.removal = per_day(1e-12);
  TW_CHECK(smooth, milligrams(tl::ammonia_with_changes(still)), milligrams(tl::ammonia_with_changes(tank())),
           relative(1e-9));
  for (const double x : {1e-12, 1e-6, 0.1, 3.0, 700.0}) {
    TW_CHECK(smooth, tl::kernel::mean_left(x), static_cast<double>(tl::kernel::mean_left<long double>(x)),
             relative(1e-14));
  }
  TW_CHECK(smooth, tl::kernel::sum_of_powers(-1e-9, 1e6),
           static_cast<double>(tl::kernel::sum_of_powers<long double>(-1e-9L, 1e6L)), relative(1e-12));
}

TEST_CASE("water changes: what cannot be is refused") {
  const auto refused = [](auto change) {
    auto t = tank();
    change(t);
    CHECK_THROWS_AS((void)tl::ammonia_with_changes(t), invalid_input);
  };
  refused([](auto& t) { t.net = litres(0.0); });
  refused([](auto& t) { t.part = fraction(1.01); });
  refused([](auto& t) { t.part = fraction(-0.01); });
  refused([](auto& t) { t.every = days(0.0); });
  refused([](auto& t) { t.lasts = days(0.0); });
  refused([](auto& t) { t.largest_meal = grams(-1.0); });
  refused([](auto& t) { t.removal = per_day(std::nan("")); });
  refused([](auto& t) { t.load = tl::nitrogen_load::from_nitrogen(grams_per_day(-1.0)); });
}

TEST_CASE("water changes: random tanks in closed form, change by change") {
  std::mt19937 random{7};
  const auto between = [&](double a, double b) { return std::uniform_real_distribution<double>{a, b}(random); };
  for (int i = 0; i < 60; ++i) {
    const double every = between(0.1, 5.0), lasts = between(0.05, 60.0), part = between(0.0, 1.0);
    const double k = i % 3 == 0 ? 0.0 : between(0.01, 3.0), load = between(0.01, 2.0), meal = between(0.0, 1.0);
    const tl::changed_tank t{.net = litres(150.0),
                             .load = tl::nitrogen_load::from_nitrogen(grams_per_day(load)),
                             .part = fraction(part),
                             .every = days(every),
                             .lasts = days(lasts),
                             .largest_meal = grams(meal),
                             .removal = per_day(k)};
    CAPTURE(i);
    const double rise = 1e3 * load / 150.0;  // mg/L a day
    const auto on = [&](double c, double time) {
      return k == 0.0 ? c + rise * time : rise / k + (c - rise / k) * std::exp(-k * time);
    };
    double c = 0.0, top = 0.0, now = 0.0, changes = 0.0;
    while (now + every <= lasts) {
      c = on(c, every);
      now += every;
      top = std::max(top, c);
      c *= 1.0 - part;
      changes += 1.0;
    }
    top = std::max(top, on(c, lasts - now)) + 1e3 * meal / 150.0;
    const auto found = tl::ammonia_with_changes(t);
    TW_CHECK(summed, milligrams(found), top, relative(1e-10));
    TW_CHECK(summed, found.changes, changes, within(0.0));
    TW_CHECK(summed, found.changed, litres(150.0 * part * changes), relative(1e-12));
  }
}

TEST_CASE("water changes: what is taken and what is refused") {
  const auto with = [](auto change, double x) {
    auto t = tank();
    change(t, x);
    return tl::ammonia_with_changes(t);
  };
  const auto net = [](auto& t, double x) { t.net = litres(x); };
  const auto load = [](auto& t, double x) { t.load = tl::nitrogen_load::from_nitrogen(grams_per_day(x)); };
  const auto part = [](auto& t, double x) { t.part = fraction(x); };
  const auto every = [](auto& t, double x) { t.every = days(x); };
  const auto lasts = [](auto& t, double x) { t.lasts = days(x); };
  const auto meal = [](auto& t, double x) { t.largest_meal = grams(x); };
  const auto removal = [](auto& t, double x) { t.removal = per_day(x); };
  check_ranges("life::ammonia_with_changes",
               {TW_RANGE("net volume", 1e-3, 1e10, with(net, x)),
                TW_RANGE("nitrogen load", 0.0, 1e9, with(load, x)),
                TW_RANGE("part changed", 0.0, 1.0, with(part, x)),
                TW_RANGE("time between changes", 1e-3, 3650.0, with(every, x)),
                {"time in it", 0.0, 36500.0, [&](double x) { (void)with(lasts, x); }, true},
                TW_RANGE("nitrogen of a meal", 0.0, 1e9, with(meal, x)),
                TW_RANGE("removal", 0.0, 1e6, with(removal, x))});
}
