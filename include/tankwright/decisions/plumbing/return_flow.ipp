// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/plumbing/return_flow.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_return_flow(const situation& s, answers& out) {
  if (!s.plan().plumbing) return;
  finding& f = out.ask(return_flow);
  const plumbing_case& c = s.plumbing();
  if (!c.in.has_circuit()) {
    f.unknown(c.in.circuit.pumps.empty() ? "give the pump's curve" : "give the returns that the pump feeds");
    return;
  }
  const circuit_band& solved = c.solved();
  f.answer("total", "all returns together", solved.band([](const auto& at) { return at.delivered; }));
  for (std::size_t i = 0; i < solved.central.outlets.size(); ++i) {
    const auto& outlet = solved.central.outlets[i];
    f.detail("flow", "gives", solved.band([i](const auto& at) { return at.outlets[i].flow; }), outlet.label);
    const bool flows =
        outlet.state != plumbing::outlet_state::still && outlet.state != plumbing::outlet_state::reversed;
    if (!flows) {
      f.margin("least", "comes out of it", solved.band([i](const auto& at) { return at.outlets[i].flow; }), flow_rate{},
               outlet.label);
    }
    if (outlet.state == plumbing::outlet_state::still) f.note += "Nothing comes out of " + outlet.label + ". ";
    if (outlet.state == plumbing::outlet_state::reversed) f.note += "Water runs back into " + outlet.label + ". ";
  }
  for (const auto& pump : solved.central.pumps) {
    f.detail("head", "lifts to a head of", pump.head, pump.label);
    if (pump.state == plumbing::pump_state::shut) f.note += pump.label + " lifts nothing: too high for it. ";
    if (pump.state == plumbing::pump_state::past_end) f.note += pump.label + " runs past the end of its curve. ";
  }
  if (f.verdict == verdict::does_not_hold) f.happens = f.note.substr(0, f.note.find(". ")) + ".";
  f.source(plumbing::todini_pilati_1988).next("time a bucket at each return");
}

}  // namespace tankwright::decisions
