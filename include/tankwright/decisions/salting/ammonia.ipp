// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/salting/ammonia.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_ammonia_free_part(const situation& s, answers& out) {
  if (!s.plan().water || !s.plan().water->ammonia.given()) return;
  finding& f = out.ask(ammonia_free_part);
  const water_case& c = s.water();
  if (!c.in.ph) {
    f.unknown("give the ph and its scale");
    return;
  }
  const auto free = water::free_ammonia_in(
      {.total = *c.in.ammonia, .ph = *c.in.ph, .salinity = c.target().central, .temperature = c.in.temperature});
  f.answer("part", "free part of the total", free.fraction);
  f.answer("free", "free ammonia, as NH3",
           map_rising(free.concentration, [](water::free_ammonia a) { return a.as_ammonia(); }));
  f.detail("total", "total ammonia, as nitrogen", c.in.ammonia->as_nitrogen());
  f.source(water::clegg_whitfield_1995);
}

}  // namespace tankwright::decisions
