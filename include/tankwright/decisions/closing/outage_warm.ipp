// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/evaporated.hpp>
#include <tankwright/decisions/closing/heater_sticks.hpp>
#include <tankwright/decisions/closing/outage_warm.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_outage_warm(const situation& s, answers& out) {
  if (!s.plan().room || !s.plan().room->summer || !s.plan().room->heating) return;
  if (!s.plan().room->heating->outage || !s.plan().room->heating->highest) return;
  finding& f = out.ask(outage_warm);
  const room_case& c = s.room();
  if (const char* missing = detail::missing_for_warmth(c, season::summer)) {
    f.unknown(missing);
    return;
  }
  const solved_season& summer = c.solved(season::summer);
  room::uncontrolled_tank still{.tank = heat_of(c, summer, powered::none), .heat_capacity = heat_store_of(c).central};
  still.tank.air = hottest_air(summer);
  for (room::wet_surface& one : still.tank.surfaces) one.agitation = room::still_surface;
  const duration lasts = c.in.heating->outage->lasts;
  const auto course = room::temperature_course_of(still, lasts, lasts / 24.0, policy_for(still.tank.air));
  estimate<temperature> warm = course.points.front().water;
  for (const room::temperature_point& p : course.points) {
    const auto& here = p.water;
    warm = {std::max(warm.low, here.low), std::max(warm.central, here.central), std::max(warm.high, here.high),
            here.reason};
  }
  const temperature highest = *c.in.heating->highest;
  f.answer("warmest", "warmest water of the power cut", warm);
  f.limit("highest", "highest that the animals stand", highest);
  f.margin("left", "left",
           map_falling(warm, [&](temperature t) { return kelvin_steps(in_kelvins(highest) - in_kelvins(t)); }),
           kelvin_steps(1.0));
  f.detail("room", "while the room has", still.tank.air.temperature.get());
  f.detail("lasts", "power cut", lasts);
  if (f.verdict == verdict::does_not_hold) f.happens = "The water warms to " + said(s, warm.central) + ".";
  detail::add_heat_sources(f);
  if (!summer.given.hottest_day) f.next("say how warm the room gets on the hottest day of the summer");
}

}  // namespace tankwright::decisions
