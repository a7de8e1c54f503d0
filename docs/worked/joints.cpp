// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/joints.hpp>
#include <tankwright/vessel/lifting.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(joints, "joints", "Do screws hold the corner of the plywood box?") {
  using namespace tankwright;
  const double w = s.given("W", "wall from corner to corner", 1.20, 2, "m");
  const double z = s.given("z", "depth of the water, to the rim", 0.60, 2, "m");
  const double rho = s.given("rho", "density of the seawater", 1025, 0, "kg/m3");
  const double g =
      s.given("G", "wood of the cleat: specific gravity", 0.50, 2, "", worked::range_of(vessel::screw_gravity_limits));
  const double d = s.given("D", "shank of a screw", 5.0, 1, "mm", worked::range_of(vessel::screw_diameter_limits, 1e3));
  const double p =
      s.given("p", "thread in the cleat", 30, 0, "mm", worked::range_of(vessel::screw_penetration_limits, 1e3));
  const double hole = s.given("h", "hole for a drain, in glass of 12 mm", 60, 0, "mm");
  const double reach =
      s.given("r", "lifting a lid: hands in front of the ankles", 0.40, 2, "m", worked::range_of(vessel::reach_limits));
  s.wanted("The pull on the corner at the floor, how close the screws sit, and two rules for the hole and the lid.");
  const auto pull =
      vessel::pull_on_joint({.width = metres(w), .depth = metres(z), .water_density = kilograms_per_cubic_metre(rho)});
  const auto screw = vessel::withdrawal_of(
      {.gravity = g, .diameter = millimetres(d), .penetration = millimetres(p), .wet_factor = 0.7});
  s.step("q", "pull on the corner = rho g z W/2", pull.value() / 1000.0, 2, "kN/m");
  s.step("F", "a screw = 2850 psi G^2 D p x 0.9 x 0.7", in_newtons(screw), 0, "N");
  s.result("n", "screws in a metre at the floor = q/F", pull.value() / in_newtons(screw), 1, "1/m");
  s.result("a", "one every", 1000.0 * in_newtons(screw) / pull.value(), 0, "mm");
  s.result("edge", "middle of the hole from the edge of the glass",
           in_millimetres(vessel::hole_to_edge({.diameter = millimetres(hole), .thickness = millimetres(12.0)})), 0,
           "mm");
  s.result("M", "lid that one lifts at most, hands at 1.20 m",
           in_kilograms(vessel::recommended_lift({.reach = metres(reach), .height = metres(1.20)})), 1, "kg");
  s.means(
      "Every 12 cm at the floor, in side grain, and the pull falls to nothing at the surface. Glue may be stronger, "
      "but the two are not added: a joint that needs both has neither to spare.");
  s.caution(vessel::lifting_caution);
}
