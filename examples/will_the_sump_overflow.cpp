// SPDX-License-Identifier: BSL-1.0
// The seagrass lagoon stands over a sump of three chambers. Does the floor stay dry when the power fails, how high may
// the pump chamber run, how deep may the returns sit, and does the pump stay wet when the power comes back?
#include <cstdio>

#include <tankwright/plumbing.hpp>

namespace tw = tankwright;
namespace tp = tankwright::plumbing;

int main() {
  // [system]
  const tp::display_tank display{
      .surface = tw::square_metres(2.16),  // 2.40 m by 0.90 m
      .edge =
          tp::full_width_edge{
              .width = tw::metres(0.80), .crest_height = tw::metres(0.55), .thickness = tw::millimetres(12.0)},
      .box = tp::overflow_box{.horizontal_area = tw::square_metres(0.06), .falls_by = tw::millimetres(120.0)},
      .drains = {{.label = "main drain", .bore = tp::pipe_bore{tw::millimetres(40.9)}, .length = tw::metres(1.4)}}};
  const tp::sump sump{
      .rim = tw::centimetres(42.0),
      .running_level = tw::centimetres(20.0),
      .chambers = {{.label = "drains", .horizontal_area = tw::square_metres(0.15)},
                   {.label = "skimmer", .horizontal_area = tw::square_metres(0.30), .gear = tw::square_metres(0.03)},
                   {.label = "pump", .horizontal_area = tw::square_metres(0.25)}},
      .baffles = {{.crest = tw::centimetres(30.0), .width = tw::centimetres(50.0)},
                  {.crest = tw::centimetres(25.0), .width = tw::centimetres(50.0)}}};
  const std::vector<tp::return_line> returns{
      {.label = "left return",
       .flow = tw::litres_per_hour(5000.0),
       .outlet_below_edge = tw::millimetres(60.0),
       .break_below_edge = tw::millimetres(8.0),
       .pipe = tp::pipe_run{.bore = tp::pipe_bore{tw::millimetres(34.0)}, .length = tw::metres(2.2)}},
      {.label = "right return",
       .flow = tw::litres_per_hour(3000.0),
       .outlet_below_edge = tw::millimetres(-5.0),
       .pipe = tp::pipe_run{.bore = tp::pipe_bore{tw::millimetres(26.6)}, .length = tw::metres(3.0)}}};
  // [/system]

  // [cut]
  const tp::power_cut_input system{
      .display = display, .sump = sump, .returns = returns, .edge_above_floor = tw::metres(1.45)};
  const auto cut = tp::power_cut(system);
  // [/cut]
  std::printf("water over the edge while it runs: %.0f mm (%.0f to %.0f)%s\n",
              tw::in_millimetres(cut.head_over_edge.central), tw::in_millimetres(cut.head_over_edge.low),
              tw::in_millimetres(cut.head_over_edge.high),
              cut.extrapolated ? ", below the range of the weir formulas" : "");
  std::printf("comes down: %.0f L over the edge, %.0f L by siphon, %.0f L from box and pipes\n\n",
              tw::in_litres(cut.falls.over_edge.central), tw::in_litres(cut.falls.back_siphon.central),
              tw::in_litres(cut.falls.box.central + cut.falls.drain_pipes + cut.falls.return_pipes));
  for (std::size_t i = 0; i < cut.settled.size(); ++i) {
    std::printf("%-8s %5.1f cm -> %5.1f cm\n", cut.settled[i].label.c_str(),
                tw::in_centimetres(cut.running[i].level.central), tw::in_centimetres(cut.settled[i].level.central));
  }
  // [margin]
  std::printf("\nleft below the rim: %.1f cm, at worst %.1f cm (highest in '%s')\n",
              tw::in_centimetres(cut.margin.central), tw::in_centimetres(cut.margin.low), cut.worst.chamber.c_str());
  for (const auto& c : tp::power_cut_failures(system)) {
    if (c.failure != tp::power_cut_failure::siphon_break_blocked) continue;
    std::printf("with the siphon break of the %s blocked %.1f cm, at worst %.0f L on the floor\n", c.label.c_str(),
                tw::in_centimetres(c.margin.low), tw::in_litres(c.on_the_floor.high));
  }
  // [/margin]
  const auto level = tp::highest_safe_running_level(system);
  const auto outlet = tp::deepest_safe_outlet(system);
  if (level && outlet) {
    std::printf("the pump chamber may run at %.1f cm; an opening may lie %.0f mm below the edge\n",
                tw::in_centimetres(*level), tw::in_millimetres(*outlet));
  }
  // [restart]
  const tp::pump_inlet inlet{.above_floor = tw::centimetres(4.0), .bore = tp::pipe_bore{tw::millimetres(63.0)}};
  const auto start = tp::restart({.system = system, .inlet = inlet, .surge = tw::millimetres(60.0)});
  // [/restart]
  std::printf(
      "restart: the pump chamber falls to %.1f cm; against air it wants %.1f cm (%.1f to %.1f by different rules)\n\n",
      tw::in_centimetres(start.lowest_level.central),
      tw::in_centimetres(inlet.above_floor.get() + start.submergence.central),
      tw::in_centimetres(inlet.above_floor.get() + start.submergence.low),
      tw::in_centimetres(inlet.above_floor.get() + start.submergence.high));
  std::printf("%.*s\n", static_cast<int>(cut.caution.text.size()), cut.caution.text.data());
}
