// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/plumbing/overflow_head.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_overflow_head(const situation& s, answers& out) {
  if (!s.plan().plumbing || !s.plumbing().in.has_circuit()) return;
  finding& f = out.ask(overflow_head);
  const plumbing_case& c = s.plumbing();
  const circuit_band& solved = c.solved();
  const auto at = [&](const auto& one) { return plumbing::head_over(c.in.display.edge, one.delivered, extrapolate); };
  const auto over = at(solved.central);
  const estimate<length> head{at(solved.least).head.low, over.head.central, at(solved.most).head.high,
                              "weir formula, form of the edge, and the band of the flow"};
  f.answer("head", "over the edge", head).source(plumbing::rehbock_1929);
  if (over.extrapolated) f.note = "Outside the range of the published weir formulas; the band allows for it.";
  if (!c.in.edge_to_rim) {
    f.next("give the height from the overflow edge to the rim of the display");
    return;
  }
  const length room = *c.in.edge_to_rim;
  f.limit("rim", "from the edge to the rim", room);
  f.margin("left", "left below the rim", map_falling(head, [&](length h) { return room - h; }), c.in.reserve);
}

}  // namespace tankwright::decisions
