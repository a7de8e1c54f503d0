// SPDX-License-Identifier: BSL-1.0
#include <vector>

#include <tankwright/life/circulation.hpp>

#include <tankwright/water/exchange.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twl = tankwright::life;

namespace {

const evidence loops_add{"tankwright::life::removal_rate", kind::identity,
                         "loops add: (8000 x 0.5 + 2000 x 1)/2000 an hour"};
const evidence turns{"tankwright::life::turnover_rate", kind::identity, "(8000 + 2000)/2000 an hour"};
const evidence inverse{"tankwright::life::turnovers_for", kind::property, "round trip with share_removed"};
const evidence cleared{"tankwright::life::flow_cleared", kind::identity, "8000 x 0.5 + 2000 x 1 L/h"};
const evidence kept{"tankwright::life::treatment_flow_for", kind::property, "the flow found keeps the level"};

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
    return in_hours(*twl::time_to_remove({.net = litres(row["V"]), .loops = loops}, fraction(row["p"])).time);
  };
  const auto flow = [](const reference_row& row) {
    return in_cubic_metres_per_hour(twl::treatment_flow_for({.made = grams_per_day(row["made"]),
                                                             .level = milligrams_per_litre(row["C"]),
                                                             .efficiency = fraction(row["eta"])}));
  };
  check_rows(reference_rows("life/circulation.csv"), {{"tankwright::life::share_removed", removed},
                                                      {"tankwright::life::turnovers_for", turnovers},
                                                      {"tankwright::life::time_to_remove", time},
                                                      {"tankwright::life::treatment_flow_for", flow}});
}

TEST_CASE("circulation: loops add") {
  const twl::circulation tank{.net = litres(2000.0), .loops = two_loops};
  TW_CHECK(turns, twl::turnover_rate(tank), per_hour(5.0), relative(1e-15));
  TW_CHECK(loops_add, twl::removal_rate(tank), per_hour(3.0), relative(1e-15));
  const auto clear = twl::time_to_remove(tank, fraction(0.9));
  CHECK(compare(clear.turnovers, in_hours(clear.time.value()) * 5.0, relative(1e-14)).good);
  CHECK(clear.caution.text.find("net volume") != std::string_view::npos);
}

TEST_CASE("circulation: turnovers and shares are each other's inverse") {
  for (double p = 0.0; p < 0.9999; p += 0.01) {
    for (const double eta : {0.1, 0.5, 1.0}) {
      const double n = twl::turnovers_for(fraction(p), fraction(eta));
      TW_CHECK(inverse, twl::share_removed(n, fraction(eta)), fraction(p),
               (tolerance{.absolute = 1e-15, .relative = 1e-14}));
    }
  }
}

TEST_CASE("circulation: what the loops clear, and the flow for a level") {
  TW_CHECK(cleared, twl::flow_cleared(two_loops), litres_per_hour(6000.0), relative(1e-15));
  TW_CHECK(cleared, twl::flow_cleared({}), flow_rate{}, tolerance{});
  const mass_flow made = grams_per_day(5.0);
  const twl::loop found[] = {
      {.flow = twl::treatment_flow_for({.made = made, .level = milligrams_per_litre(0.1), .efficiency = fraction(0.3)}),
       .efficiency = fraction(0.3)}};
  TW_CHECK(kept,
           water::settled_concentration({.volume = litres(2000.0), .made = made, .cleared = twl::flow_cleared(found)}),
           milligrams_per_litre(0.1), relative(1e-14));
}

TEST_CASE("circulation: bad input") {
  const twl::loop backwards[] = {{.label = "skimmer loop", .flow = litres_per_hour(-3.0)}};
  CHECK_THROWS_WITH_AS(
      (void)twl::turnover_rate({.net = litres(100.0), .loops = backwards}),
      "tankwright::life::turnover_rate: skimmer loop: flow = -3 L/h is not possible; expected 0 to 1e+10 L/h",
      invalid_input);
  const twl::loop idle[] = {{.label = "idle", .flow = litres_per_hour(100.0), .efficiency = fraction(0.0)}};
  // A pump that lifts nothing is an answer, not a mistake: it never clears.
  CHECK_FALSE(twl::time_to_remove({.net = litres(100.0), .loops = idle}, fraction(0.5)).time);
  CHECK_FALSE(twl::time_to_remove({.net = litres(100.0), .loops = std::span<const twl::loop>{}}, fraction(0.5)).time);
  // A loop that takes next to nothing out: in no time that anything lasts.
  const std::vector<twl::loop> next_to_none{
      {.label = "next to none", .flow = litres_per_hour(8000.0), .efficiency = fraction(2.3e-308)}};
  const auto hardly = twl::time_to_remove({.net = litres(100.0), .loops = next_to_none}, fraction(0.99));
  CHECK_FALSE(hardly.time);
  CHECK(hardly.turnovers == 0.0);
  CHECK_THROWS_AS((void)twl::turnovers_for(fraction(0.5), fraction(0.0)), invalid_input);
  check_edges(twl::net_volume_limits,
              [](double x, range_policy) { return twl::removal_rate({.net = litres(x), .loops = two_loops}); });
  check_edges(twl::share_removed_limits, [](double x, range_policy) { return twl::turnovers_for(fraction(x)); });
  check_edges(twl::turnovers_limits, [](double x, range_policy) { return twl::share_removed(x); });
  check_edges(twl::removal_efficiency_limits,
              [](double x, range_policy) { return twl::share_removed(1.0, fraction(x)); });
  check_edges(twl::loop_flow_limits, [](double x, range_policy) {
    const twl::loop one[] = {{.label = "", .flow = litres_per_hour(x)}};
    return twl::flow_cleared(one);
  });
  check_edges(water::made_limits, [](double x, range_policy) {
    return twl::treatment_flow_for({.made = grams_per_day(x), .level = milligrams_per_litre(1.0)});
  });
  check_edges(twl::kept_level_limits, [](double x, range_policy) {
    return twl::treatment_flow_for({.made = grams_per_day(1.0), .level = milligrams_per_litre(x)});
  });
}

