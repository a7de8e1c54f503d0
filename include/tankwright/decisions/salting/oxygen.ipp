// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/salting/oxygen.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/water/oxygen.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_saturation_oxygen(const situation& s, answers& out) {
  if (!s.plan().water) return;
  finding& f = out.ask(saturation_oxygen);
  const water_case& c = s.water();
  f.answer("saturation", "oxygen at saturation",
           water::oxygen_saturation_concentration(c.target().central, c.in.temperature, c.in.air));
  f.source(water::garcia_gordon_1992);
}

}  // namespace tankwright::decisions
