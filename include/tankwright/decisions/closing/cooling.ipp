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
  const room::tank_heat t = heat_of(c, c.solved(season::summer), powered::all);
  const room::heat_equipment chiller = room::chiller_for(t, t.air, fraction(0.65), policy_for(t.air));
  f.answer("fit", "chiller to fit", chiller.suggested);
  f.detail("needed", "heat to take out with everything on", chiller.needed);
  if (!chiller.is_needed) f.note = "No: evaporation and the walls carry off more than pumps and lights bring.";
  detail::add_heat_sources(f);
  f.next("this is the mean of the summer: size a chiller for the hottest day of the room");
}

}  // namespace tankwright::decisions
