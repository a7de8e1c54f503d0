// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/joints.hpp>

#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twv = tankwright::vessel;

TEST_CASE("joints: screws by the design values of the wood code") {
  // Undivided: without the factor for the duration.
  const auto pounds_an_inch = [](double gravity, double inch) {
    return in_pounds_force(twv::withdrawal_of(
        {.gravity = gravity, .diameter = inches(inch), .penetration = inches(1.0), .duration_factor = 1.0}));
  };
  const evidence printed{
      "tankwright::vessel::withdrawal_of", kind::published,
      "worked example of the NDS formula: spruce of 0.45, screw no. 10 of 0.190 in, 109 lb/in (cut, not rounded)"};
  TW_CHECK(printed, pounds_an_inch(0.45, 0.190), 109.5, within(0.5));
  const evidence table{"tankwright::vessel::withdrawal_of", kind::from_memory,
                       "NDS table 12.2B: no. 8 and no. 10 in 0.50"};
  TW_CHECK(table, pounds_an_inch(0.50, 0.164), 117.0, within(0.5));
  TW_CHECK(table, pounds_an_inch(0.50, 0.190), 135.0, within(0.5));
  const evidence hand{"tankwright::vessel::withdrawal_of", kind::identity, "factors multiply"};
  TW_CHECK(hand,
           twv::withdrawal_of(
               {.gravity = 0.5, .diameter = millimetres(5.0), .penetration = millimetres(40.0), .wet_factor = 0.7}),
           newtons(2850.0 * 4.4482216152605 / 0.00064516 * 0.25 * 0.005 * 0.04 * 0.9 * 0.7), relative(1e-12));
}

TEST_CASE("joints: half the wall pulls on each corner, at every depth") {
  const evidence statics{"tankwright::vessel::pull_on_joint", kind::identity, "rho g z W/2"};
  TW_CHECK(statics,
           twv::pull_on_joint(
               {.width = metres(2.0), .depth = metres(0.8), .water_density = kilograms_per_cubic_metre(1000.0)}),
           newtons_per_metre(1000.0 * 9.80665 * 0.8), relative(1e-12));
  TW_CHECK(statics,
           twv::pull_on_joint(
               {.width = metres(2.0), .depth = metres(0.0), .water_density = kilograms_per_cubic_metre(1000.0)}),
           newtons_per_metre(0.0), within(newtons_per_metre(0.0)));
}

TEST_CASE("joints: a hole from the edge, in thin and in thick glass, in acrylic") {
  const evidence rule{"tankwright::vessel::hole_to_edge", kind::identity, "the larger of two rules, by hand"};
  TW_CHECK(rule, twv::hole_to_edge({.diameter = millimetres(50.0), .thickness = millimetres(10.0)}), millimetres(100.0),
           relative(1e-12));
  TW_CHECK(rule, twv::hole_to_edge({.diameter = millimetres(12.0), .thickness = millimetres(19.0)}), millimetres(44.0),
           relative(1e-12));
  TW_CHECK(rule, twv::hole_to_edge({.diameter = millimetres(50.0), .thickness = millimetres(10.0), .glass = false}),
           millimetres(75.0), relative(1e-12));
}

TEST_CASE("joints: edges of the ranges") {
  check_edges({"screw: specific gravity", twv::screw_gravity_limits.unit, twv::screw_gravity_limits.possible},
              [](double g, range_policy) {
                return twv::withdrawal_of({.gravity = g, .diameter = metres(0.005), .penetration = metres(0.03)});
              });
  check_edges({"screw: diameter", twv::screw_diameter_limits.unit, twv::screw_diameter_limits.possible},
              [](double d, range_policy) {
                return twv::withdrawal_of({.gravity = 0.5, .diameter = metres(d), .penetration = metres(0.03)});
              });
  check_edges({"screw: penetration", twv::screw_penetration_limits.unit, twv::screw_penetration_limits.possible},
              [](double p, range_policy) {
                return twv::withdrawal_of({.gravity = 0.5, .diameter = metres(0.005), .penetration = metres(p)});
              });
  check_edges({"screw: factor", twv::screw_factor_limits.unit, twv::screw_factor_limits.possible},
              [](double x, range_policy) {
                return twv::withdrawal_of(
                    {.gravity = 0.5, .diameter = metres(0.005), .penetration = metres(0.03), .wet_factor = x});
              });
  CHECK_THROWS_AS((void)twv::pull_on_joint(
                      {.width = metres(0.0), .depth = metres(1.0), .water_density = kilograms_per_cubic_metre(1000.0)}),
                  invalid_input);
  CHECK_THROWS_AS((void)twv::hole_to_edge({.diameter = metres(0.0), .thickness = metres(0.01)}), invalid_input);
}
