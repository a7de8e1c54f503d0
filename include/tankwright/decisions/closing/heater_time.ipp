// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/evaporated.hpp>
#include <tankwright/decisions/closing/heater_sticks.hpp>
#include <tankwright/decisions/closing/heater_time.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/room/heater_fault.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_heater_time(const situation& s, answers& out) {
  if (!s.plan().room || !s.plan().room->heating) return;
  const plan::heating& h = *s.plan().room->heating;
  if (!h.heater || !h.highest) return;
  finding& f = out.ask(heater_time);
  const room_case& c = s.room();
  const season when = c.gives(season::summer) ? season::summer : season::winter;
  if (const char* missing = detail::missing_for_warmth(c, when)) {
    f.unknown(missing);
    return;
  }
  const room::tank_heat tank = heat_of(c, c.solved(when), powered::on_average);
  const range_policy policy = policy_for(tank.air);
  const auto store = heat_store_of(c);
  room::uncontrolled_tank hot{.tank = tank, .heat_capacity = store.central};
  hot.tank.sources.push_back({.label = "heater", .heat = *h.heater});
  const auto reaches = room::time_to_temperature(hot, store, *h.highest, days(7.0), policy);
  f.limit("looked", "looked at every", *h.looked_every);
  f.detail("highest", "highest that the animals stand", *h.highest);
  f.detail("heater", "heater", *h.heater);
  if (!reaches.soonest) {
    f.answer("rise", "a heater stuck on warms the water, before it loses anything, by",
             *h.heater * days(1.0) / store.central);
    f.margin("left", "time to act, more than from look to look, at least", days(7.0) - *h.looked_every, duration{});
    f.note = "Even so the water does not get that warm within a week: this heater cannot cook them.";
    return;
  }
  const duration soonest = *reaches.soonest;
  const duration expected = reaches.expected.value_or(days(7.0)), latest = reaches.latest.value_or(days(7.0));
  const estimate<duration> after{soonest, expected, latest,
                                 "the band of the evaporation, and how well the volume is known"};
  f.answer("after", std::string{"too warm, in "} + words(when) + ", after", after);
  f.margin("left", "time to act, more than from look to look",
           map_rising(after, [&](duration t) { return t - *h.looked_every; }), duration{});
  f.note = "Two heaters of half the power double the time; an independent thermostat that cuts their supply ends it.";
  if (f.verdict == verdict::does_not_hold) {
    f.happens =
        "A heater that sticks on brings the water to its limit after " + said(s, expected) + ", before anybody looks.";
  }
  detail::add_heat_sources(f);
}

}  // namespace tankwright::decisions
