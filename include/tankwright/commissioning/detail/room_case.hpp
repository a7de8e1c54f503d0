// SPDX-License-Identifier: BSL-1.0
/// @file
/// What all questions about the room start from: its surfaces, its seasons, and the balance of moisture in each.
#pragma once

#include <cmath>
#include <string>
#include <tankwright/commissioning/finding.hpp>
#include <tankwright/commissioning/room_parts.hpp>
#include <tankwright/commissioning/system_state.hpp>
#include <tankwright/room/top_off.hpp>
#include <utility>
#include <vector>

namespace tankwright::commissioning::detail::closing {

inline constexpr std::string_view closing_the_top = "Closing the top";
inline constexpr std::string_view running = "Running";

/// What is asked: the id of the finding, the day, the words.
struct question_of_room {
  std::string_view id;
  std::string_view day;
  std::string_view words;
};
inline constexpr question_of_room evaporation_question{"room.evaporation", closing_the_top,
                                                       "How much water leaves the tank a day?"};
inline constexpr question_of_room humidity_question{"room.humidity", closing_the_top, "Does the room stay dry?"};
inline constexpr question_of_room drying_question{"room.drying", closing_the_top, "What holds the room at its limit?"};
inline constexpr question_of_room window_question{"room.window", closing_the_top, "Does the window drip?"};
inline constexpr question_of_room wall_question{"room.wall", closing_the_top, "Can the outside wall grow mould?"};
inline constexpr question_of_room heater_question{"room.heater", closing_the_top,
                                                  "Which heater holds the temperature?"};
inline constexpr question_of_room cooling_question{"room.cooling", closing_the_top,
                                                   "Does the water need cooling in summer?"};
inline constexpr question_of_room warm_up_question{"room.warm_up", closing_the_top,
                                                   "How long does it take to warm the water up?"};
inline constexpr question_of_room outage_question{"room.outage", closing_the_top,
                                                  "How cold does the water get without power?"};
inline constexpr question_of_room reservoir_question{"room.reservoir", closing_the_top,
                                                     "How long does the top-off reservoir last?"};
inline constexpr question_of_room dry_question{"room.dry", closing_the_top,
                                               "What if the top-off fails and nobody looks?"};
inline constexpr question_of_room stuck_question{"room.stuck", closing_the_top,
                                                 "What if the top-off valve sticks open?"};
inline constexpr question_of_room running_question{"room.running", running, "What does it cost to run?"};

[[nodiscard]] inline finding asked(const question_of_room& q) {
  return {.id = q.id, .day = q.day, .question = q.words};
}

[[nodiscard]] inline finding unanswered(const question_of_room& q, std::string needs) {
  finding f = asked(q);
  f.says = verdict::not_enough_known;
  f.measure_next.push_back(std::move(needs));
  return f;
}

/// A season with its balance of moisture, as planned and with every cover off.
struct solved_season {
  bool is_winter;
  bool machine_counts;  ///< the curve of dehumidifiers covers this temperature
  const room_season* given;
  room::tank_room as_planned;
  room::tank_room uncovered;
  room::room_humidity humidity;
  room::room_humidity humidity_uncovered;

  [[nodiscard]] const char* words(const char* winter, const char* summer) const noexcept {
    return is_winter ? winter : summer;
  }
  [[nodiscard]] estimate<relative_humidity> settles_at() const noexcept {
    return {humidity.low.air.humidity, humidity.central.air.humidity, humidity.high.air.humidity, humidity.reason};
  }
};

/// What all questions of the room start from.
struct room_case {
  const room_plan& plan;
  room::tank_water water;
  absolute_pressure air;
  std::optional<estimate<volume>> all_water;
  std::vector<room::wet_surface> surfaces;
  std::vector<solved_season> seasons{};  ///< winter first

