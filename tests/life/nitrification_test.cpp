// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <vector>

#include <tankwright/life/nitrification.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twl = tankwright::life;

namespace {

const evidence rate_grows{"tankwright::life::nitrification_rate", kind::property,
                          "grows with ammonia, and with warmth"};
const evidence plateau{"tankwright::life::nitrification_rate", kind::property, "continuous where the plateau starts"};
const evidence capacity_is_sum{"tankwright::life::capacity_of", kind::identity, "sum of area times rate"};
const evidence seeded{"tankwright::life::capacity_of", kind::identity, "half seeded is half of the mature capacity"};
const evidence balance{"tankwright::life::steady_ammonia", kind::identity,
                       "at the steady level the capacity is the load"};
const evidence share{"tankwright::life::steady_ammonia", kind::identity,
                     "share = load over the capacity on the plateau"};
const evidence grains{"tankwright::life::grain_surface", kind::identity,
                      "6 (1 - n)/d: 0.2 mm, n = 0.4 gives 18000 m2/m3"};

water::total_ammonia ammonia(double milligrams) {
  return water::total_ammonia::from_nitrogen(milligrams_per_litre(milligrams));
}
twl::nitrogen_load load(double grams) { return twl::nitrogen_load::from_nitrogen(grams_per_day(grams)); }

double areal_rate(double level, double t, const twl::film& film = twl::seawater_film,
                  range_policy policy = range_policy::published) {
  return in_grams_per_square_metre_day(
      twl::nitrification_rate({.ammonia = ammonia(level), .temperature = celsius(t), .film = film}, policy).central);
}
const twl::film& film_of(const reference_row& row) {
  return !row.has("sea") || row["sea"] == 1.0 ? twl::seawater_film : twl::freshwater_film;
}

}  // namespace

TEST_CASE("nitrification: reference table") {
  const auto areal = [](const reference_row& row) {
    if (row.has("end")) {
      const auto band = twl::nitrification_rate(
          {.ammonia = ammonia(row["TAN"]), .temperature = celsius(row["t"]), .film = film_of(row)});
      return in_grams_per_square_metre_day(row.text("end") == "low" ? band.low : band.high);
    }
    const double here = areal_rate(row["TAN"], row["t"], film_of(row));
    return row.has("over") ? here / areal_rate(row["TAN"], row["over"], film_of(row)) : here;
  };
  const auto area_for = [](const reference_row& row) {
    const area needed =
        twl::film_area_for(load(row["load"]),
                           {.ammonia = ammonia(row["TAN"]), .temperature = celsius(row["t"]), .film = film_of(row)})
            .central;
    return row.has("surface") ? in_litres(needed / square_metres_per_cubic_metre(row["surface"]))
                              : in_square_metres(needed);
  };
  check_rows(reference_rows("life/nitrification.csv"),
             {{"tankwright::life::nitrification_rate", areal}, {"tankwright::life::film_area_for", area_for}});
}

TEST_CASE("nitrification: the rate follows ammonia and warmth without a jump") {
  for (const auto order : {twl::film_order::linear, twl::film_order::square_root}) {
    twl::film film = twl::seawater_film;
    film.order = order;
    for (double t = 10.0; t <= 30.0; t += 2.5) {
      double before = 0.0;
      for (double level = 0.0; level <= 3.0; level += 0.01) {
        const double now = areal_rate(level, t, film);
        TW_HOLDS(rate_grows, now >= before);
        TW_HOLDS(plateau, now - before <= (level < 0.015 ? 0.05 : 0.02));
        TW_HOLDS(rate_grows, t + 0.1 > 30.0 || areal_rate(level, t + 0.1, film) >= now);
        before = now;
      }
    }
  }
  CHECK(areal_rate(0.0, 25.0) == 0.0);
}

TEST_CASE("nitrification: capacity today and when mature") {
  const twl::filter_surface surfaces[] = {
      {.label = "rock", .wet = square_metres(12.0), .seeded = fraction(0.5)},
      {.label = "media", .wet = litres(20.0) * square_metres_per_cubic_metre(500.0), .seeded = fraction(0.0)},
  };
  const twl::film_water water{.ammonia = ammonia(2.0), .temperature = celsius(24.0)};
  const auto found = twl::capacity_of(surfaces, water);
  TW_CHECK(capacity_is_sum, found.mature.central.as_nitrogen(), grams_per_day(22.0 * 0.28), relative(1e-14));
  TW_CHECK(seeded, found.today.central.as_nitrogen(), grams_per_day(6.0 * 0.28), relative(1e-14));
  CHECK(found.today.low < found.today.central);
  CHECK(found.today.central < found.today.high);
  CHECK(found.caution.text.find("measure") != std::string_view::npos);
}

