// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/cases/room_case.hpp>
#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/heat_store.hpp>
#include <tankwright/water/vapour.hpp>

namespace tankwright::decisions {

namespace detail {

[[nodiscard]] inline solved_season solve_season(const room_case& c, season when, const plan::season_inputs& given) {
  const bool machine_counts = room::dehumidifier_temperature_limits.published.contains(in_celsius(given.indoors));
  room::tank_room planned{
      .room = {.volume = c.in.volume,
               .air_changes = given.air_changes.value_or(c.in.air_changes),
               .temperature = given.indoors,
               .outdoor = {.temperature = given.outdoors, .humidity = given.outdoor_humidity, .pressure = c.air}},
      .water = c.water,
      .surfaces = c.surfaces,
      .sources = c.in.sources,
      .dehumidifier = machine_counts ? c.in.dehumidifier : std::nullopt};
  room::tank_room open = planned;
  for (room::wet_surface& s : open.surfaces) s.covered = fraction(0.0);
  room::room_humidity settled = room::humidity_balance(planned);
  room::room_humidity settled_open = room::humidity_balance(open);
  return {
      when, machine_counts, given, std::move(planned), std::move(open), std::move(settled), std::move(settled_open)};
}

[[nodiscard]] inline room::volumetric_heat heat_of_wall(plan::wall_material m) noexcept {
  switch (m) {
    case plan::wall_material::acrylic:
      return room::heat_of_acrylic;
    case plan::wall_material::plywood:
      return room::heat_of_plywood;
    case plan::wall_material::glass_fibre:
      return room::heat_of_glass_fibre;
    case plan::wall_material::polystyrene:
      return room::heat_of_polystyrene;
    case plan::wall_material::glass:
      break;
  }
  return room::heat_of_glass;
}

}  // namespace detail

TANKWRIGHT_INLINE room_case::room_case(plan::room_inputs inputs, const system_state& state)
    : in{std::move(inputs)},
      water{.temperature = in.water.value_or(state.water.temperature),
            .salinity = in.salinity.value_or(state.water.salinity)},
      air{state.water.air},
      all_water{in.water_volume ? in.water_volume : state.all_water()},
      solids{state.solids} {
  const auto add = [&](const plan::surface_inputs& s, const std::optional<area>& of_system) {
    const std::optional<area> wet = s.area ? s.area : of_system;
    if (!wet) return;
    surfaces.push_back(s.surface);
    surfaces.back().area = *wet;
  };
  add(in.display, state.display_surface);
  add(in.sump, state.sump_surface);
  for (const room::wet_surface& more : in.more_surfaces) surfaces.push_back(more);
}

TANKWRIGHT_INLINE const solved_season& room_case::solved(season s) const {
  return s == season::winter ? winter_.get([&] { return detail::solve_season(*this, s, in.winter.value()); })
                             : summer_.get([&] { return detail::solve_season(*this, s, in.summer.value()); });
}

TANKWRIGHT_INLINE solved_season season_of(const room_case& c, season when, const plan::season_inputs& given) {
  return detail::solve_season(c, when, given);
}

TANKWRIGHT_INLINE void room_case::leave_out(finding& f, season s, const error& mistake) {
  const verdict before = f.verdict;
  f.unknown(std::string{"in "} + words(s) + ": " + answers::reason_of(mistake));
  f.verdict = worse_of(before, f.verdict);
}

TANKWRIGHT_INLINE room_case case_of(const plan::room_section& s, const system_state& state) {
  return {plan::inputs_of(s), state};
}

TANKWRIGHT_INLINE room::tank_heat heat_of(const room_case& c, const solved_season& s, powered which) {
  room::tank_heat t{.water = c.water, .air = s.humidity.central.air, .surfaces = c.surfaces};
  if (c.in.heating) {
    for (const plan::tank_wall_inputs& w : c.in.heating->walls) t.walls.push_back(w.wall);
  }
  for (const plan::appliance_inputs& a : c.in.appliances) {
    if (which == powered::none || (which == powered::always && a.on.value() < 1.0)) continue;
    const double part = which == powered::on_average ? a.on.value() : 1.0;
    t.sources.push_back({.label = a.label, .heat = a.electricity.get() * (a.into_water.value() * part)});
  }
  return t;
}

TANKWRIGHT_INLINE room::air hottest_air(const solved_season& s) {
  room::air a = s.humidity.central.air;
  if (!s.given.hottest_day || *s.given.hottest_day == a.temperature.get()) return a;
  const temperature hot = *s.given.hottest_day;
  const double vapour = a.humidity.get().value() * water::vapour_pressure(a.temperature, extrapolate).value();
  const double holds = water::vapour_pressure(hot, extrapolate).value();
  a.temperature = hot;
  a.humidity = relative_humidity::from_fraction(std::min(1.0, vapour / holds));
  return a;
}

TANKWRIGHT_INLINE estimate<heat_capacity> heat_store_of(const room_case& c) {
  estimate<heat_capacity> store =
      map_rising(c.all_water.value(), [&](volume v) { return room::heat_capacity_of(c.water, v); });
  const auto add = [&](heat_capacity low, heat_capacity central, heat_capacity high) {
    store = {store.low + low, store.central + central, store.high + high, store.reason};
  };
  if (c.solids) {
    const auto stone = room::heat_capacity_of_solids(*c.solids);
    add(stone.low, stone.central, stone.high);
  }
  if (!c.in.heating) return store;
  for (const plan::tank_wall_inputs& w : c.in.heating->walls) {
    if (!w.material || !w.thickness) continue;
    const auto sheet = room::heat_capacity_of_sheet(
        {.area = w.wall.area, .thickness = *w.thickness, .heat = detail::heat_of_wall(*w.material)});
    add(sheet, sheet, sheet);
  }
  return store;
}

TANKWRIGHT_INLINE range_policy policy_for(const room::air& a) noexcept {
  return room::about(room::evaporation_law::shah).humidity.contains(a.humidity.get().value())
             ? range_policy::published
             : range_policy::extrapolate;
}

}  // namespace tankwright::decisions
