// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/moving_in/filter_finding.hpp>
#include <tankwright/decisions/moving_in/free_ammonia.hpp>
#include <tankwright/life/levels.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_free_ammonia(const situation& s, answers& out) {
  if (!detail::describes_filter(s.plan())) return;
  finding& f = out.ask(free_ammonia);
  const life_case& c = s.life();
  if (!c.in.ph) f.unknown("measure the pH of the tank, and say on which scale");
  if (!detail::can_balance(c, f)) return;
  const water_basis& water = c.state.water;
  const auto part = water::free_ammonia_fraction(*c.in.ph, water.salinity, water.temperature);
  const mass_concentration limit = c.in.filter.free_below.as_nitrogen();
  const auto alarm = map_falling(part, [&](proportion free) { return mass_concentration{limit / free.value()}; });
  const filter_balance b = balance_of(c.in.filter, {.when = filter_at::today,
                                                    .net = c.net->central,
                                                    .temperature = water.temperature,
                                                    .level = map_rising(alarm, water::total_ammonia::from_nitrogen)});
  const auto free_of = [](const water::total_ammonia& total, proportion free) {
    return water::free_ammonia::from_nitrogen(total.as_nitrogen() * free.value()).as_ammonia();
  };
  const settled_levels& at = b.settles;
  if (at.low && at.central && at.high) {
    f.answer(
        "settles", detail::fed_rarely(c) ? "free ammonia reaches, as NH3" : "free ammonia where it settles, as NH3",
        estimate<mass_concentration>{free_of(*at.low, part.low), free_of(*at.central, part.central),
                                     free_of(*at.high, part.high), "food, films, dissociation constant and pH probe"});
  } else if (at.central) {
    f.answer("settles", "free ammonia where it settles, as NH3", free_of(*at.central, part.central));
    f.note = "With the poorest films it does not settle but rises.";
  } else {
    f.note = "The total ammonia does not settle, see the filter above, and the free part rises with it.";
  }
  f.limit("limit", "stay below, as NH3", c.in.filter.free_below.as_ammonia());
  f.detail("alarm", "a kit reading of this, as nitrogen, is at the limit", alarm);
  f.detail("takes", "taken away in a day at that level, as nitrogen", map_rising(b.takes, in_a_day));
  f.margin("left", "of that, more than the food needs", map_rising(b.spare, in_a_day), mass{});
  if (!(b.spare.central.value() > 0.0)) {
    f.happens = at.central ? "The free ammonia comes to " + said(s, free_of(*at.central, part.central)) + ", where " +
                                 said(s, c.in.filter.free_below.as_ammonia()) + " begins to harm."
                           : std::string{"The free ammonia rises past its limit while they are fed like this."};
  }
  f.detail("at_level", "free at the level to stay below, as NH3",
           map_rising(part, [&](proportion free) { return free_of(c.in.filter.stay_below, free); }));
  f.detail("part", "free part of the total", part);
  f.source(water::clegg_whitfield_1995).source(life::free_ammonia_four_days.source);
  f.next("measure the pH before the lights go on and in the evening: it is highest then, and so is the free part");
}

}  // namespace tankwright::decisions