TEST_CASE("nitrification: the steady ammonia gives the load back") {
  const twl::filter_surface surfaces[] = {{.label = "media", .wet = square_metres(40.0), .seeded = fraction(0.8)}};
  for (const auto order : {twl::film_order::linear, twl::film_order::square_root}) {
    twl::film film = twl::seawater_film;
    film.order = order;
    for (const double grams : {0.1, 1.0, 5.0}) {
      const auto found =
          twl::steady_ammonia({.load = load(grams), .surfaces = surfaces, .temperature = celsius(26.0), .film = film});
      REQUIRE(found.central.has_value());
      const auto capacity =
          twl::capacity_of(surfaces, {.ammonia = *found.central, .temperature = celsius(26.0), .film = film});
      TW_CHECK(balance, capacity.today.central.as_nitrogen(), grams_per_day(grams), relative(1e-13));
      if (found.high) CHECK(*found.low < *found.high);
    }
  }
  const auto full = twl::capacity_of(surfaces, {.ammonia = ammonia(5.0), .temperature = celsius(24.0)});
  const auto at = [&](double part) {
    return twl::steady_ammonia({.load = twl::nitrogen_load::from_nitrogen(full.today.central.as_nitrogen() * part),
                                .surfaces = surfaces,
                                .temperature = celsius(24.0)});
  };
  TW_CHECK(share, at(0.5).share_of_capacity.central, 0.5, relative(1e-14));
  CHECK(at(0.999).central.has_value());
  CHECK_FALSE(at(0.999).high.has_value());
  CHECK_FALSE(at(1.001).central.has_value());
  CHECK(at(1.001).low.has_value());
  CHECK_FALSE(at(5.0).low.has_value());
}

TEST_CASE("nitrification: the surface of grains") {
  TW_CHECK(grains, twl::grain_surface(millimetres(0.2), porosity{0.4}), square_metres_per_cubic_metre(18000.0),
           relative(1e-14));
  CHECK_THROWS_AS((void)twl::grain_surface(millimetres(0.0), porosity{0.4}), invalid_input);
  CHECK_THROWS_AS((void)twl::grain_surface(millimetres(1.0), porosity{1.0}), invalid_input);
}

TEST_CASE("nitrification: bad input") {
  check_edges({"ammonia", "mg/L", not_negative},
              [](double x, range_policy p) { return areal_rate(x, 24.0, twl::seawater_film, p); });
  check_edges(twl::film_temperature_limits,
              [](double t, range_policy p) { return areal_rate(1.0, t, twl::seawater_film, p); });
  const twl::film_water water{.ammonia = ammonia(1.0), .temperature = celsius(24.0)};
  const twl::filter_surface negative[] = {{.label = "old rock", .wet = square_metres(-1.0)}};
  CHECK_THROWS_WITH_AS((void)twl::capacity_of(negative, water),
                       "tankwright::life::capacity_of: old rock: area = -1 m2 is not possible; expected 0 to 1e+09 m2",
                       invalid_input);
  const twl::filter_surface bare[] = {{.label = "new media", .wet = square_metres(5.0), .seeded = fraction(0.0)}};
  CHECK_THROWS_AS((void)twl::steady_ammonia({.load = load(1.0), .surfaces = bare, .temperature = celsius(24.0)}),
                  invalid_input);
  CHECK_THROWS_AS((void)twl::film_area_for(load(1.0), {.ammonia = ammonia(0.0), .temperature = celsius(24.0)}),
                  invalid_input);
  CHECK_THROWS_AS((void)twl::film_area_for(load(-1.0), water), invalid_input);
}

