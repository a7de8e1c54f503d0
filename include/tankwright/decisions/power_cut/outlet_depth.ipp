// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/power_cut/outlet_depth.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/plumbing/power_cut_limits.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_outlet_depth(const situation& s, answers& out) {
  if (!s.plan().plumbing || !s.plumbing().cut) return;
  finding& f = out.ask(outlet_depth);
  const plumbing_case& c = s.plumbing();
  const auto deepest = std::max_element(c.in.returns.begin(), c.in.returns.end(), [](const auto& a, const auto& b) {
    return a.below_edge.get() < b.below_edge.get();
  });
  f.answer("deepest", "deepest, " + deepest->label + ", below the edge", deepest->below_edge.get(), deepest->label);
  f.source(plumbing::rehbock_1929);
  const auto safe = plumbing::deepest_safe_outlet(*c.cut_input);
  if (!safe) {
    f.note = "No outlet is safe at any height: the sump is too small for what comes down.";
    return;
  }
  f.limit("most", "may draw air below the edge, the reserve kept in the worst case", *safe);
  f.detail("left", "below that", *safe - deepest->below_edge.get());
  if (deepest->siphon_break && *deepest->siphon_break < deepest->below_edge.get()) {
    f.note = "A siphon break lets air in before that outlet does; see what happens when it is blocked.";
  }
}

}  // namespace tankwright::decisions
