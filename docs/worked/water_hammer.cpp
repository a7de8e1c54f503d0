// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/water_hammer.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(water_hammer, "water_hammer", "A check valve slams in the return") {
  using namespace tankwright;
  const double d = s.given("D", "bore", 42.6, 1, "mm");
  const double w = s.given("e", "wall of the PVC pipe, E 2.76 GPa", 3.7, 1, "mm");
  const double v =
      s.given("v", "velocity that stops", 1.2, 1, "m/s", worked::range_of(plumbing::velocity_change_limits));
  const double l = s.given("L", "length of the pipe", 3.0, 1, "m", worked::range_of(plumbing::surge_pipe_limits));
  s.wanted("The surge over the pressure that is there.");
  const water::liquid water{.density = kilograms_per_cubic_metre(1024.0), .viscosity = millipascal_seconds(0.96)};
  const auto a = plumbing::wave_speed({.bore = plumbing::pipe_bore{millimetres(d)}, .wall = millimetres(w)}, water);
  const auto found =
      plumbing::surge_on_closure({.wave_speed = a, .change = metres_per_second(v), .pipe = metres(l)}, water);
  s.step("a", "wave speed = sqrt(K/rho)/sqrt(1 + K D/(E e))", in_metres_per_second(a), 0, "m/s");
  s.result("dp", "surge = rho a v", in_pascals(found.pressure_rise) / 1e5, 1, "bar");
  s.result("T", "if it shuts within 2 L/a", 1000.0 * in_seconds(found.rapid), 0, "ms");
  s.means(
      "Small against the rating of new pipe, large against a bead of cement that missed half its socket. No hand shuts "
      "a ball valve that "
      "fast; a flap does.");
  s.caution(found.caution);
}
