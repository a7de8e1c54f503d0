// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/power_cut.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(power_cut, "power_cut", "The pump stops: does a sump of one chamber hold what comes down?") {
  using namespace tankwright;
  const double a = s.given("A", "water surface of the display", 2.40, 2, "m2");
  const double b = s.given("b", "width of its overflow edge", 0.80, 2, "m");
  const double p = s.given("p", "height of the edge above the floor in front", 0.80, 2, "m");
  const double q = s.given("Q", "flow", 10000, 0, "L/h");
  const double o = s.given("o", "outlet of the return below the edge", 35, 0, "mm");
  const double d = s.given("D", "bore of the return", 42.6, 1, "mm");
  const double l = s.given("L", "its length", 1.6, 1, "m");
  const double as =
      s.given("As", "horizontal area of the sump", 0.90, 2, "m2", worked::range_of(plumbing::free_area_limits));
  const double z = s.given("z", "its level while the pump runs", 250, 0, "mm",
                           worked::range_of(plumbing::running_level_limits, 1000.0));
  const double rim =
      s.given("rim", "lowest point of its rim", 450, 0, "mm", worked::range_of(plumbing::rim_limits, 1000.0));
  s.given("No siphon break, no overflow box, check valves taken to be stuck open.");
  s.wanted("The room that is left below the rim, and the same with every measure at its worst end.");
  const auto found = plumbing::power_cut(
      {.display = {.surface = square_metres(a),
                   .edge = plumbing::full_width_edge{.width = metres(b), .crest_height = metres(p)}},
       .sump = {.rim = millimetres(rim),
                .running_level = millimetres(z),
                .chambers = {{.label = "sump", .horizontal_area = square_metres(as)}}},
       .returns = {{.label = "return",
                    .flow = litres_per_hour(q),
                    .outlet_below_edge = millimetres(o),
                    .pipe = plumbing::pipe_run{.label = "return",
                                               .bore = plumbing::pipe_bore{millimetres(d)},
                                               .length = metres(l),
                                               .fittings = plumbing::known_loss(6.0)}}},
       .edge_above_floor = metres(1.45)});
  s.step("h", "head over the edge, Rehbock", in_millimetres(found.head_over_edge.central), 1, "mm");
  s.step("V1", "runs over the edge = A h", in_litres(found.falls.over_edge.central), 0, "L");
  s.step("V2", "siphons back through the return = A o", in_litres(found.falls.back_siphon.central), 0, "L");
  s.step("V3", "the pipe itself = L pi D^2/4", in_litres(found.falls.return_pipes), 1, "L");
  s.step("rise", "of the sump = (V1 + V2 + V3)/As", in_millimetres(found.settled[0].level.central) - z, 0, "mm");
  s.result("margin", "left below the rim = rim - z - rise", in_millimetres(found.margin.central), 0, "mm");
  s.result("worst", "areas 3 % and levels 3 mm at their worst ends", in_millimetres(found.margin.low), 0, "mm");
  s.means(
      "The floor stays dry, with some centimetres to spare even in the worst case. Two thirds of the water comes back "
      "through the return: "
      "raising its mouth to "
      "10 mm below the edge is the cheapest safety there is. Try it with a bucket ready before trusting it.");
  s.caution(found.caution);
}
