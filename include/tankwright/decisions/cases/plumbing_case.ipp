// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/cases/plumbing_case.hpp>
#include <tankwright/decisions/decision.hpp>

namespace tankwright::decisions {

namespace detail {

[[nodiscard]] inline plumbing::power_cut_input power_cut_of(const plumbing_case& c) {
  plumbing::power_cut_input in{.display = c.in.display,
                               .sump = c.in.sump,
                               .returns = {},
                               .edge_above_floor = c.in.edge_above_floor,
                               .water = c.liquid};
  in.drains_into = c.in.drains_into;
  in.area_uncertainty = c.in.area_uncertainty;
  in.level_uncertainty = c.in.level_uncertainty;
  in.reserve = c.in.reserve;
  const circuit_band& band = *c.circuit;
  if (band.central.delivered.value() > 0.0) {
    const double between = (band.most.delivered - band.least.delivered).value();
    in.flow_uncertainty = fraction(0.5 * between / band.central.delivered.value());
  }
  for (const plan::return_outlet& outlet : c.in.returns) {
    const flow_rate flow = std::max(flow_rate{}, band.central.outlet(outlet.label).flow);
    plumbing::return_line line{.label = outlet.label, .flow = flow, .outlet_below_edge = outlet.below_edge};
    line.break_below_edge = outlet.siphon_break;
    line.pipe = outlet.pipe;
    line.check_valve = outlet.check_valve;
    in.returns.push_back(std::move(line));
  }
  in.shared_pipes = c.in.shared_pipes;
  return in;
}

}  // namespace detail

TANKWRIGHT_INLINE circuit_band circuit_band_of(const plumbing::circuit& circuit, const water::liquid& liquid) {
  const auto at = [&](plumbing::losses which) { return plumbing::operating_point(circuit, liquid, which); };
  const bool sharp = std::all_of(circuit.runs.begin(), circuit.runs.end(),
                                 [](const plumbing::pipe_run& run) { return run.fittings.is_sharp(); });
  const plumbing::circuit_solution central = at(plumbing::losses::central);
  if (sharp) return {central, central, central};
  return {at(plumbing::losses::most), central, at(plumbing::losses::least)};
}

TANKWRIGHT_INLINE const circuit_band& plumbing_case::solved() const {
  if (circuit) return *circuit;
  constexpr double none = __builtin_nan("");
  throw no_convergence{why_no_circuit, {"tankwright::decisions::solved", "circuit", none, none, none, {}, {}}};
}

TANKWRIGHT_INLINE plumbing_case case_of(const plan::plumbing_section& s, const water_basis& water) {
  plumbing_case c{.in = plan::inputs_of(s), .liquid = water::seawater(water.salinity, water.temperature)};
  if (!c.in.has_circuit()) {
    c.why_no_cut = c.in.returns.empty() ? "give each return and how far its opening lies below the overflow edge"
                                        : "give the pump's curve: its flow stands over the edge and comes down";
    return c;
  }
  try {
    c.circuit = circuit_band_of(c.in.circuit, c.liquid);
  } catch (const error& mistake) {
    c.why_no_circuit = c.why_no_cut = answers::reason_of(mistake);
    return c;
  }
  if (!(c.circuit->central.delivered.value() > 0.0)) {
    c.why_no_cut = "take a pump that lifts water to the returns";
    return c;
  }
  try {
    c.cut_input = detail::power_cut_of(c);
    c.cut = plumbing::power_cut(*c.cut_input);
  } catch (const error& mistake) {
    c.why_no_cut = answers::reason_of(mistake);
  }
  return c;
}

TANKWRIGHT_INLINE void add_to(system_state& state, const plumbing_case& c) {
  if (c.circuit) state.flow = c.circuit->band([](const auto& solved) { return solved.delivered; });
  const flow_rate flow = c.circuit ? c.circuit->central.delivered : flow_rate{};
  const auto levels = plumbing::running_levels(c.in.sump, flow, c.in.drains_into);
  double surface = 0.0;
  for (std::size_t i = 0; i < c.in.sump.chambers.size(); ++i) {
    const auto& chamber = c.in.sump.chambers[i];
    surface += (chamber.horizontal_area.at(levels.chambers[i].level.central) - chamber.gear).value();
  }
  const double held = levels.water.value();
  const double part = c.in.area_uncertainty.value();
  state.sump_water = estimate<volume>{volume::from_value(held * (1.0 - part)), volume::from_value(held),
                                      volume::from_value(held * (1.0 + part)), "horizontal areas of the sump"};
  state.sump_surface = area::from_value(surface);
  if (!state.display_surface) state.display_surface = c.in.display.surface.get();
}

}  // namespace tankwright::decisions
