// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/overflow.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(overflow, "overflow", "How high does the water stand over the lagoon's edge?") {
  using namespace tankwright;
  const double q = s.given("Q", "flow of the return pump", 10000, 0, "L/h");
  const double b = s.given("b", "width of the edge, over the whole wall", 0.80, 2, "m",
                           worked::range_of(plumbing::rehbock_width_limits));
  const double p = s.given("p", "its height above the floor in front", 0.80, 2, "m",
                           worked::range_of(plumbing::rehbock_crest_limits));
  s.wanted("The head over the edge, measured well back from it.");
  const plumbing::full_width_edge edge{.width = metres(b), .crest_height = metres(p)};
  const auto found = plumbing::head_over(edge, litres_per_hour(q));
  const double h = in_metres(found.head.central);
  s.step("q", "flow per metre of edge = Q/b", q / 3.6e6 / b * 1000.0, 2, "L/(s m)");
  s.step("Cd", "Rehbock = 0.602 + 0.083 h/p, at the h found", 0.602 + 0.083 * h / p, 4);
  s.result("h", "Q = 2/3 Cd sqrt(2 g) b (h + 1.2 mm)^1.5 gives h", 1000.0 * h, 0, "mm");
  s.result("low", "low end of its band", in_millimetres(found.head.low), 0, "mm");
  s.result("high", "high end of its band", in_millimetres(found.head.high), 0, "mm");
  s.means(
      "Rehbock measured from 30 mm upwards, so this is continued below its range and carries ten per cent of flow as "
      "its band. All "
      "of this height runs down when the pump stops: it counts in the sump.");
}
