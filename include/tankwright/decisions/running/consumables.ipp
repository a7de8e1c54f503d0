// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/running/consumables.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_consumables(const situation& s, answers& out) {
  if (!s.plan().room || !s.plan().room->running || s.plan().room->running->consumable.empty()) return;
  finding& f = out.ask(consumables);
  double sum = 0.0;
  for (const plan::consumable& one : s.plan().room->running->consumable) {
    const double cost = *one.price * (days(365.25) / *one.every);
    sum += cost;
    f.detail("each", "in a year, in your currency", cost, one.label);
  }
  f.answer("all", "all of it in a year, in your currency", sum);
}

}  // namespace tankwright::decisions
