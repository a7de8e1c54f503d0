// SPDX-License-Identifier: BSL-1.0
/// @file
/// Closing the top: what evaporates, does the room stay dry, what keeps the water warm, how long may the top-off fail?
/// And what does it cost to run?
#pragma once

#include <optional>
#include <tankwright/commissioning/detail/room_air.hpp>
#include <tankwright/commissioning/detail/room_heat.hpp>
#include <tankwright/commissioning/detail/room_running.hpp>
#include <tankwright/commissioning/detail/room_top_off.hpp>
#include <tankwright/commissioning/room_parts.hpp>
#include <utility>
#include <vector>

namespace tankwright::commissioning {

namespace detail::closing {

inline constexpr const char* needs_surfaces = "give the surface of the display, or the display itself";
inline constexpr const char* needs_seasons = "describe the air indoors and outdoors in winter and in summer";
inline constexpr const char* needs_winter = "describe the air indoors and outdoors in winter";
inline constexpr const char* needs_water = "give the volume of the water, or the display so that it can be computed";

inline void answer_air(const room_case& c, std::vector<finding>& all) {
  all.push_back(evaporation_finding(c));
  all.push_back(humidity_finding(c));
  all.push_back(drying_finding(c));
  for (const bool is_pane : {true, false}) {
    const std::optional<cold_surface>& surface = is_pane ? c.plan.window : c.plan.wall;
    if (surface && c.winter()) all.push_back(surface_finding(*c.winter(), *surface, is_pane));
    if (surface && !c.winter()) {
      all.push_back(unanswered(is_pane ? window_question : wall_question, needs_winter));
    }
  }
}

inline void answer_heat(const room_case& c, std::vector<finding>& all) {
  const heating_plan& heating = *c.plan.heating;
  const solved_season* winter = c.winter();
  const char* const needs = winter ? needs_water : needs_winter;
  std::optional<room::heat_equipment> heater;
  if (winter) heater = heater_of(c, *winter);
  all.push_back(heater ? heater_finding(c, *winter, *heater) : unanswered(heater_question, needs));
  if (c.summer()) all.push_back(cooling_finding(c, *c.summer()));
  if (heating.filled_at) {
    all.push_back(heater && c.all_water ? warm_up_finding(c, *winter, *heater) : unanswered(warm_up_question, needs));
  }
  if (heating.outage && winter && c.all_water) {
    all.push_back(outage_finding(c, *winter));
  } else if (heating.outage) {
    all.push_back(unanswered(outage_question, needs));
  }
}

inline void answer_top_off(const room_case& c, std::vector<finding>& all) {
  const estimate<mass_flow> lost = most_evaporation(c);
  if (lost.low.value() > 0.0) {
    const estimate<flow_rate> rate = room::top_off_rate(lost, c.plan.top_off->fresh_water);
    all.push_back(reservoir_finding(c, rate));
    all.push_back(c.all_water ? dry_finding(c, rate) : unanswered(dry_question, needs_water));
  } else {
    all.push_back(unanswered(reservoir_question, "nothing evaporates: there is nothing to be topped off"));
  }
  all.push_back(c.all_water ? stuck_finding(c) : unanswered(stuck_question, needs_water));
}

}  // namespace detail::closing

/// The decisions of closing the top, and the cost of running.
///
///   the balance of moisture in each season gives the air; the air gives evaporation, surfaces, heat and top-off
///
/// @param plan  the room, its seasons, its heat and its reservoir; what is not given is not asked
/// @param state surfaces, water and air pressure as the earlier sections left them; what the plan gives goes before
/// @return      findings room.evaporation, .humidity, .drying, and where the plan asks for them .window, .wall,
///              .heater, .cooling, .warm_up, .outage, .reservoir, .dry, .stuck, .running
/// @throws      invalid_input, out_of_range, no_convergence (names the argument of the function that refused it)
/// @accuracy    the bands of the findings
/// @source      the sources of the functions of `room/` and of `water/drift.hpp`, carried by each finding
[[nodiscard]] inline std::vector<finding> assess_room(const room_plan& plan, const system_state& state) {
  namespace closing = detail::closing;
  const closing::room_case c = closing::case_of(plan, state);
  std::vector<finding> all;
  all.reserve(13);
  if (c.seasons.empty()) {
    const char* const needs = c.surfaces.empty() ? closing::needs_surfaces : closing::needs_seasons;
    all.push_back(closing::unanswered(closing::evaporation_question, needs));
    all.push_back(closing::unanswered(closing::humidity_question, needs));
    if (plan.heating) all.push_back(closing::unanswered(closing::heater_question, needs));
    if (plan.heating && plan.heating->outage) {
      all.push_back(closing::unanswered(closing::outage_question, needs));
    }
    if (plan.top_off) all.push_back(closing::unanswered(closing::reservoir_question, needs));
    return all;
  }
  closing::answer_air(c, all);
  if (plan.heating) closing::answer_heat(c, all);
  if (plan.top_off) closing::answer_top_off(c, all);
  if (closing::asks_for_running(plan)) all.push_back(closing::running_finding(c));
  return all;
}

/// The room, drawn: room.humidity where there are a surface and a season, room.outage where the plan asks for it.
///
///   `room::humidity_course` over a day from the limit; `room::outage_curve` to twice the power cut
///
/// @param plan  the room, its seasons, its heat
/// @param state surfaces, water and air pressure as the earlier sections left them
/// @return      relative humidity [1] and water temperature [K] over time [s]
/// @throws      invalid_input, out_of_range, no_convergence (names the argument of the function that refused it)
/// @accuracy    as its parts
/// @source      the sources of `room/humidity_course.hpp` and `room/outage.hpp`
[[nodiscard]] inline std::vector<figure> figures_of(const room_plan& plan, const system_state& state) {
  namespace closing = detail::closing;
  const closing::room_case c = closing::case_of(plan, state);
  std::vector<figure> all;
  if (!c.seasons.empty()) all.push_back(closing::humidity_figure(c));
  if (plan.heating && plan.heating->outage && c.winter() && c.all_water) {
    all.push_back(closing::outage_figure(c, *c.winter()));
  }
  return all;
}

}  // namespace tankwright::commissioning