TEST_CASE("nitrification: the wet outside of rock by the kilogram") {
  const evidence balls{"tankwright::life::rock_surface", kind::identity, "equal balls, counted by hand"};
  const double pi = 3.14159265358979323846;
  // 100 balls of 10 cm, of 1500 kg/m3: each has pi d^2 of surface and pi d^3/6 of volume.
  const double each = pi / 6.0 * 1e-3;
  const twl::loose_rock rock{.dry = kilograms(100.0 * 1500.0 * each),
                             .piece = metres(0.1),
                             .density = kilograms_per_cubic_metre(1500.0),
                             .roughness = 1.0};
  TW_CHECK(balls, twl::rock_surface(rock), square_metres(100.0 * pi * 0.01), relative(1e-12));
  auto pitted = rock;
  pitted.roughness = 2.0;
  TW_CHECK(balls, twl::rock_surface(pitted), square_metres(200.0 * pi * 0.01), relative(1e-12));
  const auto refused = [&](auto change) {
    auto other = rock;
    change(other);
    CHECK_THROWS_AS((void)twl::rock_surface(other), invalid_input);
  };
  refused([](auto& r) { r.dry = kilograms(-1.0); });
  refused([](auto& r) { r.piece = metres(0.0); });
  refused([](auto& r) { r.density = kilograms_per_cubic_metre(10.0); });
  refused([](auto& r) { r.roughness = 0.9; });
}

TEST_CASE("nitrification: rates, areas and levels against the formulas, written a second time") {
  const evidence again{"tankwright::life::nitrification_rate", kind::published,
                       "Nijhof and Bovendeur 1990, Zhu and Chen 2002, Malone and Pfeiffer 2006, second transcription"};
  const evidence area_again{"tankwright::life::film_area_for", kind::identity, "load over rate, ends crossed"};
  const evidence settled{"tankwright::life::steady_ammonia", kind::identity, "rate needed over slope, by hand"};
  // 0.2 and 1.0 g/(m2 d) against 0.69: films of other filters.
  const double poor = 0.2 / 0.69, good = 1.0 / 0.69;
  for (const auto order : {twl::film_order::linear, twl::film_order::square_root}) {
    for (const double t : {12.0, 24.0, 29.0}) {
      for (const double level : {0.02, 0.1, 0.8, 1.6, 7.0}) {
        twl::film film = twl::freshwater_film;
        film.order = order;
        film.plateau_from = ammonia(1.5);
        CAPTURE(t);
        CAPTURE(level);
        const double flat = 0.69 * std::pow(1.01108, t - 24.0), slope = 0.69 * std::pow(1.04275, t - 24.0);
        const double x = level / 1.5;
        const double rising = slope * (order == twl::film_order::linear ? x : std::sqrt(x));
        const double wanted = rising < flat ? rising : flat;
        const twl::film_water in{.ammonia = ammonia(level), .temperature = celsius(t), .film = film};
        const auto rate = twl::nitrification_rate(in);
        TW_CHECK(again, rate.central, grams_per_square_metre_day(wanted), relative(1e-12));
        TW_CHECK(again, rate.low, grams_per_square_metre_day(wanted * poor), relative(1e-12));
        TW_CHECK(again, rate.high, grams_per_square_metre_day(wanted * good), relative(1e-12));
        const auto needed = twl::film_area_for(load(3.0), in);
        TW_CHECK(area_again, needed.low, square_metres(3.0 / (wanted * good)), relative(1e-12));
        TW_CHECK(area_again, needed.central, square_metres(3.0 / wanted), relative(1e-12));
        TW_CHECK(area_again, needed.high, square_metres(3.0 / (wanted * poor)), relative(1e-12));
        const twl::filter_surface surfaces[] = {{.wet = square_metres(5.0)},
                                                {.wet = square_metres(4.0), .seeded = fraction(0.25)}};
        const auto capacity = twl::capacity_of(surfaces, in);
        TW_CHECK(again, capacity.today.low.as_nitrogen(), grams_per_day(6.0 * wanted * poor), relative(1e-12));
        TW_CHECK(again, capacity.today.high.as_nitrogen(), grams_per_day(6.0 * wanted * good), relative(1e-12));
        TW_CHECK(again, capacity.mature.low.as_nitrogen(), grams_per_day(9.0 * wanted * poor), relative(1e-12));
        TW_CHECK(again, capacity.mature.high.as_nitrogen(), grams_per_day(9.0 * wanted * good), relative(1e-12));
        const auto found =
            twl::steady_ammonia({.load = load(0.9), .surfaces = surfaces, .temperature = celsius(t), .film = film});
        const auto level_of = [&](double quality) {
          const double part = 0.9 / 6.0 / (slope * quality);
          return milligrams_per_litre(1.5 * (order == twl::film_order::linear ? part : part * part));
        };
        TW_CHECK(settled, found.low->as_nitrogen(), level_of(good), relative(1e-12));
        TW_CHECK(settled, found.central->as_nitrogen(), level_of(1.0), relative(1e-12));
        TW_CHECK(settled, found.high->as_nitrogen(), level_of(poor), relative(1e-12));
        const double share_on_plateau = 0.9 / 6.0 / flat;
        TW_CHECK(settled, found.share_of_capacity.low, share_on_plateau / good, relative(1e-12));
        TW_CHECK(settled, found.share_of_capacity.central, share_on_plateau, relative(1e-12));
        TW_CHECK(settled, found.share_of_capacity.high, share_on_plateau / poor, relative(1e-12));
        CHECK_FALSE(rate.reason.empty());
        CHECK_FALSE(capacity.today.reason.empty());
        CHECK_FALSE(found.share_of_capacity.reason.empty());
        CHECK_FALSE(found.caution.text.empty());
      }
    }
  }
}

