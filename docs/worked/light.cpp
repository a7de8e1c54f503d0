// SPDX-License-Identifier: BSL-1.0
#include <tankwright/room/lighting.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(light, "light", "Lamps over 70 cm of water") {
  using namespace tankwright;
  const double h =
      s.given("h", "height of the lamp over the water", 0.40, 2, "m", worked::range_of(room::lamp_height_limits));
  const double beam = s.given("b", "full angle of its beam", 90, 0, "deg");
  const double depth = s.given("D", "depth", 0.70, 2, "m", worked::range_of(room::light_depth_limits));
  const double t = s.given("T", "light that a metre of the water lets through", 88, 0, "%",
                           worked::range_of(room::through_a_metre_limits, 100.0));
  s.given("Refractive index of sea water 1.34.");
  s.wanted("The width that one lamp lights, and the light at the depth of that at the surface.");
  const auto share = [&](double height) {
    return in_percent(
        room::light_at_depth({.height = metres(height), .depth = metres(depth), .through_a_metre = percent(t)}));
  };
  s.step("s", "spread = (h/(h + D/n))^2", 100.0 * std::pow(h / (h + depth / 1.34), 2.0), 0, "%");
  s.step("a", "let through T^D", 100.0 * std::pow(t / 100.0, depth), 0, "%");
  s.result("w", "width at the water, 2 h tan(b/2)", in_metres(room::lit_width(metres(h), degrees(beam))), 2, "m");
  s.result("x", "light at the depth", share(h), 0, "%");
  s.compare("x2", "from twice the height", share(2.0 * h), 0, "%");
  s.means(
      "Spread takes far more than the water does. From twice the height the bottom gets a larger part of what meets "
      "the "
      "surface, of a quarter of the light.");
}
