// SPDX-License-Identifier: BSL-1.0
/// @file
/// The air of the room: evaporation, humidity, what dries it, and what its window and wall do.
#pragma once

#include <tankwright/commissioning/detail/room_case.hpp>
#include <tankwright/commissioning/figure.hpp>
#include <tankwright/room/condensation.hpp>
#include <tankwright/room/humidity_control.hpp>
#include <tankwright/room/humidity_course.hpp>

namespace tankwright::commissioning::detail::closing {

[[nodiscard]] inline finding evaporation_finding(const room_case& c) {
  finding f = asked(evaporation_question);
  bool covered = false;
  for (const room::wet_surface& s : c.surfaces) covered = covered || s.covered.value() > 0.0;
  for (const solved_season& s : c.seasons) {
    f.numbers.push_back({covered ? s.words("covered as planned, in winter", "covered as planned, in summer")
                                 : s.words("in winter", "in summer"),
                         top_off_amount(evaporation_of(s.humidity))});
    if (covered) {
      f.numbers.push_back({s.words("without covers, in winter", "without covers, in summer"),
                           top_off_amount(evaporation_of(s.humidity_uncovered)), role::detail});
    }
  }
  f.note = "In the air that the room settles at: a wetter room holds water back.";
  f.sources = evaporation_sources();
  if (covered) f.sources.push_back(room::npirc_2016);
  f.before_acting = room::moisture_caution.text;
  f.measure_next.push_back("read the top-off reservoir for a week: that is your evaporation, without the band");
  return f;
}

[[nodiscard]] inline finding humidity_finding(const room_case& c) {
  finding f = asked(humidity_question);
  f.numbers.push_back({"relative humidity, at most", amount_of(c.plan.target), role::limit});
  bool measured = true;
  bool saturated = false;
  bool left_out = false;
  for (const solved_season& s : c.seasons) {
    const estimate<relative_humidity> h = s.settles_at();
    const estimate<proportion> below = points_below(c.plan.target, h);
    const bool held = s.humidity.holds && c.plan.dehumidifier->set_point.get() <= c.plan.target;
    f.says = graver(f.says, held ? verdict::holds : verdict_of_margin(below, thin_humidity));
    f.numbers.push_back({s.words("settles in winter at", "settles in summer at"), amount_of(h)});
    f.numbers.push_back(
        {s.words("points below the limit, winter", "points below the limit, summer"), amount_of(below), role::margin});
    f.numbers.push_back({s.words("without covers, in winter", "without covers, in summer"),
                         amount_of(s.humidity_uncovered.central.air.humidity.get()), role::detail});
    if (s.as_planned.dehumidifier) {
      room::tank_room alone = s.as_planned;
      alone.dehumidifier.reset();
      f.numbers.push_back({s.words("without the dehumidifier, winter", "without the dehumidifier, summer"),
                           amount_of(room::detail::central_humidity(alone)), role::detail});
      f.numbers.push_back({s.words("dehumidifier runs in winter", "dehumidifier runs in summer"),
                           amount_of(s.humidity.central.duty), role::detail});
    }
    measured = measured && s.humidity.within_data;
    saturated = saturated || s.humidity.high.saturated || s.humidity.low.saturated;
    left_out = left_out || (c.plan.dehumidifier && !s.machine_counts);
  }
  const auto say = [&](std::string_view sentence) { f.note.append(f.note.empty() ? "" : " ").append(sentence); };
  if (saturated) say("The air can get saturated: what it cannot hold runs down walls and windows.");
  if (!measured) say("Part of the band lies outside 28 to 95 %, where evaporation was measured.");
  if (left_out) say("No dehumidifier is counted where the room is outside 21 to 32 °C, where its output is known.");
  f.sources = evaporation_sources();
  f.sources.push_back(room::ashrae_2017);
  if (c.plan.dehumidifier) f.sources.push_back(room::energyplus_dehumidifier);
  f.before_acting = room::moisture_caution.text;
  if (f.says != verdict::holds) {
    f.measure_next.push_back("log the humidity indoors and outdoors for a week: air changes are known worst of all");
  }
  return f;
}

[[nodiscard]] inline figure humidity_figure(const room_case& c) {
  figure picture{.id = "room.humidity",
                 .title = "Humidity of the room over a day that starts at the limit",
                 .across = {"time", "duration"},
                 .up = {"relative humidity", "relative_humidity"}};
  const duration day = hours(24.0);
  const auto add = [&](const room::tank_room& setting, std::string_view label) {
    curve line{.label = std::string{label}};
    for (const room::humidity_point& p :
         room::humidity_course({.room = setting, .start = c.plan.target, .time = day})) {
      line.x.push_back(p.time.value());
      line.y.push_back(p.air.humidity.get().fraction());
    }
    picture.curves.push_back(std::move(line));
  };
  for (const solved_season& s : c.seasons) {
    add(s.as_planned, s.words("winter", "summer"));
    add(s.uncovered, s.words("winter, covers off", "summer, covers off"));
  }
  const double limit = c.plan.target.fraction();
  picture.curves.push_back({.label = "limit", .x = {0.0, day.value()}, .y = {limit, limit}, .as = stroke::dashed});
  return picture;
}

/// Outdoor air that is drier than the room shall be.
[[nodiscard]] inline bool outdoor_air_dries(const solved_season& s, relative_humidity target) {
  const room::air wanted{
      .temperature = s.given->indoors, .humidity = target, .pressure = s.as_planned.room.outdoor.pressure};
  return room::humidity_ratio_of(s.as_planned.room.outdoor) < room::humidity_ratio_of(wanted);
}

[[nodiscard]] inline finding drying_finding(const room_case& c) {
  finding f = asked(drying_question);
  const auto say = [&](std::string_view sentence) { f.note.append(f.note.empty() ? "" : " ").append(sentence); };
  const auto rated_at = c.plan.dehumidifier ? c.plan.dehumidifier->machine.rated_at : room::rated_80F_60;
  for (const solved_season& s : c.seasons) {
    if (s.machine_counts && room::dehumidifier_humidity_limits.published.contains(c.plan.target.fraction())) {
      const auto size = room::dehumidifier_for(s.as_planned, c.plan.target, rated_at);
      f.numbers.push_back({s.words("to remove in winter", "to remove in summer"),
                           amount_of(map_rising(size.load, as_litres)), role::detail});
      if (size.needed) {
        f.numbers.push_back({s.words("dehumidifier by its label, winter", "dehumidifier by its label, summer"),
                             amount_of(as_litres(size.suggested))});
      }
      if (c.plan.dehumidifier) {
        const mass_flow label = c.plan.dehumidifier->machine.capacity;
        const auto spare = map_falling(size.rated, [&](mass_flow m) { return label - m; });
        f.numbers.push_back({s.words("spare capacity in winter", "spare capacity in summer"),
                             amount_of(map_rising(spare, as_litres)), role::margin});
        f.says = graver(f.says, verdict_of_margin(spare, 0.15 * label));  // machines of one label differ by 15 %
      }
    } else {
      say("Dehumidifiers are not known outside 21 to 32 °C and 40 to 80 %: ask the maker for the output in this air.");
    }
    if (outdoor_air_dries(s, c.plan.target)) {
      const auto air = room::ventilation_for(s.as_planned, c.plan.target);
      f.numbers.push_back(
          {s.words("or air changes in winter", "or air changes in summer"), amount_of(air.air_changes)});
      f.numbers.push_back(
          {s.words("  outdoor air in winter", "  outdoor air in summer"), amount_of(air.outdoor_air), role::detail});
    } else {
      say(s.words("In winter the outdoor air is no drier than the room shall be: ventilation cannot dry it.",
                  "In summer the outdoor air is no drier than the room shall be: ventilation cannot dry it."));
    }
  }
  if (c.plan.dehumidifier) {
    f.numbers.push_back({"dehumidifier in the plan, by its label",
                         amount_of(as_litres(c.plan.dehumidifier->machine.capacity)), role::detail});
  }
  f.sources = evaporation_sources();
  f.sources.push_back(room::energyplus_dehumidifier);
  f.before_acting = room::moisture_caution.text;
  return f;
}

/// A pane against dripping, a wall against mould, in the winter air of the room.
[[nodiscard]] inline finding surface_finding(const solved_season& winter, const cold_surface& surface, bool is_pane) {
  finding f = asked(is_pane ? window_question : wall_question);
  const room_season& s = *winter.given;
  const room::building_element element{
      .transmittance = surface.transmittance,
      .inside = s.indoors,
      .outside = is_pane ? s.coldest_night.value_or(s.outdoors) : s.outdoors.get(),
      .surface_resistance = is_pane ? room::glazing_surface_resistance : room::mould_surface_resistance};
  const relative_humidity highest =
      room::highest_humidity(element, is_pane ? room::dripping_humidity : room::mould_humidity);
  const estimate<relative_humidity> settled = winter.settles_at();
  const estimate<proportion> below = points_below(highest, settled);
  const room::surface_verdict seen = room::judge_surface(element, winter.humidity.central.air);
  f.says = verdict_of_margin(below, thin_humidity);
  f.numbers = entries(entry{"humidity of the room in winter", amount_of(settled)},
                      entry{is_pane ? "it drips from" : "80 % at the wall from", amount_of(highest), role::limit},
                      entry{"points below that", amount_of(below), role::margin},
                      entry{"its inside face", amount_of(seen.surface), role::detail},
                      entry{"dew point of the room", amount_of(seen.dew_point), role::detail},
                      entry{"outdoors", amount_of(element.outside.get()), role::detail});
  f.sources = {room::iso_13788, room::ashrae_2017};
  f.before_acting = seen.caution.text;
  if (f.says != verdict::holds) {
    f.measure_next.push_back(is_pane ? "measure the pane's edge with an infrared or contact thermometer on a cold night"
                                     : "measure the coldest corner of the wall with a contact thermometer in winter");
  }
  return f;
}

}  // namespace tankwright::commissioning::detail::closing