TEST_CASE("nitrification: what is filled in when nothing is said") {
  const twl::film said{.plateau = grams_per_square_metre_day(0.28), .plateau_at = celsius(24.0)};
  CHECK(compare(in_milligrams_per_litre(said.plateau_from.as_nitrogen()), 1.0, relative(1e-12)).good);
  CHECK(said.order == twl::film_order::linear);
  CHECK(said.per_kelvin_on_plateau == 1.01108);  // Zhu and Chen 2002: 1.108 and 4.275 % a kelvin
  CHECK(said.per_kelvin_below == 1.04275);
  const twl::film_water in{.ammonia = ammonia(2.0), .temperature = celsius(24.0)};
  CHECK(compare(twl::nitrification_rate(in).central, grams_per_square_metre_day(0.28), relative(1e-12)).good);
  const twl::filter_surface surfaces[] = {{.wet = square_metres(5.0)}};
  CHECK(compare(twl::capacity_of(surfaces, in).today.central.as_nitrogen(), grams_per_day(1.4), relative(1e-12)).good);
  const auto full = twl::steady_ammonia({.load = load(1.4), .surfaces = surfaces, .temperature = celsius(24.0)});
  CHECK(compare(full.share_of_capacity.central, 1.0, relative(1e-12)).good);
  const twl::loose_rock rock{.dry = kilograms(1.0), .piece = metres(0.1), .density = kilograms_per_cubic_metre(1000.0)};
  CHECK(compare(twl::rock_surface(rock), square_metres(2.0 * 6.0 * 1.0 / 100.0), relative(1e-12)).good);
}

