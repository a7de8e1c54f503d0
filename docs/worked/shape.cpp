// SPDX-License-Identifier: BSL-1.0
#include <tankwright/core/units.hpp>
#include <tankwright/vessel/shape.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(shape, "shape", "A drum on its side: how much water at a quarter of its height?") {
  using namespace tankwright;
  const double d = s.given("D", "diameter inside", 0.60, 2, "m");
  const double l = s.given("L", "length inside, flat ends", 1.20, 2, "m");
  const double h = s.given("h", "depth of the water", 0.15, 2, "m");
  s.wanted("The litres in it, and full.");
  const auto drum =
      vessel::lying_cylinder({.diameter = vessel::inside{metres(d)}, .length = vessel::inside{metres(l)}});
  s.step("phi", "angle = 4 atan(sqrt(h/(D - h)))", 4 * std::atan(std::sqrt(h / (d - h))), 3, "rad");
  s.result("V", "volume = L D^2/8 (phi - sin phi)", in_litres(vessel::filled_volume(drum, metres(h))), 0, "L");
  s.result("full", "full = L pi D^2/4", in_litres(vessel::filled_volume(drum, metres(d))), 0, "L");
  s.means("A quarter of the height holds a fifth of the water. A dip stick for a lying drum needs its own scale.");
}
