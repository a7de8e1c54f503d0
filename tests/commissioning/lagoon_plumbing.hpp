// SPDX-License-Identifier: BSL-1.0
/// @file
/// The plumbing of the demo plan, built in code: for the tests of the assessment and its benchmark.
#pragma once

#include <tankwright/commissioning/plumbing_plan.hpp>

namespace tankwright::testing {

/// A run with a loss coefficient known to 30 %.
inline plumbing::pipe_run lagoon_pipe(std::string label, double bore_mm, double length_m, double loss) {
  return {.label = std::move(label),
          .bore = plumbing::pipe_bore{millimetres(bore_mm)},
          .length = metres(length_m),
          .fittings = {plumbing::loss_coefficient{0.7 * loss}, plumbing::loss_coefficient{loss},
                       plumbing::loss_coefficient{1.3 * loss}, "30 %"}};
}

inline plumbing::pipe_run joined(plumbing::pipe_run pipe, std::string from, std::string to) {
  pipe.from = std::move(from);
  pipe.to = std::move(to);
  return pipe;
}

/// One pump, a trunk, two returns, two drains into a sump of three chambers.
inline commissioning::plumbing_plan lagoon_plumbing() {
  commissioning::plumbing_plan plan{
      .display = {.surface = square_metres(2.40),
                  .edge = plumbing::full_width_edge{.width = metres(0.80), .crest_height = metres(0.80)},
                  .box = plumbing::overflow_box{.plan = square_metres(0.06), .falls_by = millimetres(120.0)}},
      .sump = {.rim = metres(0.45),
               .running_level = metres(0.25),
               .chambers = {{.label = "drains", .plan = square_metres(0.24)},
                            {.label = "skimmer", .plan = square_metres(0.36), .gear = square_metres(0.04)},
                            {.label = "pump", .plan = square_metres(0.30)}},
               .baffles = {{.crest = metres(0.32), .width = metres(0.58)},
                           {.crest = metres(0.28), .width = metres(0.58)}}}};
  plan.circuit.sources = {{.label = "sump", .level = metres(0.25)}};
  plan.circuit.pumps = {{.label = "return pump",
                         .from = "sump",
                         .to = "outlet",
                         .curve = plumbing::curve_from_points(
                             "return pump", {{.flow = litres_per_hour(0.0), .head = metres(4.6)},
                                             {.flow = litres_per_hour(4000.0), .head = metres(4.2)},
                                             {.flow = litres_per_hour(8000.0), .head = metres(3.4)},
                                             {.flow = litres_per_hour(12000.0), .head = metres(2.1)},
                                             {.flow = litres_per_hour(15000.0), .head = metres(0.6)}})}};
  const auto trunk = joined(lagoon_pipe("trunk", 57.0, 1.8, 4.5), "outlet", "branching");
  const auto left = joined(lagoon_pipe("left pipe", 57.0, 1.6, 5.0), "branching", "left");
  const auto right = joined(lagoon_pipe("right pipe", 34.0, 3.2, 6.0), "branching", "right");
  plan.circuit.runs = {trunk, left, right};
  plan.circuit.outlets = {{.label = "left", .kind = plumbing::outlet_kind::submerged, .level = metres(1.45)},
                          {.label = "right", .kind = plumbing::outlet_kind::open, .level = metres(1.46)}};
  plan.returns = {{.label = "left", .below_edge = millimetres(35.0), .siphon_break = millimetres(6.0), .pipe = left},
                  {.label = "right", .below_edge = millimetres(-10.0), .pipe = right}};
  plan.shared_pipes = {trunk};
  plan.drains = {{.pipe = lagoon_pipe("main drain", 81.4, 1.3, 1.6),
                  .drop = metres(0.95),
                  .inlet_head = millimetres(90.0)},
                 {.pipe = lagoon_pipe("emergency drain", 81.4, 1.3, 1.6),
                  .drop = metres(0.95),
                  .inlet_head = millimetres(90.0)}};
  plan.display.drains = {plan.drains.front().pipe};
  plan.edge_to_rim = millimetres(50.0);
  plan.area_uncertainty = percent(2.0);
  plan.level_uncertainty = millimetres(4.0);
  plan.inlet = plumbing::pump_inlet{.above_floor = millimetres(20.0), .bore = plumbing::pipe_bore{millimetres(80.0)}};
  return plan;
}

}  // namespace tankwright::testing
