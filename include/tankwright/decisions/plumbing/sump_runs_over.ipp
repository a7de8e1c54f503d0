// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/plumbing/sump_runs_over.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/decisions/useful.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_sump_runs_over(const situation& s, answers& out) {
  if (!s.plan().plumbing || !s.plumbing().cut) return;
  finding& f = out.ask(sump_runs_over);
  const plumbing_case& c = s.plumbing();
  const length rim = c.in.sump.rim.get();
  f.limit("rim", "rim of the sump", rim);
  for (const auto& chamber : c.cut->running) {
    f.answer("level", "stands at", chamber.level, chamber.label);
    f.margin("left", "left below the rim", map_falling(chamber.level, [&](length z) { return rim - z; }), useful_level,
             chamber.label);
  }
  if (f.verdict == verdict::does_not_hold)
    f.happens = "The sump runs over at its " + f.margin()->place + " while the pump runs";
  f.source(plumbing::rehbock_1929);
}

}  // namespace tankwright::decisions
