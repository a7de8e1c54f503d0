// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/power_cut/check_valve_leaks.hpp>
#include <tankwright/decisions/power_cut/failures.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_check_valve_leaks(const situation& s, answers& out) {
  if (!s.plan().plumbing || !s.plumbing().cut) return;
  const auto valves = plumbing::power_cut_check_valves(*s.plumbing().cut_input);  // leaking, holding
  if (valves.empty()) return;
  finding& f = out.ask(check_valve_leaks);
  detail::add_failures(f, s, {valves.data(), 1}, "check valves leaking", "the check valve of the ");
  f.detail("if_tight", "left below the rim if they hold", valves.back().margin);
  f.note = "With them stuck open it is the power cut itself; a check valve is no substitute for a shallow outlet.";
}

}  // namespace tankwright::decisions
