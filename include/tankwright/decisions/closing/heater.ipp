// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/evaporated.hpp>
#include <tankwright/decisions/closing/heater.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_heater_choice(const situation& s, answers& out) {
  if (!s.plan().room || !s.plan().room->heating) return;
  finding& f = out.ask(heater_choice);
  const room_case& c = s.room();
  if (!c.gives(season::winter)) {
    f.unknown(detail::what_is_missing(c, detail::needs_winter));
    return;
  }
  const room::tank_heat t = heat_of(c, c.solved(season::winter), powered::always);
  const range_policy policy = policy_for(t.air);
  const room::heat_budget parts = room::heat_balance(t, policy);
  detail::add_heat_sources(f);
  if (c.in.heating->walls.empty()) {
    f.detail("evaporation", "evaporation alone takes", parts.evaporation);
    f.unknown(detail::needs_walls);
    return;
  }
  const room::heat_equipment fit = room::heater_for(t, c.in.heating->margin, policy);
  const auto needed = fit.needed;
  f.answer("fit", "heater to fit", fit.suggested);
  f.detail("needed", "heat to hold the water in winter", needed);
  if (c.in.heating->heater) {
    const power there = *c.in.heating->heater;
    const auto spare = map_falling(needed, [&](power p) { return there - p; });
    f.limit("there", "heater in the plan", there);
    f.margin("left", "left over", spare, fit.suggested - std::max(needed.high, watts(0.0)));
    if (f.verdict == verdict::does_not_hold) {
      f.happens = "In winter the heater falls short by " + said(s, -1.0 * spare.central) + ", and the water cools.";
    }
  }
  f.detail("evaporation", "  of it evaporation", parts.evaporation);
  f.detail("gains", "  less pumps that never stop", parts.gains);
  if (!fit.is_needed) f.note = "Pumps alone hold the water warm, even in winter.";
  if (policy == range_policy::extrapolate) {
    detail::say(f, "The room settles outside 28 to 95 %, where evaporation was measured: extrapolated.");
  }
}

}  // namespace tankwright::decisions
