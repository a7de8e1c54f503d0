// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/plumbing/one_pump_stops.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

namespace detail {

/// What comes into the display less what runs back out of it.
[[nodiscard]] inline flow_rate into_the_display(const plumbing::circuit_solution& solved) {
  flow_rate sum{};
  for (const plumbing::outlet_flow& outlet : solved.outlets) sum += outlet.flow;
  return sum;
}

/// The circuit with one pump standing, and every check valve between it and the display stuck open, or none.
[[nodiscard]] inline circuit_band with_one_standing(const plumbing_case& c, std::size_t pump, bool valves_hold) {
  plumbing::circuit circuit = c.in.circuit;
  circuit.pumps[pump].speed = plumbing::speed_ratio{0.0};
  if (!valves_hold) {
    circuit.pumps[pump].check_valve.reset();
    for (plumbing::pipe_run& run : circuit.runs) run.check_valve.reset();
  }
  return circuit_band_of(circuit, c.liquid);
}

[[nodiscard]] inline bool has_check_valves(const plumbing::circuit& circuit, const plumbing::circuit_pump& pump) {
  return pump.check_valve || std::any_of(circuit.runs.begin(), circuit.runs.end(),
                                         [](const plumbing::pipe_run& run) { return run.check_valve.has_value(); });
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_one_pump_stops(const situation& s, answers& out) {
  if (!s.plan().plumbing || s.plan().plumbing->further_pump.empty()) return;
  finding& f = out.ask(one_pump_stops);
  const plumbing_case& c = s.plumbing();
  if (!c.in.has_circuit()) {
    f.unknown("give the returns that the pumps feed");
    return;
  }
  f.detail("all", "over the edge with all of them running", c.solved().band(detail::into_the_display));
  std::string still;
  for (std::size_t i = 0; i < c.in.circuit.pumps.size(); ++i) {
    const plumbing::circuit_pump& pump = c.in.circuit.pumps[i];
    const std::string place = pump.label + " stands";
    const circuit_band solved = detail::with_one_standing(c, i, true);
    f.margin("over", "still goes over the edge", solved.band(detail::into_the_display), flow_rate{}, place);
    for (const plumbing::outlet_flow& outlet : solved.central.outlets) {
      if (!(outlet.flow.value() > 0.0)) still += (still.empty() ? "" : ", ") + outlet.label + " when " + place;
    }
    const double back = -solved.central.pumps[i].flow.value();
    if (back > 0.0) f.detail("back", "runs back through it into the sump", flow_rate::from_value(back), place);
    if (detail::has_check_valves(c.in.circuit, pump)) {
      const circuit_band stuck = detail::with_one_standing(c, i, false);
      f.detail("stuck", "over the edge, where check valves stick open", stuck.band(detail::into_the_display), place);
    }
  }
  if (!still.empty()) f.note = "Gives nothing: " + still + ". ";
  f.note += "A return that runs back goes on until its opening draws air, which it does not while the display is full.";
  if (f.verdict == verdict::does_not_hold) {
    f.happens = "When " + f.margin()->place +
                ", as much runs back through it as the others bring: the display falls "
                "until the returns draw air.";
  }
  f.source(plumbing::todini_pilati_1988);
  f.next("switch each pump off once by itself, and watch the sump for ten minutes");
}

}  // namespace tankwright::decisions
