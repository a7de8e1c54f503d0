// SPDX-License-Identifier: BSL-1.0
/// @file
/// Closing the top: what evaporates, does the room stay dry, what keeps the water warm, how long may the top-off fail?
/// And what does it cost to run?
#pragma once

#include <tankwright/commissioning/detail/room_air.hpp>
#include <tankwright/commissioning/detail/room_heat.hpp>
#include <tankwright/commissioning/detail/room_running.hpp>
#include <tankwright/commissioning/detail/room_top_off.hpp>
#include <tankwright/commissioning/room_parts.hpp>
#include <utility>
#include <vector>

namespace tankwright::commissioning {

/// The findings of closing the top and of running, and the figures room.humidity and room.outage.
struct room_assessment {
  std::vector<finding> findings{};
  std::vector<figure> figures{};
};

namespace detail::closing {

inline constexpr const char* needs_surfaces = "give the surface of the display, or the display itself";
inline constexpr const char* needs_seasons = "describe the air indoors and outdoors in winter and in summer";
inline constexpr const char* needs_winter = "describe the air indoors and outdoors in winter";
inline constexpr const char* needs_water = "give the volume of the water, or the display so that it can be computed";

inline void answer_air(const room_case& c, room_assessment& all) {
  all.findings.push_back(evaporation_finding(c));
  all.findings.push_back(humidity_finding(c));
  all.figures.push_back(humidity_figure(c));
  all.findings.push_back(drying_finding(c));
  for (const bool is_pane : {true, false}) {
    const std::optional<cold_surface>& surface = is_pane ? c.plan.window : c.plan.wall;
    if (surface && c.winter()) all.findings.push_back(surface_finding(*c.winter(), *surface, is_pane));
    if (surface && !c.winter()) {
      all.findings.push_back(unanswered(is_pane ? window_question : wall_question, needs_winter));
    }
  }
}

inline void answer_heat(const room_case& c, room_assessment& all) {
  const heating_plan& heating = *c.plan.heating;
  const solved_season* winter = c.winter();
  const char* const needs = winter ? needs_water : needs_winter;
  if (winter) {
    all.findings.push_back(heater_finding(c, *winter));
  } else {
    all.findings.push_back(unanswered(heater_question, needs));
  }
  if (c.summer()) all.findings.push_back(cooling_finding(c, *c.summer()));
  if (heating.filled_at) {
    all.findings.push_back(winter && c.all_water ? warm_up_finding(c, *winter) : unanswered(warm_up_question, needs));
  }
  if (heating.outage && winter && c.all_water) {
    all.figures.emplace_back();
    all.findings.push_back(outage_finding(c, *winter, all.figures.back()));
  } else if (heating.outage) {
    all.findings.push_back(unanswered(outage_question, needs));
  }
}

inline void answer_top_off(const room_case& c, room_assessment& all) {
  const estimate<mass_flow> lost = most_evaporation(c);
  if (lost.low.value() > 0.0) {
    const estimate<flow_rate> rate = room::top_off_rate(lost, c.plan.top_off->fresh_water);
    all.findings.push_back(reservoir_finding(c, rate));
    all.findings.push_back(c.all_water ? dry_finding(c, rate) : unanswered(dry_question, needs_water));
  } else {
    all.findings.push_back(unanswered(reservoir_question, "nothing evaporates: there is nothing to be topped off"));
  }
  all.findings.push_back(c.all_water ? stuck_finding(c) : unanswered(stuck_question, needs_water));
}

}  // namespace detail::closing

/// The decisions of closing the top, and the cost of running.
///
///   the balance of moisture in each season gives the air; the air gives evaporation, surfaces, heat and top-off
///
/// @param plan  the room, its seasons, its heat and its reservoir; what is not given is not asked
/// @param state surfaces, water and air pressure as the earlier sections left them; what the plan gives goes before
/// @return      findings room.evaporation, .humidity, .drying, and where the plan asks for them .window, .wall,
///              .heater, .cooling, .warm_up, .outage, .reservoir, .dry, .stuck, .running; figures room.humidity and
///              room.outage
/// @throws      invalid_input, out_of_range, no_convergence (names the argument of the function that refused it)
/// @accuracy    the bands of the findings
/// @source      the sources of the functions of `room/` and of `water/drift.hpp`, carried by each finding
[[nodiscard]] inline room_assessment assess_room(const room_plan& plan, const system_state& state) {
  namespace closing = detail::closing;
  const closing::room_case c = closing::case_of(plan, state);
  room_assessment all;
  if (c.seasons.empty()) {
    const char* const needs = c.surfaces.empty() ? closing::needs_surfaces : closing::needs_seasons;
    all.findings.push_back(closing::unanswered(closing::evaporation_question, needs));
    all.findings.push_back(closing::unanswered(closing::humidity_question, needs));
    if (plan.heating) all.findings.push_back(closing::unanswered(closing::heater_question, needs));
    if (plan.heating && plan.heating->outage) {
      all.findings.push_back(closing::unanswered(closing::outage_question, needs));
    }
    if (plan.top_off) all.findings.push_back(closing::unanswered(closing::reservoir_question, needs));
    return all;
  }
  closing::answer_air(c, all);
  if (plan.heating) closing::answer_heat(c, all);
  if (plan.top_off) closing::answer_top_off(c, all);
  if (closing::asks_for_running(plan)) all.findings.push_back(closing::running_finding(c));
  return all;
}

}  // namespace tankwright::commissioning