  [[nodiscard]] const solved_season* winter() const noexcept {
    return !seasons.empty() && seasons.front().is_winter ? &seasons.front() : nullptr;
  }
  [[nodiscard]] const solved_season* summer() const noexcept {
    return !seasons.empty() && !seasons.back().is_winter ? &seasons.back() : nullptr;
  }
};

[[nodiscard]] inline estimate<mass_flow> evaporation_of(const room::room_humidity& h) noexcept {
  const mass_flow a = h.low.evaporation;
  const mass_flow b = h.high.evaporation;
  return {a < b ? a : b, h.central.evaporation, a < b ? b : a, h.reason};
}

/// As fresh water a day; where vapour condenses on cold water it stays a mass.
[[nodiscard]] inline amount top_off_amount(const estimate<mass_flow>& e, temperature fresh_water = celsius(20.0)) {
  return e.low.value() >= 0.0 ? amount_of(room::top_off_rate(e, fresh_water)) : amount_of(e);
}

/// Condensate as people read it off a bucket: a kilogram is a litre.
[[nodiscard]] inline flow_rate as_litres(mass_flow m) noexcept { return litres_per_day(in_kilograms_per_day(m)); }

[[nodiscard]] inline std::vector<citation> evaporation_sources() {
  using law = room::evaporation_law;
  return {room::about(law::shah).source, room::about(law::vdi_2089_still).source, room::about(law::smith_1994).source};
}

/// The graver of two verdicts; information gives way to both.
[[nodiscard]] constexpr verdict graver(verdict a, verdict b) noexcept {
  if (a == verdict::for_information) return b;
  if (b == verdict::for_information) return a;
  return a > b ? a : b;
}

/// How far a humidity stays below a limit, in points; what rounding leaves of nothing is nothing.
[[nodiscard]] inline estimate<proportion> points_below(relative_humidity limit, const estimate<relative_humidity>& h) {
  const auto below = [&](relative_humidity x) {
    const double points = limit.fraction() - x.fraction();
    return fraction(std::fabs(points) < 1e-9 ? 0.0 : points);
  };
  return map_falling(h, below);
}

inline constexpr proportion thin_humidity = fraction(0.05);  ///< as a good hygrometer errs

[[nodiscard]] inline room_case case_of(const room_plan& plan, const system_state& state) {
  room_case c{
      .plan = plan,
      .water = {.temperature = plan.water.value_or(state.water), .salinity = plan.salinity.value_or(state.salinity)},
      .air = state.air,
      .all_water = plan.water_volume ? plan.water_volume : state.all_water(),
      .surfaces = {}};
  const auto add = [&](const char* label, const open_surface& s, const std::optional<area>& of_system) {
    const std::optional<area> wet = s.area ? s.area : of_system;
    if (!wet) return;
    c.surfaces.push_back({.label = label,
                          .area = *wet,
                          .moved = s.moved,
                          .air_speed = s.air_speed,
                          .covered = s.covered,
                          .cover = s.cover});
  };
  add("display", plan.display, state.display_surface);
  add("sump", plan.sump, state.sump_surface);
  for (const room::wet_surface& more : plan.more_surfaces) c.surfaces.push_back(more);
  if (c.surfaces.empty()) return c;

  const auto solve = [&](const room_season& season, bool is_winter) {
    const bool machine_counts = room::dehumidifier_temperature_limits.published.contains(in_celsius(season.indoors));
    room::tank_room planned{.room = {.volume = plan.volume,
                                     .air_changes = season.air_changes.value_or(plan.air_changes),
                                     .temperature = season.indoors,
                                     .outdoor = {.temperature = season.outdoors,
                                                 .humidity = season.outdoor_humidity,
                                                 .pressure = state.air}},
                            .water = c.water,
                            .surfaces = c.surfaces,
                            .sources = plan.sources,
                            .dehumidifier = machine_counts ? plan.dehumidifier : std::nullopt};
    room::tank_room open = planned;
    for (room::wet_surface& s : open.surfaces) s.covered = fraction(0.0);
    room::room_humidity settled = room::humidity_balance(planned);
    room::room_humidity settled_open = room::humidity_balance(open);
    c.seasons.push_back(
        {is_winter, machine_counts, &season, std::move(planned), std::move(open), settled, settled_open});
  };
  if (plan.winter) solve(*plan.winter, true);
  if (plan.summer) solve(*plan.summer, false);
  return c;
}

}  // namespace tankwright::commissioning::detail::closing
