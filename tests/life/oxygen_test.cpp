// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life/oxygen.hpp>

#include <cmath>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twl = tankwright::life;

namespace {

const evidence closed{"tankwright::life::oxygen_after", kind::identity, "closed form in extended precision"};
const evidence inverse{"tankwright::life::time_to_oxygen_limit", kind::identity,
                       "at the time found, oxygen_after gives the limit"};
const evidence faster{"tankwright::life::time_to_oxygen_limit", kind::property,
                      "more air lasts longer, more use shorter"};
const evidence steady{"tankwright::life::steady_oxygen", kind::identity, "k (C* - C) V = R"};
const evidence holds{"tankwright::life::aeration_to_keep", kind::identity,
                     "with the aeration found the level is steady"};
const evidence continuous{"tankwright::life::time_to_oxygen_limit", kind::property,
                          "tends to (C0 - C) V/R without air"};

twl::oxygen_balance tank(double milligrams_per_hour_used, double k, double saturation = 6.8) {
  return {.net = litres(2000.0),
          .use = milligrams_per_hour(milligrams_per_hour_used),
          .saturation = milligrams_per_litre(saturation),
          .aeration = per_hour(k)};
}
std::optional<duration> countdown(const twl::oxygen_balance& of, double start, double limit) {
  return twl::time_to_oxygen_limit({.tank = of, .start = milligrams_per_litre(start)}, milligrams_per_litre(limit))
      .time;
}

}  // namespace

TEST_CASE("oxygen: reference table") {
  const auto surface_rate = [](const reference_row& row) {
    const twl::aeration ways[] = {{.surface = square_metres(row["surface"]), .transfer = twl::still_surface_transfer}};
    return twl::aeration_rate({.net = litres(row["V"]), .temperature = celsius(25.0), .ways = ways});
  };
  const auto limit = [&](const reference_row& row) {
    const twl::oxygen_balance of{.net = litres(row["V"]),
                                 .use = milligrams_per_hour(row["use"]),
                                 .saturation = milligrams_per_litre(row.has("saturation") ? row["saturation"] : 6.8),
                                 .aeration = row.has("surface") ? surface_rate(row) : per_hour(row["k"])};
    return in_hours(*countdown(of, row["start"], row["limit"]));
  };
  const auto balance = [](const reference_row& row) { return tank(0.0, row["k"], row["saturation"]); };
  const auto batch = [&](const reference_row& row) {
    return in_hours(twl::time_to_aerate({.tank = balance(row), .start = milligrams_per_litre(row["start"])},
                                        milligrams_per_litre(row["level"])));
  };
  check_rows(
      reference_rows("life/oxygen.csv"),
      {{"tankwright::life::time_to_oxygen_limit", limit},
       {"tankwright::life::aeration_rate", [&](const reference_row& row) { return in_per_hour(surface_rate(row)); }},
       {"tankwright::life::transfer_at",
        [](const reference_row& row) { return in_per_hour(twl::transfer_at(per_hour(1.0), celsius(row["t"]))); }},
       {"tankwright::life::time_to_aerate", batch},
       {"tankwright::life::oxygen_transfer", [&](const reference_row& row) {
          return in_grams_per_hour(twl::oxygen_transfer(balance(row), milligrams_per_litre(row["level"])));
        }}});
}

TEST_CASE("oxygen: the course, the countdown and the steady level agree") {
  for (const double k : {0.0, 1e-15, 1e-9, 1e-4, 0.03, 0.3, 3.0}) {
    for (const double use : {10.0, 3000.0, 30000.0}) {
      for (const double start : {4.5, 6.8, 9.0}) {
        const auto of = tank(use, k);
        const twl::oxygen_course course{.tank = of, .start = milligrams_per_litre(start)};
        for (const double h : {0.0, 0.01, 0.7, 5.0}) {
          const long double lk = static_cast<long double>(k);
          const long double lh = static_cast<long double>(h);
          const long double r = static_cast<long double>(use) / 2000.0L;
          const long double pulled = -std::expm1(-lk * lh);
          const long double expected = static_cast<long double>(start) +
                                       pulled * (6.8L - static_cast<long double>(start)) -
                                       r * (k == 0.0 ? lh : pulled / lk);
          TW_CHECK(closed, twl::oxygen_after(course, hours(h)),
                   milligrams_per_litre(static_cast<double>(std::fmax(expected, 0.0L))),
                   (tolerance{.absolute = 1e-17, .relative = 1e-13}));
        }
        const auto time = countdown(of, start, 4.0);
        const auto level = twl::steady_oxygen(of);
        const bool stays_above = level && *level >= milligrams_per_litre(4.0);
        CHECK(time.has_value() == !stays_above);
        if (time) {
          TW_CHECK(inverse, twl::oxygen_after(course, *time), milligrams_per_litre(4.0), relative(1e-12));
          TW_HOLDS(faster, !countdown(tank(use, k + 0.01), start, 4.0) ||
                               *countdown(tank(use, k + 0.01), start, 4.0) >= *time || start > 6.8);
          TW_HOLDS(faster, *countdown(tank(use * 1.01, k), start, 4.0) < *time);
        }
        if (level) {
          TW_CHECK(steady, twl::oxygen_transfer(of, *level), of.use, relative(1e-9));
        }
      }
    }
  }
  const auto plain = *countdown(tank(3000.0, 0.0), 6.8, 4.0);
  for (const double k : {1e-14, 1e-12, 1e-10, 1e-8}) {
    TW_CHECK(continuous, *countdown(tank(3000.0, k), 6.8, 4.0), plain, relative(10.0 * k + 1e-14));
  }
}

