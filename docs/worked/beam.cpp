// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/beam.hpp>
#include <tankwright/vessel/brace.hpp>
#include <vector>

#include "worked.hpp"

WORKED_EXAMPLE(beam, "beam", "Does the brace carry the lights and the pull of the panels?") {
  using namespace tankwright;
  const double l = s.given("l", "span of the brace", 1.00, 2, "m");
  const double b = s.given("b", "breadth of the timber", 45, 0, "mm");
  const double d = s.given("d", "its depth, upright", 90, 0, "mm");
  const double e = s.given("E", "its modulus", 10, 0, "GPa");
  const double m = s.given("m", "each of two lights, 0.30 m from either end", 12, 0, "kg");
  const double r = s.given("r", "rail that it holds in the middle", 2.40, 2, "m");
  const double h = s.given("H", "water at the panels, to the rail", 0.85, 2, "m");
  const double rho = s.given("rho", "density of the seawater", 1025, 0, "kg/m3");
  s.wanted("The pull in the brace, its stress and its sag.");
  const auto rails =
      vessel::rails_of({.height = metres(h), .level = metres(h), .water_density = kilograms_per_cubic_metre(rho)});
  const auto pull = vessel::pull_of_braces({.rail = metres(r), .braces = 1, .load = rails.top});
  const double weight = m * 9.80665;
  const auto found = vessel::bend(
      {.span = metres(l),
       .section = vessel::rectangular_section({.breadth = millimetres(b), .depth = millimetres(d)}),
       .modulus = gigapascals(e),
       .supports = std::vector<vessel::beam_support>{{.at = metres(0.0)}, {.at = metres(l)}},
       .points = {{.load = newtons(weight), .at = metres(0.30)}, {.load = newtons(weight), .at = metres(l - 0.30)}},
       .pull = pull.largest});
  s.step("q", "the panel leans on its rail with rho g H^2/6", in_newtons_per_metre(rails.top), 0, "N/m");
  s.step("N", "pull in the brace = 5/4 q r/2", in_newtons(pull.largest), 0, "N");
  s.step("M", "moment between the lights = m g 0.30", found.largest_moment.value(), 1, "N m");
  s.step("sb", "stress by bending = 6 M/(b d^2)", in_megapascals(found.bending), 2, "MPa");
  s.step("sn", "stress by the pull = N/(b d)", in_megapascals(found.axial), 2, "MPa");
  s.result("sigma", "together, at the lower fibre", in_megapascals(found.combined), 1, "MPa");
  s.result("sag", "in the middle", in_millimetres(found.deflection), 2, "mm");
  s.means(
      "The timber hardly notices: wet softwood may carry about six times as much. What fails first is the joint at its "
      "ends, which "
      "must hold the whole pull for years. Design the joint, then the timber.");
  s.caution(pull.caution);
}
