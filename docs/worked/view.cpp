// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/view.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(view, "view", "How near does the rock look?") {
  using namespace tankwright;
  const double d = s.given("d", "water between rock and window", 320, 0, "mm");
  const double t = s.given("t", "glass, index 1.52", 18.2, 1, "mm");
  const double n = s.given("n", "index of the water", 1.34, 2);
  s.wanted("The distance that it seems to have, straight on, and from 60° aside.");
  const vessel::underwater_view look{.water = millimetres(d),
                                     .panel = millimetres(t),
                                     .water_index = water::refractive_index{n},
                                     .panel_index = vessel::glass_index};
  s.result("near", "d' = d/n + t/1.52", in_millimetres(vessel::apparent_distance(look)), -1, "mm");
  s.result("aside", "from 60°, by Snell", in_millimetres(vessel::apparent_distance(look, degrees(60.0))), -1, "mm");
  s.result("crit", "seen through an end wall up to",
           in_degrees(vessel::critical_angle({.from = water::refractive_index{n}, .into = vessel::air_index})), 0, "°");
  s.means(
      "A quarter nearer straight on, and half as far for someone who stands aside: a tank looks shallower than it is. "
      "Build rockwork farther back than the "
      "drawing suggests.");
}