TEST_CASE("oxygen: air that holds a level") {
  auto of = tank(3000.0, 0.0);
  for (const double level : {0.01, 3.0, 5.0, 6.5}) {
    of.aeration = twl::aeration_to_keep(tank(3000.0, 0.0), milligrams_per_litre(level));
    const auto found = twl::steady_oxygen(of);
    REQUIRE(found.has_value());
    TW_CHECK(holds, *found, milligrams_per_litre(level), within(milligrams_per_litre(1e-13)));
  }
}

TEST_CASE("oxygen: the countdown tells what to plan for, and flags a start above saturation") {
  const twl::oxygen_course course{.tank = tank(3000.0, 0.0), .start = milligrams_per_litre(9.0)};
  const auto cut = twl::time_to_oxygen_limit(course);
  CHECK(cut.above_saturation);
  CHECK(*cut.plan_for == *cut.time * 0.5);
  CHECK(cut.caution.text.find("half") != std::string_view::npos);
  CHECK_FALSE(twl::time_to_oxygen_limit({.tank = course.tank, .start = milligrams_per_litre(6.8)}).above_saturation);
  CHECK(*countdown(tank(3000.0, 0.0), 3.5, 4.0) == hours(0.0));
  CHECK_FALSE(countdown(tank(0.0, 0.0), 6.0, 4.0).has_value());  // nothing breathes
  CHECK_FALSE(twl::steady_oxygen(tank(3000.0, 0.1)).has_value());
  CHECK_FALSE(twl::steady_oxygen(tank(3000.0, 0.0)).has_value());
  CHECK(twl::oxygen_after(course, hours(100.0)) == milligrams_per_litre(0.0));
}

TEST_CASE("oxygen: bad input") {
  const auto course = [](double start) {
    return twl::oxygen_course{.tank = tank(3000.0, 0.5), .start = milligrams_per_litre(start)};
  };
  check_edges(twl::oxygen_level_limits,
              [&](double x, range_policy) { return twl::oxygen_after(course(x), hours(1.0)); });
  check_edges(twl::oxygen_use_limits, [](double x, range_policy) { return twl::steady_oxygen(tank(x, 0.5)); });
  check_edges(twl::oxygen_saturation_limits,
              [](double x, range_policy) { return twl::steady_oxygen(tank(1.0, 0.5, x)); });
  check_edges(twl::bubbles_limits, [](double x, range_policy) { return twl::steady_oxygen(tank(1.0, x)); });
  check_edges({"oxygen limit", "mg/L", not_negative},
              [&](double x, range_policy) { return twl::time_to_oxygen_limit(course(6.0), milligrams_per_litre(x)); });
  check_edges({"time", "h", not_negative},
              [&](double x, range_policy) { return twl::oxygen_after(course(6.0), hours(x)); });
  CHECK_THROWS_AS((void)twl::aeration_to_keep(tank(3000.0, 0.0), milligrams_per_litre(6.8)), invalid_input);
  CHECK_THROWS_AS((void)twl::time_to_aerate(course(3.0), milligrams_per_litre(6.8)), invalid_input);
  CHECK_THROWS_AS((void)twl::time_to_aerate(course(3.0), milligrams_per_litre(2.0)), invalid_input);
  CHECK_THROWS_AS((void)twl::time_to_aerate({.tank = tank(0.0, 0.0), .start = milligrams_per_litre(3.0)},
                                            milligrams_per_litre(5.0)),
                  invalid_input);
}
