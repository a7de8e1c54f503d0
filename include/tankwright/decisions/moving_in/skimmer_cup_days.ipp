// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/moving_in/skimmer_cup_days.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_skimmer_cup_days(const situation& s, answers& out) {
  if (!s.plan().life || !s.plan().life->skimmer) return;
  finding& f = out.ask(skimmer_cup_days);
  const plan::skimmer_cup& cup = *s.plan().life->skimmer;
  const duration full = duration::from_value(cup.room.get().value() / cup.fills.get().value());
  f.answer("full", "it is full after", full);
  f.limit("unattended", "nobody empties it for", *cup.unattended);
  f.margin("left", "longer than that by", full - *cup.unattended, hours(12.0));
  f.note =
      "A skimmer does not fill evenly: after a feast, a hand in the tank or new water it can fill its cup in an hour. "
      "A bucket with a float that stops the pump ends the doubt.";
  if (f.verdict == verdict::does_not_hold) {
    f.happens = "The cup is full after " + said(s, full) +
                (cup.overflows_to_floor ? ", and what comes then runs onto the floor."
                                        : ", and what comes then runs back into the sump.");
  }
}

}  // namespace tankwright::decisions
