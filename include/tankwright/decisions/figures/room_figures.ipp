// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <optional>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/evaporated.hpp>
#include <tankwright/decisions/closing/outage.hpp>
#include <tankwright/decisions/figures/room_figures.hpp>
#include <tankwright/room/humidity_course.hpp>

namespace tankwright::decisions {

namespace detail {

[[nodiscard]] inline curve humidity_curve(const room::tank_room& setting, relative_humidity from, std::string label) {
  curve line{.label = std::move(label)};
  for (const room::humidity_point& p : room::humidity_course({.room = setting, .start = from, .time = hours(24.0)})) {
    line.x.push_back(p.time.value());
    line.y.push_back(p.air.humidity.get().value());
  }
  return line;
}

[[nodiscard]] inline std::optional<figure> humidity_figure(const room_case& c) {
  figure picture{.id = "room.humidity",
                 .title = "Humidity of the room over a day that starts at the limit",
                 .x_axis = {"time", "duration"},
                 .y_axis = {"relative humidity", "relative_humidity"}};
  for (const season when : {season::winter, season::summer}) {
    if (!c.gives(when)) continue;
    try {
      const solved_season& s = c.solved(when);
      picture.curves.push_back(humidity_curve(s.as_planned, c.in.target, words(when)));
      picture.curves.push_back(humidity_curve(s.uncovered, c.in.target, std::string{words(when)} + ", covers off"));
    } catch (const error&) {
      continue;  // its finding says why
    }
  }
  if (picture.curves.empty()) return std::nullopt;
  const double limit = c.in.target.value();
  picture.curves.push_back(
      {.label = "limit", .x = {0.0, hours(24.0).value()}, .y = {limit, limit}, .as = stroke::dashed});
  return picture;
}

/// The end of the power cut is one of the points: as many steps before it as after it.
[[nodiscard]] inline figure outage_figure(const room_case& c) {
  constexpr std::size_t steps = 24;
  const plan::heat_outage_inputs& cut = *c.in.heating->outage;
  const room::uncontrolled_tank central = outage_of(c);
  const room::temperature_course course = room::temperature_course_of(
      central, 2.0 * cut.lasts.get(), cut.lasts.get() / double{steps}, policy_for(central.tank.air));
  figure picture{.id = "room.outage",
                 .title = "Water without power",
                 .x_axis = {"time", "duration"},
                 .y_axis = {"temperature", "temperature"}};
  curve line{.label = "water"};
  for (const room::temperature_point& p : course.points) {
    const auto water = p.water;
    line.x.push_back(p.time.value());
    line.y.push_back(in_kelvins(water.central));
    line.low.push_back(in_kelvins(water.low));
    line.high.push_back(in_kelvins(water.high));
  }
  const double limit = in_kelvins(cut.lowest);
  const double end = cut.lasts->value();
  picture.curves.push_back(std::move(line));
  picture.curves.push_back(
      {.label = "lowest that the animals stand", .x = {0.0, 2.0 * end}, .y = {limit, limit}, .as = stroke::dashed});
  picture.curves.push_back({.label = "end of the power cut",
                            .x = {end},
                            .y = {in_kelvins(course.points[steps].water.central)},
                            .as = stroke::points});
  return picture;
}

}  // namespace detail

TANKWRIGHT_INLINE std::vector<figure> figures_of(const room_case& c) {
  std::vector<figure> all;
  if (auto humidity = detail::humidity_figure(c)) all.push_back(std::move(*humidity));
  if (!c.in.heating || !c.in.heating->outage || detail::missing_for_heat(c)) return all;
  try {
    all.push_back(detail::outage_figure(c));
  } catch (const error&) {
    return all;  // its finding says why
  }
  return all;
}

}  // namespace tankwright::decisions
