// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/evaporated.hpp>
#include <tankwright/decisions/closing/heat_week.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

namespace detail {

/// The tank at its highest temperature in the air of the week.
[[nodiscard]] inline room::tank_heat tank_in_heat(const room_case& c, const plan::heat_week& w, temperature air) {
  room::tank_heat t{.water = c.water,
                    .air = {.temperature = air, .humidity = *w.humidity, .pressure = c.air},
                    .surfaces = c.surfaces};
  t.water.temperature = *w.highest;
  for (const plan::tank_wall_inputs& wall : c.in.heating->walls) t.walls.push_back(wall.wall);
  for (const plan::appliance_inputs& a : c.in.appliances) {
    t.sources.push_back({.label = a.label, .heat = a.electricity.get() * (a.into_water.value() * a.on.value())});
  }
  return t;
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_heat_week(const situation& s, answers& out) {
  if (!s.plan().room || !s.plan().room->heat_week) return;
  finding& f = out.ask(heat_week);
  const plan::heat_week& w = *s.plan().room->heat_week;
  const room_case& c = s.room();
  if (c.surfaces.empty()) {
    f.unknown(detail::needs_surfaces);
    return;
  }
  if (!c.in.heating || c.in.heating->walls.empty()) {
    f.unknown(detail::needs_walls);
    return;
  }
  const auto balance = [](const room::tank_heat& t) { return room::heat_balance(t, policy_for(t.air)); };
  const room::heat_budget nothing = balance(detail::tank_in_heat(c, w, *w.indoors));
  estimate<power> best = nothing.net;
  std::string by = "nothing done";
  const auto offer = [&](const char* id, const std::string& what, const estimate<power>& net) {
    f.answer(id, what + ": more leaves the water at its highest than comes in, by", net);
    if (net.central > best.central) {
      best = net;
      by = what;
    }
  };
  offer("nothing", "with nothing done", nothing.net);
  if (w.fan) {
    room::tank_heat blown = detail::tank_in_heat(c, w, *w.indoors);
    for (room::wet_surface& one : blown.surfaces) {
      one.covered = fraction(0.0);
      one.air_speed = *w.fan;
    }
    // Air in rooms was measured up to 1 m/s: beyond it the same law goes on.
    const bool fast = *w.fan > metres_per_second(1.0);
    const auto with = room::heat_balance(blown, fast ? range_policy::extrapolate : policy_for(blown.air));
    if (fast) f.note = "Faster than 1 m/s the evaporation is extrapolated. ";
    offer("fan", "with the covers off and fans", with.net);
    const auto more = with.evaporation.central - nothing.evaporation.central;
    f.detail("fan_water", "  which evaporates more by", kilograms(more.value() * 86400.0 / 2.43e6) / days(1.0));
  }
  if (w.chiller) {
    offer("chiller", "with the chiller", map_rising(nothing.net, [&](power p) { return p + *w.chiller; }));
  }
  if (w.night) {
    const double half = 0.5 * (in_kelvins(*w.indoors) + in_kelvins(*w.night));
    offer("windows", "with the windows open at night", balance(detail::tank_in_heat(c, w, kelvins(half))).net);
  }
  f.detail("highest", "highest that the animals stand", *w.highest);
  f.margin("left", "at that temperature, with the best of them, left over", best, power{});
  f.note += "The best: " + by +
            ". Fans dry a tank and wet a room: have the reservoir and the dehumidifier for it. A chiller "
            "warms the room that it stands in. Warm water holds less oxygen: more air first of all.";
  if (f.verdict == verdict::does_not_hold) {
    f.happens = "The water goes on warming past what the animals stand: " + said(s, -1.0 * best.central) +
                " are to be taken out.";
  }
  detail::add_heat_sources(f);
}

}  // namespace tankwright::decisions