TEST_CASE("nitrification: films, surfaces and rock that are taken and refused") {
  const auto rate = [](auto change, double x) {
    twl::film film = twl::seawater_film;
    change(film, x);
    return twl::nitrification_rate({.ammonia = ammonia(1.0), .temperature = celsius(24.0), .film = film});
  };
  const auto per_area = [](auto& f, double x) { f.plateau = grams_per_square_metre_day(x); };
  const auto at = [](auto& f, double x) { f.plateau_at = celsius(x); };
  const auto from = [](auto& f, double x) { f.plateau_from = ammonia(x); };
  const auto on_plateau = [](auto& f, double x) { f.per_kelvin_on_plateau = x; };
  const auto below = [](auto& f, double x) { f.per_kelvin_below = x; };
  check_ranges("life::nitrification_rate", {TW_RANGE("largest rate of the film", 1e-6, 1e6, rate(per_area, x)),
                                            TW_RANGE("temperature of the film's rate", -5.0, 100.0, rate(at, x)),
                                            TW_RANGE("start of the film's plateau", 1e-6, 1e6, rate(from, x)),
                                            TW_RANGE("film's rate per kelvin", 0.5, 2.0, rate(on_plateau, x)),
                                            TW_RANGE("film's rate per kelvin", 0.5, 2.0, rate(below, x)),
                                            TW_RANGE("ammonia", 0.0, 1e6, areal_rate(x, 24.0)),
                                            TW_RANGE("temperature", 10.0, 30.0, areal_rate(1.0, x))});
  const auto capacity = [](double wet, double seed, double level) {
    const twl::filter_surface one[] = {{.label = "sand", .wet = square_metres(wet), .seeded = fraction(seed)}};
    return twl::capacity_of(one, {.ammonia = ammonia(level), .temperature = celsius(24.0)});
  };
  check_ranges("life::capacity_of", {TW_RANGE("sand: area", 0.0, 1e9, capacity(x, 1.0, 1.0)),
                                     TW_RANGE("sand: share seeded", 0.0, 1.0, capacity(1.0, x, 1.0)),
                                     TW_RANGE("ammonia", 0.0, 1e6, capacity(1.0, 1.0, x))});
  const auto area_for = [](double grams, double level) {
    return twl::film_area_for(load(grams), {.ammonia = ammonia(level), .temperature = celsius(24.0)});
  };
  check_ranges("life::film_area_for", {TW_RANGE("nitrogen load", 0.0, 1e9, area_for(x, 1.0)),
                                       TW_RANGE("ammonia", 1e-6, 1e6, area_for(1.0, x))});
  const auto settled = [](double grams, double wet, double t, double largest) {
    const twl::filter_surface one[] = {{.label = "sand", .wet = square_metres(wet)}};
    twl::film film = twl::seawater_film;
    film.plateau = grams_per_square_metre_day(largest);
    return twl::steady_ammonia({.load = load(grams), .surfaces = one, .temperature = celsius(t), .film = film});
  };
  const auto many = [](double all) {  // shared by a thousand surfaces, so that each is small enough
    const std::vector<twl::filter_surface> surfaces(1001, {.label = "sand", .wet = square_metres(all / 1001.0)});
    return twl::steady_ammonia({.load = load(1.0), .surfaces = surfaces, .temperature = celsius(24.0)});
  };
  check_ranges("life::steady_ammonia", {TW_RANGE("nitrogen load", 0.0, 1e9, settled(x, 1.0, 24.0, 1.0)),
                                        TW_RANGE("temperature", 10.0, 30.0, settled(1.0, 1.0, x, 1.0)),
                                        TW_RANGE("largest rate of the film", 1e-6, 1e6, settled(1.0, 1.0, 24.0, x))});
  check_ranges("life::steady_ammonia", {TW_RANGE("sand: area", 0.0, 1e9, settled(0.0, x, 24.0, 1.0)),
                                        TW_RANGE("seeded area of all surfaces", 1e-9, 1e12, many(x))});
  const auto rock = [](double kg, double piece, double density, double roughness) {
    return twl::rock_surface({.dry = kilograms(kg),
                              .piece = metres(piece),
                              .density = kilograms_per_cubic_metre(density),
                              .roughness = roughness});
  };
  check_ranges("life::rock_surface", {TW_RANGE("mass of rock", 0.0, 1e9, rock(x, 0.1, 1e3, 2.0)),
                                      TW_RANGE("diameter of a piece", 1e-3, 10.0, rock(1.0, x, 1e3, 2.0)),
                                      TW_RANGE("density of rock", 50.0, 5000.0, rock(1.0, 0.1, x, 2.0)),
                                      TW_RANGE("roughness", 1.0, 100.0, rock(1.0, 0.1, 1e3, x))});
  check_ranges(
      "life::grain_surface",
      {TW_RANGE("grain diameter", 1e-6, 1e4, twl::grain_surface(millimetres(x), porosity{0.4})),
       {"porosity", 0.0, 1.0, [](double x) { (void)twl::grain_surface(millimetres(1.0), porosity{x}); }, false, true}});
}

TEST_CASE("nitrification: as much as the plateau takes is held, and a wrong film is refused by who was asked") {
  const twl::filter_surface one[] = {{.wet = square_metres(1.0)}};
  const auto full = twl::nitrogen_load::from_nitrogen(mass_flow::from_value(twl::seawater_film.plateau->value()));
  const auto settled = twl::steady_ammonia({.load = full, .surfaces = one, .temperature = celsius(24.0)});
  REQUIRE(settled.central);
  CHECK(compare(in_milligrams_per_litre(settled.central->as_nitrogen()), 1.0, relative(1e-12)).good);
  const auto area_for = [](double t, double largest) {
    twl::film film = twl::seawater_film;
    film.plateau = grams_per_square_metre_day(largest);
    return twl::film_area_for(load(1.0), {.ammonia = ammonia(1.0), .temperature = celsius(t), .film = film});
  };
  check_ranges("life::film_area_for", {TW_RANGE("temperature", 10.0, 30.0, area_for(x, 0.28)),
                                       TW_RANGE("largest rate of the film", 1e-6, 1e6, area_for(24.0, x))});
}
