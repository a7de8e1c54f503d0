// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life/circulation.hpp>

#include <tankwright/water/exchange.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twl = tankwright::life;

namespace {

const evidence loops_add{"tankwright::life::removal_rate", kind::identity, "loops add: (8000 x 0.5 + 2000 x 1)/2000 an hour"};
const evidence turns{"tankwright::life::turnover_rate", kind::identity, "(8000 + 2000)/2000 an hour"};
const evidence inverse{"tankwright::life::turnovers_for", kind::property, "round trip with share_removed"};
const evidence closed{"tankwright::life::concentration_after", kind::identity, "closed form in extended precision"};
const evidence limit{"tankwright::life::concentration_after", kind::property, "tends to the steady concentration"};
const evidence no_loop{"tankwright::life::concentration_after", kind::identity, "without a loop: C0 + P t/V"};
const evidence settles{"tankwright::life::steady_concentration", kind::identity, "what comes in goes out: C sum(eta Q) = P"};
const evidence holds{"tankwright::life::flow_to_hold", kind::property, "the flow found holds the level"};
const evidence periodic{"tankwright::life::steady_saw_tooth", kind::identity, "peak p/f, trough p (1 - f)/f without loops"};
const evidence pulses{"tankwright::life::steady_saw_tooth", kind::identity, "doses: peak (m/V)/(1 - exp(-k T))"};
const evidence repeated{"tankwright::life::steady_saw_tooth", kind::identity, "the limit of many rounds, step by step"};

const twl::loop two_loops[] = {{.label = "return", .flow = litres_per_hour(8000.0), .efficiency = fraction(0.5)},
                               {.label = "polishing", .flow = litres_per_hour(2000.0)}};

twl::loop loop_of(const reference_row& row) {
  return {.flow = litres_per_hour(row["Q"]), .efficiency = fraction(row["eta"])};
}

}  // namespace

TEST_CASE("circulation: reference table") {
  const auto removed = [](const reference_row& row) {
    return twl::share_removed(row["n"], fraction(row["eta"])).value();
  };
  const auto turnovers = [](const reference_row& row) {
    return twl::turnovers_for(fraction(row["p"]), fraction(row["eta"]));
  };
  const auto time = [](const reference_row& row) {
    const twl::loop loops[] = {loop_of(row)};
    return in_hours(twl::time_to_remove({.net = litres(row["V"]), .loops = loops}, fraction(row["p"])).time);
  };
  const auto flow = [](const reference_row& row) {
    return in_cubic_metres_per_hour(twl::flow_to_hold({.made = grams_per_day(row["made"]),
                                                       .hold_at = milligrams_per_litre(row["C"]),
                                                       .efficiency = fraction(row["eta"])}));
  };
  check_rows(reference_rows("life/circulation.csv"), {{"tankwright::life::share_removed", removed},
                                                      {"tankwright::life::turnovers_for", turnovers},
                                                      {"tankwright::life::time_to_remove", time},
                                                      {"tankwright::life::flow_to_hold", flow}});
}

TEST_CASE("circulation: loops add") {
  const twl::circulation tank{.net = litres(2000.0), .loops = two_loops};
  TW_CHECK(turns, twl::turnover_rate(tank), per_hour(5.0), relative(1e-15));
  TW_CHECK(loops_add, twl::removal_rate(tank), per_hour(3.0), relative(1e-15));
  const auto clear = twl::time_to_remove(tank, fraction(0.9));
  CHECK(compare(clear.turnovers, in_hours(clear.time) * 5.0, relative(1e-14)).good);
  CHECK(clear.caution.text.find("net volume") != std::string_view::npos);
}

TEST_CASE("circulation: turnovers and shares are each other's inverse") {
  for (double p = 0.0; p < 0.9999; p += 0.01) {
    for (const double eta : {0.1, 0.5, 1.0}) {
      const double n = twl::turnovers_for(fraction(p), fraction(eta));
      TW_CHECK(inverse, twl::share_removed(n, fraction(eta)), fraction(p), (tolerance{.absolute = 1e-15, .relative = 1e-14}));
    }
  }
}

TEST_CASE("circulation: production and removal") {
  const volume net = litres(2000.0);
  for (const double made : {0.0, 5.0}) {
    for (const double start : {0.0, 2.0}) {
      const twl::production tank{.net = net, .made = grams_per_day(made), .at_start = milligrams_per_litre(start),
                                 .loops = two_loops};
      for (const double h : {0.0, 1e-9, 0.5, 3.0, 50.0}) {
        const long double k = 3.0L;
        const long double p = static_cast<long double>(made) / 24.0L / 2.0L;  // mg/(L h)
        const long double expected = static_cast<long double>(start) * std::exp(-k * static_cast<long double>(h)) -
                                     p / k * std::expm1(-k * static_cast<long double>(h));
        TW_CHECK(closed, twl::concentration_after(tank, hours(h)),
                 milligrams_per_litre(static_cast<double>(expected)), (tolerance{.absolute = 1e-18, .relative = 1e-13}));
      }
      TW_CHECK(no_loop, twl::concentration_after({.net = net, .made = tank.made, .at_start = tank.at_start}, hours(12.0)),
               milligrams_per_litre(start + made / 2.0 / 2.0), (tolerance{.absolute = 1e-18, .relative = 1e-14}));
    }
  }
  const mass_flow made = grams_per_day(5.0);
  const mass_concentration steady = twl::steady_concentration(made, two_loops);
  TW_CHECK(settles, steady * litres_per_hour(6000.0), made, relative(1e-14));
  TW_CHECK(limit, twl::concentration_after({.net = net, .made = made, .loops = two_loops}, hours(50.0)), steady,
           relative(1e-13));
  const twl::loop found[] = {{.flow = twl::flow_to_hold({.made = made, .hold_at = milligrams_per_litre(0.1),
                                                         .efficiency = fraction(0.3)}),
                              .efficiency = fraction(0.3)}};
  TW_CHECK(holds, twl::steady_concentration(made, found), milligrams_per_litre(0.1), relative(1e-14));
}

