// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/hardness_drift.hpp>

#include <algorithm>

#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tww = tankwright::water;

TEST_CASE("hardness drift: calcium goes with alkalinity as in calcium carbonate") {
  const evidence carbonate{"tankwright::water::calcium_with_alkalinity", kind::identity,
                           "40.078 g of calcium for two equivalents; 1 dKH = 10 mg CaO/L, IUPAC weights"};
  // 2.8 dKH are a milliequivalent, and half a millimole of calcium.
  TW_CHECK(carbonate, in_milligrams_per_litre(tww::calcium_with_alkalinity(2.80387)), 20.039, relative(1e-5));
  TW_CHECK(carbonate, tww::calcium_with_alkalinity(0.0).value(), 0.0, within(0.0));
}

TEST_CASE("hardness drift: the closed form is the course day by day") {
  const evidence course{"tankwright::water::lowest_level", kind::identity, "simulated day by day"};
  TW_CHECK(course, tww::lowest_level({.start = 8.0, .falls_a_day = 0.1, .time = days(30.0)}), 5.0, relative(1e-12));
  for (const double p : {0.1, 0.5, 1.0}) {
    for (const int length : {5, 7, 20, 30}) {
      double level = 8.0, lowest = 8.0;
      for (int day = 1; day <= length; ++day) {
        level -= 0.1;
        lowest = std::min(lowest, level);
        if (day % 7 == 0) level += p * (8.0 - level);
      }
      TW_CHECK(course,
               tww::lowest_level({.start = 8.0, .falls_a_day = 0.1, .time = days(length), .changed = fraction(p)}),
               lowest, relative(1e-12));
    }
  }
}

TEST_CASE("hardness drift: edges of the ranges") {
  const auto of = [](double start, double fall, double time, double part, double every) {
    return tww::lowest_level(
        {.start = start, .falls_a_day = fall, .time = days(time), .changed = fraction(part), .every = days(every)});
  };
  check_edges(tww::falling_start_limits, [&](double x, range_policy) { return of(x, 0.1, 1.0, 0.1, 7.0); });
  check_edges(tww::falling_limits, [&](double x, range_policy) { return of(8.0, x, 1.0, 0.1, 7.0); });
  check_edges(tww::falling_time_limits, [&](double x, range_policy) { return of(8.0, 0.1, x, 0.1, 7.0); });
  check_edges(tww::falling_part_limits, [&](double x, range_policy) { return of(8.0, 0.1, 30.0, x, 7.0); });
  check_edges(tww::falling_every_limits, [&](double x, range_policy) { return of(8.0, 0.1, 30.0, 0.1, x); });
}
