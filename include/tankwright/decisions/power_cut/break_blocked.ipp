// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/power_cut/break_blocked.hpp>
#include <tankwright/decisions/power_cut/failures.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_break_blocked(const situation& s, answers& out) {
  if (!s.plan().plumbing || !s.plumbing().cut) return;
  bool breaks = false;
  for (const auto& r : s.plumbing().in.returns) breaks = breaks || r.siphon_break.has_value();
  if (!breaks) return;
  finding& f = out.ask(break_blocked);
  using enum plumbing::power_cut_failure;
  detail::add_failures(f, s, {siphon_break_blocked, all_breaks_blocked}, "all siphon breaks blocked",
                       "the siphon break of the ");
  f.note = "Algae and snails block a hole of a few millimetres; look at it every week.";
}

}  // namespace tankwright::decisions