TEST_CASE("circulation: the saw-tooth of water changes") {
  // 2 g/d into 2000 L is 1 mg/L a day, 7 mg/L a week.
  twl::water_change_routine weekly{.net = litres(2000.0), .made = grams_per_day(2.0), .every = days(7.0),
                                   .part = fraction(0.2), .in_new_water = milligrams_per_litre(1.0)};
  const auto plain = twl::steady_saw_tooth(weekly);
  TW_CHECK(periodic, plain.before_change, milligrams_per_litre(1.0 + 7.0 / 0.2), relative(1e-14));
  TW_CHECK(periodic, plain.after_change, milligrams_per_litre(1.0 + 7.0 * 0.8 / 0.2), relative(1e-14));
  const auto routine = water::exchange_by_routine({.part = fraction(0.2), .made_per_interval = milligrams_per_litre(7.0),
                                                   .inflow = milligrams_per_litre(1.0)});
  TW_CHECK(periodic, plain.before_change, routine.peak, relative(1e-14));
  TW_CHECK(periodic, plain.after_change, routine.trough, relative(1e-14));
  const twl::loop slow[] = {{.flow = litres_per_hour(10.0), .efficiency = fraction(0.8)}};
  weekly.loops = slow;
  const auto with_loop = twl::steady_saw_tooth(weekly);
  mass_concentration level{};
  for (int week = 0; week < 200; ++week) {
    level = twl::concentration_after({.net = weekly.net, .made = weekly.made, .at_start = level, .loops = slow}, days(7.0));
    if (week == 199) TW_CHECK(repeated, with_loop.before_change, level, relative(1e-12));
    level = level * 0.8 + weekly.in_new_water * 0.2;
  }
  TW_CHECK(repeated, with_loop.after_change, level, relative(1e-12));
  // Food once a day, no water changes: 2 g at once into 2000 L, a loop of 0.5 tanks a day.
  const twl::loop half_a_day[] = {{.flow = litres_per_day(1000.0)}};
  const auto fed = twl::steady_saw_tooth({.net = litres(2000.0), .made = grams_per_day(0.0), .every = days(1.0),
                                          .part = fraction(0.0), .dose = grams(2.0), .loops = half_a_day});
  TW_CHECK(pulses, fed.after_change, milligrams_per_litre(1.0 / (1.0 - std::exp(-0.5))), relative(1e-14));
  TW_CHECK(pulses, fed.before_change, milligrams_per_litre(1.0 / (std::exp(0.5) - 1.0)), relative(1e-14));
}

TEST_CASE("circulation: bad input") {
  const twl::loop backwards[] = {{.label = "skimmer loop", .flow = litres_per_hour(-3.0)}};
  CHECK_THROWS_WITH_AS((void)twl::turnover_rate({.net = litres(100.0), .loops = backwards}),
                       "tankwright::life::turnover_rate: skimmer loop: flow = -3 L/h is not possible; expected at least 0 L/h",
                       invalid_input);
  const twl::loop idle[] = {{.label = "idle", .flow = litres_per_hour(100.0), .efficiency = fraction(0.0)}};
  CHECK_THROWS_AS((void)twl::time_to_remove({.net = litres(100.0), .loops = idle}, fraction(0.5)), invalid_input);
  CHECK_THROWS_AS((void)twl::time_to_remove({.net = litres(100.0), .loops = std::span<const twl::loop>{}}, fraction(0.5)), invalid_input);
  CHECK_THROWS_AS((void)twl::steady_concentration(grams_per_day(1.0), idle), invalid_input);
  CHECK_THROWS_AS((void)twl::steady_saw_tooth({.net = litres(100.0), .made = grams_per_day(1.0), .every = days(7.0),
                                               .part = fraction(0.0)}), invalid_input);
  CHECK_THROWS_AS((void)twl::steady_saw_tooth({.net = litres(100.0), .made = grams_per_day(1.0), .every = days(7.0),
                                               .part = fraction(0.5), .dose = grams(-1.0)}), invalid_input);
  CHECK_THROWS_AS((void)twl::turnovers_for(fraction(0.5), fraction(0.0)), invalid_input);
  check_edges(twl::net_volume_limits, [](double x, range_policy) {
    return twl::removal_rate({.net = litres(x), .loops = two_loops});
  });
  check_edges(twl::share_removed_limits, [](double x, range_policy) { return twl::turnovers_for(fraction(x)); });
  check_edges(twl::turnovers_limits, [](double x, range_policy) { return twl::share_removed(x); });
  check_edges(twl::removal_efficiency_limits, [](double x, range_policy) { return twl::share_removed(1.0, fraction(x)); });
  check_edges(twl::time_limits, [](double x, range_policy) {
    return twl::concentration_after({.net = litres(100.0), .loops = two_loops}, hours(x));
  });
  check_edges(twl::production_limits, [](double x, range_policy) {
    return twl::concentration_after({.net = litres(100.0), .made = grams_per_day(x)}, hours(1.0));
  });
  check_edges(twl::concentration_limits, [](double x, range_policy) {
    return twl::concentration_after({.net = litres(100.0), .at_start = milligrams_per_litre(x)}, hours(1.0));
  });
}
