// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/power_cut/running_level.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/plumbing/power_cut_limits.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_running_level(const situation& s, answers& out) {
  if (!s.plan().plumbing || !s.plumbing().cut) return;
  finding& f = out.ask(running_level);
  const plumbing_case& c = s.plumbing();
  const length now = c.in.sump.running_level.get();
  f.answer("now", "it runs at", now).source(plumbing::rehbock_1929);
  const auto safe = plumbing::highest_safe_running_level(*c.cut_input);
  if (!safe) {
    f.note = "No running level is safe: the sump is too small for what comes down.";
    return;
  }
  f.limit("most", "may run at, the reserve kept in the worst case", *safe);
  f.detail("left", "below that", *safe - now);
}

}  // namespace tankwright::decisions
