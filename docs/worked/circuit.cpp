// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/circuit.hpp>
#include <tankwright/plumbing/friction.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(circuit, "circuit", "How much does each of the two returns really get?") {
  using namespace tankwright;
  s.given("Pump: 4.60 m at no flow, 3.40 m at 8000 L/h, 0.60 m at 15 000 L/h. Seawater of salinity 35 at 24 °C.");
  s.given(
      "Left return: 42.6 mm, 1.6 m, losses 6 with the exit, under water. Right: 26.2 mm, 3.2 m, losses 7 with the "
      "exit, ends 10 mm above the water.");
  s.given("Trunk that both share: 45.2 mm, 1.8 m, losses 4.5.");
  const double z = s.given("z", "display over the water in the sump", 1.20, 2, "m",
                           worked::range_of(plumbing::circuit_level_limits));
  s.wanted("The flow of each return, and the pump's working point.");
  const auto curve = plumbing::curve_from_three_points({.label = "return pump",
                                                        .shutoff_head = metres(4.60),
                                                        .middle = {litres_per_hour(8000), metres(3.40)},
                                                        .last = {litres_per_hour(15000), metres(0.60)}});
  plumbing::circuit plan;
  plan.sources = {{.label = "sump", .level = metres(0.0)}};
  plan.pumps = {{.label = "pump", .from = "sump", .to = "outlet", .curve = curve}};
  plan.runs = {{.label = "trunk",
                .from = "outlet",
                .to = "tee",
                .bore = plumbing::pipe_bore{millimetres(45.2)},
                .length = metres(1.8),
                .fittings = plumbing::known_loss(4.5)},
               {.label = "left",
                .from = "tee",
                .to = "left end",
                .bore = plumbing::pipe_bore{millimetres(42.6)},
                .length = metres(1.6),
                .fittings = plumbing::known_loss(5.0)},
               {.label = "right",
                .from = "tee",
                .to = "right end",
                .bore = plumbing::pipe_bore{millimetres(26.2)},
                .length = metres(3.2),
                .fittings = plumbing::known_loss(6.0)}};
  plan.outlets = {{.label = "left end", .kind = plumbing::outlet_kind::submerged, .level = metres(z)},
                  {.label = "right end", .kind = plumbing::outlet_kind::open, .level = metres(z + 0.01)}};
  const auto found = plumbing::operating_point(plan, water::seawater(practical_salinity{35.0}, celsius(24.0)));
  s.step("H", "head of the pump at the sum of the flows", in_metres(found.pump("pump").head), 2, "m");
  s.step("ht", "lost in the trunk", in_metres(found.run("trunk").loss), 2, "m");
  s.step("hl", "lost in the left return = H - ht - z", in_metres(found.run("left").loss), 2, "m");
  s.result("Q", "pumped in all", in_litres_per_hour(found.delivered), -2, "L/h");
  s.result("Ql", "left return", in_litres_per_hour(found.run("left").flow), -2, "L/h");
  s.result("Qr", "right return", in_litres_per_hour(found.run("right").flow), -2, "L/h");
  s.result("vt", "velocity in the trunk", in_metres_per_second(found.run("trunk").velocity), 1, "m/s");
  s.means(
      "The narrow return gets a quarter of the water. More head is lost in the trunk than in either return, because it "
      "carries both flows in one pipe. Make the trunk one size larger before buying a larger pump.");
  s.caution(found.caution);
}