TEST_CASE("circulation: what is taken and what is refused") {
  const auto loops = [](double flow, double efficiency) {
    return std::vector<twl::loop>{{.label = "one", .flow = litres_per_hour(flow), .efficiency = fraction(efficiency)}};
  };
  const auto turnover = [&](double net, double flow, double efficiency) {
    const auto all = loops(flow, efficiency);
    return twl::turnover_rate({.net = litres(net), .loops = all});
  };
  const auto removal = [&](double net, double flow, double efficiency) {
    const auto all = loops(flow, efficiency);
    return twl::removal_rate({.net = litres(net), .loops = all});
  };
  const auto cleared_flow = [&](double flow, double efficiency) {
    const auto all = loops(flow, efficiency);
    return twl::flow_cleared(all);
  };
  const auto time = [&](double net, double flow, double efficiency, double removed) {
    const auto all = loops(flow, efficiency);
    return twl::time_to_remove({.net = litres(net), .loops = all}, fraction(removed));
  };
  check_ranges("life::turnover_rate", {TW_RANGE("net volume", 1e-3, 1e10, turnover(x, 1.0, 1.0)),
                                       TW_RANGE("one: flow", 0.0, 1e10, turnover(1.0, x, 1.0)),
                                       TW_RANGE("one: efficiency", 0.0, 1.0, turnover(1.0, 1.0, x))});
  check_ranges("life::removal_rate", {TW_RANGE("net volume", 1e-3, 1e10, removal(x, 1.0, 1.0)),
                                      TW_RANGE("one: flow", 0.0, 1e10, removal(1.0, x, 1.0)),
                                      TW_RANGE("one: efficiency", 0.0, 1.0, removal(1.0, 1.0, x))});
  check_ranges("life::flow_cleared", {TW_RANGE("one: flow", 0.0, 1e10, cleared_flow(x, 1.0)),
                                      TW_RANGE("one: efficiency", 0.0, 1.0, cleared_flow(1.0, x))});
  check_ranges("life::time_to_remove",
               {TW_RANGE("net volume", 1e-3, 1e10, time(x, 1.0, 1.0, 0.5)),
                TW_RANGE("one: flow", 0.0, 1e10, time(1.0, x, 1.0, 0.5)),
                TW_RANGE("one: efficiency", 0.0, 1.0, time(1.0, 1.0, x, 0.5)),
                {"share removed", 0.0, 1.0, [&](double x) { (void)time(1.0, 1.0, 1.0, x); }, false, true}});
  check_ranges("life::share_removed", {TW_RANGE("turnovers", 0.0, 1e12, twl::share_removed(x)),
                                       TW_RANGE("efficiency", 0.0, 1.0, twl::share_removed(1.0, fraction(x)))});
  check_ranges("life::turnovers_for",
               {{"share removed", 0.0, 1.0, [](double x) { (void)twl::turnovers_for(fraction(x)); }, false, true},
                TW_RANGE("efficiency", 1e-6, 1.0, twl::turnovers_for(fraction(0.5), fraction(x)))});
  const auto flow = [](double made, double level, double efficiency) {
    return twl::treatment_flow_for(
        {.made = grams_per_day(made), .level = milligrams_per_litre(level), .efficiency = fraction(efficiency)});
  };
  check_ranges("life::treatment_flow_for", {TW_RANGE("level to stay at", 1e-8, 1e7, flow(1.0, x, 1.0)),
                                            TW_RANGE("efficiency", 1e-6, 1.0, flow(1.0, 1.0, x))});
}

TEST_CASE("circulation: what never clears says so, in no turnovers and with the caution") {
  const auto never = twl::time_to_remove({.net = litres(100.0), .loops = std::span<const twl::loop>{}}, fraction(0.5));
  CHECK_FALSE(never.time);
  CHECK(never.turnovers == 0.0);
  CHECK_FALSE(never.caution.text.empty());
}
