// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/plumbing/circuit_load.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

namespace detail {

/// What is plugged into a circuit.
[[nodiscard]] inline std::vector<room::plugged_in> plugged_into(const plan::room_section& r, const std::string& label) {
  std::vector<room::plugged_in> all;
  for (const plan::appliance& a : r.appliance) {
    if (a.circuit != label) continue;
    all.push_back(
        {.label = a.label.empty() ? "appliance" : a.label, .draws = *a.power, .power_factor = *a.power_factor});
  }
  return all;
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_circuit_load(const situation& s, answers& out) {
  if (!s.plan().room || s.plan().room->circuit.empty()) return;
  finding& f = out.ask(circuit_load);
  const plan::room_section& r = *s.plan().room;
  std::string left_out;
  for (const plan::appliance& a : r.appliance) {
    if (a.circuit.empty()) left_out += (left_out.empty() ? "" : ", ") + (a.label.empty() ? "an appliance" : a.label);
  }
  for (const plan::circuit& one : r.circuit) {
    const electric_current drawn = room::current_of(detail::plugged_into(r, one.label), *one.voltage);
    const auto most = electric_current::from_value(one.breaker.get().value() * one.continuous.get().value());
    f.answer("current", "carries with everything on", drawn, one.label);
    f.limit("most", "may carry for hours", most, one.label);
    f.margin("left", "left", most - drawn, electric_current{}, one.label);
    f.detail("breaker", "rating of its breaker", *one.breaker, one.label);
  }
  f.note = "Motors take several times as much for a moment when they start.";
  if (!left_out.empty()) f.note += " On no circuit of the plan: " + left_out + ".";
  if (f.verdict == verdict::does_not_hold) {
    f.happens = "The breaker of " + f.margin()->place + " trips within minutes or hours, and everything on it stops.";
  }
  f.source(room::nec_continuous_load);
}

}  // namespace tankwright::decisions
