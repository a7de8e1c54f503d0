// SPDX-License-Identifier: BSL-1.0
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
