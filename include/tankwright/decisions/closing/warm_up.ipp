// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/evaporated.hpp>
#include <tankwright/decisions/closing/warm_up.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/room/heat_store.hpp>
#include <tankwright/room/warm_up.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_warm_up_time(const situation& s, answers& out) {
  if (!s.plan().room || !s.plan().room->heating || !s.plan().room->heating->filled_at) return;
  finding& f = out.ask(warm_up_time);
  const room_case& c = s.room();
  if (const char* missing = detail::missing_for_heat(c)) {
    f.unknown(missing);
    return;
  }
  detail::add_heat_sources(f);
  const temperature from = *c.in.heating->filled_at;
  const temperature to = c.water.temperature;
  if (!(from < to)) {
    f.note = "The water comes in warm enough.";
    return;
  }
  room::tank_heat tank = heat_of(c, c.solved(season::winter), powered::always);
  const range_policy policy = policy_for(tank.air);
  const room::heat_equipment fit = room::heater_for(tank, c.in.heating->margin, policy);
  const power heater = c.in.heating->heater.value_or(fit.suggested);
  const auto spare = map_falling(fit.needed, [&](power p) { return heater - p; });
  const bool gets_there = spare.low > watts(0.0);
  if (gets_there) {
    tank.water.temperature = from;
    const auto warm = room::warm_up(
        {.tank = tank, .heat_capacity = heat_store_of(c).central, .target = to, .heater = heater}, policy);
    f.answer("time", "warm-up", warm.time);
    f.detail("energy", "energy", warm.heater_energy);
    if (warm.stuck_on) f.detail("stuck_on", "stuck on, it would end at", *warm.stuck_on);
    f.source(room::en_iso_10456);
  }
  f.detail("from", "from", from);
  f.detail("to", "to", to);
  f.detail("heater", "heater", heater);
  if (c.in.heating->heater) f.margin("left", "heater left over at the end", spare, watts(0.0));
  if (!gets_there) {
    f.note = "The heater is too small to be sure of getting there.";
    if (f.verdict == verdict::does_not_hold) f.happens = "The heater never gets the water to its temperature.";
  }
}

}  // namespace tankwright::decisions
