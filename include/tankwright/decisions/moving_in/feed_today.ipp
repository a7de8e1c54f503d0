// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/moving_in/feed_today.hpp>
#include <tankwright/decisions/moving_in/filter_finding.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_feed_today(const situation& s, answers& out) {
  if (!detail::describes_filter(s.plan())) return;
  finding& f = out.ask(feed_today);
  const life_case& c = s.life();
  if (!detail::can_balance(c, f)) return;
  const filter_balance b = balance_of(c, filter_at::today);
  if (!(b.needed.high.value() > 0.0)) {
    f.note = "The planned food makes no ammonia.";
    return;
  }
  const auto part = [](mass_flow takes, mass_flow needed) {
    return fraction(needed.value() > 0.0 ? std::clamp(takes.value() / needed.value(), 0.0, 1.0) : 1.0);
  };
  const estimate<proportion> share{part(b.takes.low, b.needed.high), part(b.takes.central, b.needed.central),
                                   part(b.takes.high, b.needed.low), film_and_food};
  f.answer("share", "part of the planned food that today's filter takes", share);
  for (const plan::meal& m : c.in.filter.food) {
    f.answer("food", "a day, to begin with", in_a_day(m.fed.food) * share.low.value(), m.label);
  }
  f.note =
      "The amounts are those of the low end: begin with them, and go up only while ammonia and nitrite stay at zero. "
      "Fasting for a day or two hurts few animals; small, lean and grazing ones cannot do it: ask about the species.";
  f.sources = {life::nijhof_bovendeur_1990, life::timmons_ebeling_2007};
}

}  // namespace tankwright::decisions
