// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/cooling.hpp>
#include <tankwright/decisions/closing/evaporated.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_summer_cooling(const situation& s, answers& out) {
  if (!s.plan().room || !s.plan().room->heating || !s.plan().room->summer) return;
  finding& f = out.ask(summer_cooling);
  const room_case& c = s.room();
  if (!c.gives(season::summer)) {
    f.unknown(detail::needs_surfaces);
    return;
  }
  if (c.in.heating->walls.empty()) {
    f.unknown(detail::needs_walls);
    return;
  }
  const solved_season& summer = c.solved(season::summer);
  room::tank_heat t = heat_of(c, summer, powered::all);
  t.air = hottest_air(summer);
  const room::heat_equipment chiller = room::chiller_for(t, t.air, fraction(0.65), policy_for(t.air));
  f.answer("fit", "chiller to fit", chiller.suggested);
  f.detail("needed", "heat to take out with everything on", chiller.needed);
  if (!chiller.is_needed) f.note = "No: evaporation and the walls carry off more than pumps and lights bring.";
  detail::add_heat_sources(f);
  if (summer.given.hottest_day) {
    f.detail("room", "on a day on which the room has", *summer.given.hottest_day);
  } else {
    detail::say(f, "This is the mean of the summer: a chiller of that size is too small on its hottest day.");
    f.next("say how warm the room gets on the hottest day of the summer");
  }
}

}  // namespace tankwright::decisions
