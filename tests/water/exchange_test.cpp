// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/exchange.hpp>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

namespace {
const evidence enough{"tankwright::water::changes_to_leave", kind::identity, "this many are enough, one fewer is not"};
const evidence back{"tankwright::water::time_to_leave", kind::identity, "inverse of left_after_flow"};
const evidence flow_limits{"tankwright::water::exchange_by_flow", kind::identity,
                           "starts at the start, ends at inflow plus production over flow"};
const evidence flow_left{"tankwright::water::exchange_by_flow", kind::identity, "without production: left_after_flow"};
const evidence routine_closes{"tankwright::water::exchange_by_routine", kind::identity, "a round of the routine closes"};

double left_after_flow(const reference_row& row) {
  const double left = tww::left_after_flow({.volume = litres(500.0),
                                            .flow = litres_per_hour(100.0),
                                            .time = hours(5.0 * row["volumes"])})
                          .value();
  return row.has("replaced") ? 1.0 - left : left;
}
}  // namespace

TEST_CASE("exchange: reference table") {
  check_rows(reference_rows("water/exchange.csv"),
             {{"tankwright::water::left_after_flow", left_after_flow},
              {"tankwright::water::left_after_changes", [](const reference_row& row) {
                 return tww::left_after_changes({.part = fraction(row["part"]), .times = static_cast<int>(row["times"])})
                     .value();
               }}});
}

TEST_CASE("exchange: how many changes, how long a flow") {
  for (const double part : {0.05, 0.1, 0.25, 0.5, 0.9, 1.0}) {
    for (const double left : {0.9, 0.5, 0.1, 0.01, 1e-6}) {
      const int times = tww::changes_to_leave({.part = fraction(part), .left = fraction(left)});
      TW_HOLDS(enough, tww::left_after_changes({.part = fraction(part), .times = times}).value() <= left * (1 + 1e-9));
      TW_HOLDS(enough, tww::left_after_changes({.part = fraction(part), .times = times - 1}).value() > left);
      const duration time = tww::time_to_leave(
          {.volume = litres(800.0), .flow = litres_per_hour(60.0), .left = fraction(left)});
      TW_CHECK(back, tww::left_after_flow({.volume = litres(800.0), .flow = litres_per_hour(60.0), .time = time}),
               fraction(left), relative(1e-14));
    }
  }
  CHECK(tww::changes_to_leave({.part = percent(10.0), .left = fraction(1.0)}) == 0);
  CHECK(tww::changes_to_leave({.part = percent(50.0), .left = fraction(0.125)}) == 3);
}

TEST_CASE("exchange: a substance that is made all the time") {
  const auto at = [](double time, double production) {
    return tww::exchange_by_flow({.volume = litres(800.0),
                                  .flow = litres_per_hour(40.0),
                                  .time = hours(time),
                                  .start = milligrams_per_litre(10.0),
                                  .inflow = milligrams_per_litre(2.0),
                                  .production = milligrams_per_hour(production)});
  };
  TW_CHECK(flow_limits, at(0.0, 120.0).now, milligrams_per_litre(10.0), relative(1e-15));
  TW_CHECK(flow_limits, at(1e4, 120.0).now, milligrams_per_litre(5.0), relative(1e-14));
  TW_CHECK(flow_limits, at(3.0, 120.0).final, milligrams_per_litre(5.0), relative(1e-14));
  const double left = tww::left_after_flow(
                          {.volume = litres(800.0), .flow = litres_per_hour(40.0), .time = hours(7.0)}).value();
  TW_CHECK(flow_left, at(7.0, 0.0).now, milligrams_per_litre(2.0 + 8.0 * left), relative(1e-14));

  for (const double part : {0.05, 0.2, 1.0}) {
    const auto end = tww::exchange_by_routine({.part = fraction(part),
                                               .made_per_interval = milligrams_per_litre(3.0),
                                               .inflow = milligrams_per_litre(1.0)});
    TW_CHECK(routine_closes, end.trough + milligrams_per_litre(3.0), end.peak, relative(1e-14));
    TW_CHECK(routine_closes, (1.0 - part) * end.peak + part * milligrams_per_litre(1.0), end.trough, relative(1e-14));
  }
}

TEST_CASE("exchange: edges of the ranges") {
  check_edges(tww::changed_part_limits, [](double x, range_policy) {
    (void)tww::changes_to_leave({.part = fraction(x), .left = fraction(0.5)});
    (void)tww::exchange_by_routine(
        {.part = fraction(x), .made_per_interval = grams_per_litre(1.0), .inflow = grams_per_litre(0.0)});
    return tww::left_after_changes({.part = fraction(x), .times = 3});
  });
  CHECK_THROWS_AS((void)tww::left_after_changes({.part = fraction(0.1), .times = -1}), invalid_input);
  check_edges(tww::part_left_limits, [](double x, range_policy) {
    (void)tww::time_to_leave({.volume = litres(1.0), .flow = litres_per_hour(1.0), .left = fraction(x)});
    return tww::changes_to_leave({.part = fraction(0.1), .left = fraction(x)});
  });
  check_edges(tww::water_volume_limits, [](double x, range_policy) {
    (void)tww::time_to_leave({.volume = litres(x), .flow = litres_per_hour(1.0), .left = fraction(0.5)});
    return tww::left_after_flow({.volume = litres(x), .flow = litres_per_hour(1.0), .time = hours(1.0)});
  });
  check_edges(tww::exchange_flow_limits, [](double x, range_policy) {
    return tww::left_after_flow({.volume = litres(1.0), .flow = litres_per_hour(x), .time = hours(1.0)});
  });
  check_edges(tww::exchange_time_limits, [](double x, range_policy) {
    return tww::left_after_flow({.volume = litres(1.0), .flow = litres_per_hour(1.0), .time = hours(x)});
  });
  CHECK_THROWS_AS((void)tww::time_to_leave({.volume = litres(1.0), .flow = litres_per_hour(0.0), .left = fraction(0.5)}),
                  invalid_input);
  CHECK_THROWS_AS((void)tww::exchange_by_routine({.part = fraction(0.1),
                                                  .made_per_interval = grams_per_litre(-1.0),
                                                  .inflow = grams_per_litre(0.0)}),
                  invalid_input);
}
