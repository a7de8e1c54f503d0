// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/hydrostatic.hpp>
#include <tankwright/vessel/panel.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(panel, "panel", "Is the front window of 19 mm glass in a sane range?") {
  using namespace tankwright;
  const double w = s.given("W", "width between its supports", 2.20, 2, "m");
  const double h = s.given("H", "height; water to its top", 0.65, 2, "m");
  const double t = s.given("t", "thickness, the least that is sold as 19 mm", 18.2, 1, "mm");
  const double rho = s.given("rho", "density of the seawater", 1025, 0, "kg/m3");
  s.given("Annealed glass: E 71.7 GPa, nu 0.22, 5 MPa for good. Held along all four edges.");
  s.wanted("The push, the stress, the bulge.");
  const auto found = vessel::water_on({.width = metres(w),
                                       .height = metres(h),
                                       .thickness = millimetres(t),
                                       .edges = vessel::panel_edges::all_supported,
                                       .material = vessel::annealed_glass,
                                       .label = "front window"},
                                      {.level = metres(h), .water_density = kilograms_per_cubic_metre(rho)});
  s.step("p", "pressure at the lower edge = rho g H", in_kilopascals(found.at_bottom), 2, "kPa");
  s.step("F", "push of the water = p H W/2", in_kilonewtons(found.force), 2, "kN");
  s.step("M", "largest moment in the plate, by series", in_newtons(found.governing.value), 0, "N m/m");
  s.result("sigma", "stress = 6 M/t^2", in_megapascals(found.stress), 1, "MPa");
  s.result("use", "of what the glass may carry for good", 100 * found.utilisation, 0, "%");
  s.result("bulge", "in the middle", in_millimetres(found.deflection), 1, "mm");
  s.means(
      "Less than two thirds of the allowed stress, and a bulge that a straight edge can just show. That is a sane "
      "range, and no more "
      "than that: the calculation knows nothing of a hard point in the frame, a scratch or a twisted stand.");
  s.caution(found.caution);
}
