// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/power_cut/check_valve_leaks.hpp>
#include <tankwright/decisions/power_cut/failures.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_check_valve_leaks(const situation& s, answers& out) {
  if (!s.plan().plumbing || !s.plumbing().cut) return;
  const auto& failures = s.plumbing().failures;
  using enum plumbing::power_cut_failure;
  const bool valves = std::any_of(failures.begin(), failures.end(),
                                  [](const auto& one) { return one.failure == check_valve_leaks; });
  if (!valves) return;
  finding& f = out.ask(decisions::check_valve_leaks);
  detail::add_failures(f, s, {plumbing::power_cut_failure::check_valve_leaks}, "check valves leaking",
                       "the check valve of the ");
  for (const auto& one : failures) {
    if (one.failure == check_valve_holds) f.detail("if_tight", "left below the rim if they hold", one.margin);
  }
  f.note = "With them stuck open it is the power cut itself; a check valve is no substitute for a shallow outlet.";
}

}  // namespace tankwright::decisions
