// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/first_fill/gaskets.hpp>
#include <tankwright/decisions/first_fill/wall_parts.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_gaskets(const situation& s, answers& out) {
  if (!s.plan().vessel) return;
  const auto& all = s.plan().vessel->bulkhead;
  finding* f = nullptr;
  for (std::size_t i = 0; i < all.size(); ++i) {
    const plan::bulkhead& one = all[i];
    if (!one.gasket) continue;
    if (!f) f = &out.ask(gaskets);
    const std::string name = detail::part_name(one.label, "hole", i, all.size());
    const length takes = vessel::gasket_takes_up(*one.gasket);
    f->limit("takes", "it bridges at most", takes, name);
    f->margin("left", "more than the face needs by", takes - *one.unevenness, millimetres(0.1), name);
  }
  if (!f) return;
  f->note =
      "On glass one gasket of soft rubber, on the water's side, and no sealant under it; hand tight and a quarter "
      "turn: "
      "more squeezes it out and strains the pane. On a rough coating grind a ring flat rather than take a thicker one.";
  if (f->verdict == verdict::does_not_hold) {
    f->happens = "Water creeps under the gasket of " + f->margin()->place + ", where its face lies lowest.";
  }
  f->next("lay a straight edge over the hole and push feeler gauges under it");
}

}  // namespace tankwright::decisions
