// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/evaporated.hpp>
#include <tankwright/decisions/closing/heater_sticks.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

namespace detail {

/// Why a question about too warm water is not answered; null where nothing is missing.
[[nodiscard]] inline const char* missing_for_warmth(const room_case& c, season when) {
  if (!c.gives(when)) return what_is_missing(c, needs_seasons);
  if (!c.all_water) return needs_water;
  return c.in.heating->walls.empty() ? needs_walls : nullptr;
}

inline constexpr temperature too_hot_to_follow = celsius(90.0);  ///< beyond, the course is not followed

}  // namespace detail

TANKWRIGHT_INLINE void answer_heater_sticks(const situation& s, answers& out) {
  if (!s.plan().room || !s.plan().room->heating || !s.plan().room->heating->heater) return;
  finding& f = out.ask(heater_sticks);
  const room_case& c = s.room();
  const season warmer = c.gives(season::summer) ? season::summer : season::winter;
  if (const char* missing = detail::missing_for_warmth(c, warmer)) {
    f.unknown(missing);
    return;
  }
  const solved_season& air = c.solved(warmer);
  room::uncontrolled_tank hot{.tank = heat_of(c, air, powered::always), .heat_capacity = heat_store_of(c).central};
  if (warmer == season::summer) hot.tank.air = hottest_air(air);
  const power heater = *c.in.heating->heater;
  hot.tank.sources.push_back({.label = "heater", .heat = heater});
  const range_policy policy = policy_for(hot.tank.air);
  const auto course = room::temperature_course_of(hot, hours(1.0), hours(1.0), policy);
  const temperature most = detail::too_hot_to_follow;
  const auto ends = course.settles_at.value_or(estimate<temperature>{most, most, most, "it boils in the end"});
  f.answer("settles", course.settles_at ? "it ends at" : "it ends above", ends);
  f.detail("heater", "heater", heater);
  f.detail("first_hour", "after the first hour", course.points.back().water);
  detail::add_heat_sources(f);
  if (!c.in.heating->highest) {
    f.next("say which temperature the animals stand at most");
    return;
  }
  const temperature highest = *c.in.heating->highest;
  f.limit("highest", "highest that the animals stand", highest);
  f.margin("left", "left",
           map_falling(ends, [&](temperature t) { return kelvin_steps(in_kelvins(highest) - in_kelvins(t)); }),
           kelvin_steps(1.0));
  if (in_kelvins(c.water.temperature) < in_kelvins(highest)) {
    const auto reached = room::time_to_temperature(hot, heat_store_of(c), highest, days(7.0), policy);
    if (reached.soonest) f.detail("reached_soonest", "the limit is reached after at least", *reached.soonest);
  }
  if (f.verdict == verdict::does_not_hold) {
    f.happens = "A heater that sticks on brings the water to " + std::string{course.settles_at ? "" : "more than "} +
                said(s, ends.central) + ".";
  }
  f.next("let a second thermostat, set higher, cut the heater off; two small heaters do less harm than a large one");
}

}  // namespace tankwright::decisions
