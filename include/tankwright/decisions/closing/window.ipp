// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/cold_face.hpp>
#include <tankwright/decisions/closing/window.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_dripping_window(const situation& s, answers& out) {
  if (!s.plan().room || !s.plan().room->window) return;
  finding& f = out.ask(dripping_window);
  const room_case& c = s.room();
  if (!c.gives(season::winter)) {
    f.unknown(detail::what_is_missing(c, detail::needs_winter));
    return;
  }
  const solved_season& winter = c.solved(season::winter);
  const room::building_element pane{.transmittance = *c.in.window,
                                    .inside = winter.given.indoors,
                                    .outside = winter.given.coldest_night.value_or(winter.given.outdoors),
                                    .surface_resistance = room::glazing_surface_resistance};
  detail::judge_cold_face(f, winter, {pane, room::dripping_humidity, "it drips from"});
  if (f.verdict == verdict::does_not_hold) f.happens = "Water runs down the pane on the coldest night.";
  if (f.verdict != verdict::holds) {
    f.next("measure the pane's edge with an infrared or contact thermometer on a cold night");
  }
}

}  // namespace tankwright::decisions
