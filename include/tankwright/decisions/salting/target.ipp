// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/salting/target.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/water/density.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_salt_target(const situation& s, answers& out) {
  if (!s.plan().water) return;
  finding& f = out.ask(salt_target);
  const water_case& c = s.water();
  const estimate<practical_salinity>& target = c.target();
  f.answer("salinity", "practical salinity", target);
  f.detail("density", "density at the water's temperature", water::density(target.central, c.in.temperature));
  f.source(water::feistel_2008).source(water::millero_2008);
  if (!c.in.older_tank && !c.in.target) {
    f.note = "Neither an older tank nor a target is given: natural seawater, 35, is taken.";
    f.next("measure the older tank that the animals come from");
  }
}

}  // namespace tankwright::decisions
