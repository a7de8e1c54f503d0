// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/first_fill/out_of_level.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/decisions/useful.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_out_of_level(const situation& s, answers& out) {
  if (!s.plan().vessel || !s.plan().vessel->out_of_level) return;
  finding& f = out.ask(out_of_level);
  const vessel_case& c = s.vessel();
  const length half = 0.5 * *s.plan().vessel->out_of_level;
  const length low_end = c.in.water_level + half;
  const double deeper = low_end.value() / c.in.water_level.value();
  f.answer("depth", "water at the low end stands", low_end);
  f.detail("shallow", "at the high end", c.in.water_level - half);
  f.answer("pressure", "more pressure at the foot of the low end", fraction(deeper - 1.0));
  f.answer("push", "more push on the pane there", fraction(deeper * deeper - 1.0));
  f.limit("rim", "rim", *s.plan().vessel->height);
  f.margin("left", "freeboard at the low end", *s.plan().vessel->height - low_end, useful_level);
  if (f.verdict == verdict::does_not_hold) f.happens = "Water runs over the rim at the low end.";
  f.note =
      "An overflow edge takes its water at the low end first, and a lid lies hollow. Level the stand while the display "
      "is empty, over its whole bearing: a shim under one corner twists the floor of the tank.";
  f.next("lay a clear hose along the stand and mark where the water stands at both ends");
}

}  // namespace tankwright::decisions
