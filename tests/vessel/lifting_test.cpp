// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/lifting.hpp>

#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twv = tankwright::vessel;

TEST_CASE("lifting: the recommended limit by its multipliers") {
  const evidence manual{
      "tankwright::vessel::recommended_lift", kind::published,
      "NIOSH equation, worked example read in a reproduction: 51 x 0.50 x 0.82 x 0.93 x 0.95 = 18.4 lb"};
  // H 20 in, V 6 in, D 16 in, fair grip; the metric and the inch form differ by some tenths of a per cent.
  const auto found =
      twv::recommended_lift({.reach = inches(20.0), .height = inches(6.0), .travel = inches(16.0), .coupling = 0.95});
  TW_CHECK(manual, in_pounds(found), 18.4, within(0.3));
  const evidence hand{"tankwright::vessel::recommended_lift", kind::identity, "the metric equation by hand"};
  TW_CHECK(hand, twv::recommended_lift({.reach = metres(0.25), .height = metres(0.75), .coupling = 1.0}),
           kilograms(23.0), relative(1e-12));
  TW_CHECK(hand, twv::recommended_lift({.reach = metres(0.5), .height = metres(1.25)}),
           kilograms(23.0 * 0.5 * (1.0 - 0.003 * 50.0) * (0.82 + 4.5 / 25.0) * 0.9), relative(1e-12));
  // "If H is less than 25 cm set H to 25 cm", and D as well.
  const auto near = twv::recommended_lift({.reach = metres(0.1), .height = metres(0.75), .travel = metres(0.1)});
  TW_CHECK(hand, near, kilograms(23.0 * 0.9), relative(1e-12));
  // Far above the head nothing is left: 1 - 0.3 (10 - 0.75) is below zero.
  CHECK(twv::recommended_lift({.reach = metres(0.25), .height = metres(10.0)}, extrapolate) == kilograms(0.0));
}

TEST_CASE("lifting: edges of the ranges") {
  check_edges(twv::reach_limits, [](double h, range_policy p) {
    return twv::recommended_lift({.reach = metres(h), .height = metres(1.0)}, p);
  });
  check_edges(twv::hand_height_limits, [](double v, range_policy p) {
    return twv::recommended_lift({.reach = metres(0.4), .height = metres(v)}, p);
  });
  check_edges(twv::travel_limits, [](double d, range_policy p) {
    return twv::recommended_lift({.reach = metres(0.4), .height = metres(1.0), .travel = metres(d)}, p);
  });
  check_edges(twv::coupling_limits, [](double c, range_policy p) {
    return twv::recommended_lift({.reach = metres(0.4), .height = metres(1.0), .coupling = c}, p);
  });
}
