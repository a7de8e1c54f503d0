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

TEST_CASE("oxygen: at the limit, at saturation, and with just enough air") {
  const auto at = [](double start, double limit) {
    return twl::time_to_oxygen_limit({.tank = tank(3000.0, 0.0), .start = milligrams_per_litre(start)},
                                     milligrams_per_litre(limit));
  };
  CHECK(*at(4.0, 4.0).time == hours(0.0));
  CHECK(*at(3.0, 4.0).plan_for == hours(0.0));
  CHECK_FALSE(at(6.8, 4.0).above_saturation);
  CHECK(at(6.8001, 4.0).above_saturation);
  // 2.8 mg/L in 2000 L at 3000 mg/h.
  CHECK(compare(in_hours(*at(6.8, 4.0).time), 2.8 * 2000.0 / 3000.0, relative(1e-12)).good);
  // 4 mg/L where nothing else is said.
  const twl::oxygen_course course{.tank = tank(3000.0, 0.0), .start = milligrams_per_litre(6.8)};
  CHECK(*twl::time_to_oxygen_limit(course).time == *at(6.8, 4.0).time);
  // As much use as can come in at level zero settles there: 0.5/h x 2000 L x 6.8 mg/L.
  auto just = tank(0.5 * 2000.0 * 6.8, 0.5);
  just.use = just.aeration.value() * just.net->value() * just.saturation->value() * mass_flow::from_value(1.0);
  REQUIRE(twl::steady_oxygen(just));
  CHECK(twl::steady_oxygen(just)->value() == 0.0);
  CHECK_FALSE(twl::steady_oxygen(tank(0.0, 0.0)));  // nothing comes in, nothing is used: any level stays
  CHECK(compare(*twl::steady_oxygen(tank(0.25 * 0.5 * 2000.0 * 6.8, 0.5)), milligrams_per_litre(0.75 * 6.8),
                relative(1e-12))
            .good);
  const auto aerate = [](double start, double level) {
    return in_hours(twl::time_to_aerate({.tank = tank(0.0, 0.5), .start = milligrams_per_litre(start)},
                                        milligrams_per_litre(level)));
  };
  CHECK(aerate(5.0, 5.0) == 0.0);
  CHECK(compare(aerate(2.0, 6.0), std::log(4.8 / 0.8) / 0.5, relative(1e-12)).good);
  // What the tank uses is not counted.
  CHECK(in_hours(twl::time_to_aerate({.tank = tank(5000.0, 0.5), .start = milligrams_per_litre(2.0)},
                                     milligrams_per_litre(6.0))) == aerate(2.0, 6.0));
}

TEST_CASE("oxygen: what is taken and what is refused") {
  const auto balance = [](double net, double use, double saturation, double k) {
    return twl::oxygen_balance{.net = litres(net),
                               .use = milligrams_per_hour(use),
                               .saturation = milligrams_per_litre(saturation),
                               .aeration = per_hour(k)};
  };
  const auto level = [](double x) { return milligrams_per_litre(x); };
  const auto all_of = [&](const std::string& function, auto call, double low_k = 0.0, const char* k_name = "KLa") {
    check_ranges(function, {{"net volume", 1e-3, 1e10, [&](double x) { call(balance(x, 1.0, 6.8, 0.5), 3.0); }},
                            {"oxygen use", 0.0, 1e15, [&](double x) { call(balance(1e3, x, 6.8, 0.5), 3.0); }},
                            {"oxygen saturation", 1e-6, 1e6, [&](double x) { call(balance(1e3, 1.0, x, 0.5), 0.0); }},
                            {k_name, low_k, 1e5, [&](double x) { call(balance(1e3, 1.0, 6.8, x), 3.0); }}});
  };
  all_of("life::oxygen_after",
         [&](const auto& b, double c) { (void)twl::oxygen_after({.tank = b, .start = level(c)}, hours(1.0)); });
  all_of("life::steady_oxygen", [](const auto& b, double) { (void)twl::steady_oxygen(b); });
  all_of("life::time_to_oxygen_limit",
         [&](const auto& b, double c) { (void)twl::time_to_oxygen_limit({.tank = b, .start = level(c)}); });
  all_of("life::aeration_to_keep", [&](const auto& b, double c) { (void)twl::aeration_to_keep(b, level(c)); });
  all_of("life::oxygen_transfer", [&](const auto& b, double c) { (void)twl::oxygen_transfer(b, level(c)); });
  const auto course = [&](double start) {
    return twl::oxygen_course{.tank = tank(3000.0, 0.5, 1e6), .start = level(start)};
  };
  check_ranges("life::oxygen_after", {TW_RANGE("oxygen level", 0.0, 1e6, twl::oxygen_after(course(x), hours(1.0))),
                                      TW_RANGE("time", 0.0, 1e7, twl::oxygen_after(course(6.0), hours(x)))});
  check_ranges("life::time_to_oxygen_limit",
               {TW_RANGE("oxygen level", 0.0, 1e6, twl::time_to_oxygen_limit(course(x))),
                TW_RANGE("oxygen limit", 0.0, 1e6, twl::time_to_oxygen_limit(course(6.0), level(x)))});
  CHECK_THROWS_AS((void)twl::aeration_to_keep(tank(1.0, 0.0), level(-1.0)), invalid_input);
  CHECK_THROWS_AS((void)twl::oxygen_transfer(tank(1.0, 0.5), level(-1.0)), invalid_input);
  CHECK_NOTHROW((void)twl::oxygen_transfer(tank(1.0, 0.5), level(1e6)));
  CHECK_THROWS_AS((void)twl::oxygen_transfer(tank(1.0, 0.5), level(1.000001e6)), invalid_input);
  const auto aerate = [&](const twl::oxygen_balance& b, double start) {
    return twl::time_to_aerate({.tank = b, .start = level(start)}, level(5.0));
  };
  check_ranges("life::time_to_aerate", {TW_RANGE("net volume", 1e-3, 1e10, aerate(balance(x, 0.0, 6.8, 0.5), 1.0)),
                                        TW_RANGE("oxygen use", 0.0, 1e15, aerate(balance(1e3, x, 6.8, 0.5), 1.0))});
  CHECK_NOTHROW((void)aerate(balance(1e3, 0.0, 6.8, 1.0001e-8), 1.0));
  CHECK_THROWS_AS((void)aerate(balance(1e3, 0.0, 6.8, 0.9999e-8), 1.0), invalid_input);
  CHECK_NOTHROW((void)aerate(balance(1e3, 0.0, 6.8, 0.99999e5), 1.0));
  CHECK_THROWS_AS((void)aerate(balance(1e3, 0.0, 6.8, 0.5), -1.0), invalid_input);
}

TEST_CASE("oxygen: the last of it is still counted") {
  // 3000 mg/h in 2000 L: 1.5 mg/L an hour, from 4 down to 0.25 in two and a half hours.
  const twl::oxygen_course course{.tank = tank(3000.0, 0.0), .start = milligrams_per_litre(4.0)};
  TW_CHECK(closed, twl::oxygen_after(course, hours(2.5)), milligrams_per_litre(0.25), relative(1e-12));
}
