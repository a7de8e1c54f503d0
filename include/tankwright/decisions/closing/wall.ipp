// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/cold_face.hpp>
#include <tankwright/decisions/closing/wall.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_outside_wall(const situation& s, answers& out) {
  if (!s.plan().room || !s.plan().room->wall) return;
  finding& f = out.ask(outside_wall);
  const room_case& c = s.room();
  if (!c.gives(season::winter)) {
    f.unknown(detail::what_is_missing(c, detail::needs_winter));
    return;
  }
  const solved_season& winter = c.solved(season::winter);
  const room::building_element wall{.transmittance = *c.in.wall,
                                    .inside = winter.given.indoors,
                                    .outside = winter.given.outdoors,
                                    .surface_resistance = room::mould_surface_resistance};
  detail::judge_cold_face(f, winter, {wall, room::mould_humidity, "80 % at the wall from"});
  if (f.verdict == verdict::does_not_hold) f.happens = "The face of the wall stays damp enough for mould all winter.";
  if (f.verdict != verdict::holds) {
    f.next("measure the coldest corner of the wall with a contact thermometer in winter");
  }
}

}  // namespace tankwright::decisions
