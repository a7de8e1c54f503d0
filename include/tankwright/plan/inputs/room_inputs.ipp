// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/inputs/room_inputs.hpp>
#include <tankwright/plan/usual.hpp>
#include <tankwright/room/wall.hpp>

namespace tankwright::plan {

namespace detail {

namespace tr = tankwright::room;

[[nodiscard]] inline std::string label_or(const std::string& label, const char* otherwise) {
  return label.empty() ? std::string{otherwise} : label;
}

[[nodiscard]] inline tr::agitation agitation_of(movement m) {
  switch (m) {
    case movement::still:
      return tr::still_surface;
    case movement::lively:
      return tr::lively;
    case movement::splashing:
      return tr::splashing;
    case movement::gentle:
      break;
  }
  return tr::gently_moving;
}

[[nodiscard]] inline tr::cover_material cover_of(cover c) {
  switch (c) {
    case cover::foam:
      return tr::foam_cover;
    case cover::bubble_sheet:
      return tr::bubble_cover;
    case cover::floating_discs:
      return tr::floating_discs;
    case cover::lid:
      break;
  }
  return tr::rigid_lid;
}

[[nodiscard]] inline tr::wet_surface surface_of(const water_surface& s, std::string label) {
  return {.label = std::move(label),
          .area = s.area.value_or(square_metres(0.0)),
          .agitation = agitation_of(*s.movement),
          .air_speed = *s.air_speed,
          .covered = *s.covered,
          .cover = cover_of(*s.cover)};
}

[[nodiscard]] inline surface_inputs surface_of(const std::optional<open_water>& s, const char* label) {
  const water_surface& as = s ? s->surface : water_surface{};
  return {as.area.maybe(), surface_of(as, label)};
}

[[nodiscard]] inline season_inputs season_of(const season& s) {
  season_inputs in{.indoors = *s.indoors, .outdoors = *s.outdoors, .outdoor_humidity = *s.outdoor_humidity};
  in.air_changes = s.air_changes.maybe();
  in.coldest_night = s.coldest_night.maybe();
  in.hottest_day = s.hottest_day.maybe();
  return in;
}

[[nodiscard]] inline tr::controlled_dehumidifier dehumidifier_of(const dehumidifier& d) {
  const double litres_a_day = in_litres_per_day(*d.capacity);  // a litre of condensate is a kilogram
  tr::controlled_dehumidifier made{.machine = {.capacity = kilograms_per_day(litres_a_day)}, .set_point = *d.set_point};
  made.machine.rated_at = d.rated_at.get();
  made.machine.electrical = d.power.value_or(watts(0.0));
  return made;
}

[[nodiscard]] inline thermal_conductivity conductivity_of(wall_material m) {
  switch (m) {
    case wall_material::acrylic:
      return tr::acrylic_conductivity;
    case wall_material::plywood:
      return tr::plywood_conductivity;
    case wall_material::glass_fibre:
      return tr::glass_fibre_conductivity;
    case wall_material::polystyrene:
      return tr::polystyrene_conductivity;
    case wall_material::glass:
      break;
  }
  return tr::glass_conductivity;
}

[[nodiscard]] inline tank_wall_inputs wall_of(const tank_wall& w) {
  const std::string label = label_or(w.label, "wall");
  const auto through = [&] {
    if (w.transmittance) return *w.transmittance;
    return tr::transmittance(
        {.label = label, .layers = {{.thickness = *w.thickness, .conductivity = conductivity_of(*w.material)}}});
  };
  tank_wall_inputs made{{.label = label, .area = *w.area, .transmittance = through()}};
  made.wall.outside = w.outside.maybe();
  if (w.material) made.material = *w.material;
  made.thickness = w.thickness.maybe();
  return made;
}

[[nodiscard]] inline heating_inputs heating_of(const heating& h) {
  heating_inputs in;
  for (const tank_wall& w : h.wall) in.walls.push_back(wall_of(w));
  in.heater = h.heater.maybe();
  in.margin = *h.margin;
  in.highest = h.highest.maybe();
  in.filled_at = h.filled_at.maybe();
  if (h.outage) {
    in.outage = heat_outage_inputs{.lasts = *h.outage->lasts, .lowest = *h.outage->lowest};
    if (h.outage->room_settles_at) {
      in.outage->room =
          tr::drifting_room{.settles_at = *h.outage->room_settles_at, .time_constant = *h.outage->room_time_constant};
    }
  }
  return in;
}

[[nodiscard]] inline top_off_inputs top_off_of(const top_off& t) {
  top_off_inputs in{.reservoir = *t.reservoir, .unattended = *t.unattended};
  in.lowest = *t.lowest_salinity;
  in.highest = *t.highest_salinity;
  in.free_volume = t.free_volume.maybe();
  in.fresh_water = *t.fresh_water;
  if (t.chamber) {
    in.chamber =
        pump_chamber_inputs{t.chamber->surface.maybe(), t.chamber->running_level.maybe(), *t.chamber->lowest_level};
  }
  return in;
}

}  // namespace detail

TANKWRIGHT_INLINE room_inputs inputs_of(const room_section& s) {
  room_inputs in{.volume = s.volume ? *s.volume : *s.length * *s.width * *s.height, .air_changes = *s.air_changes};
  if (s.winter) in.winter = detail::season_of(*s.winter);
  if (s.summer) in.summer = detail::season_of(*s.summer);
  in.target = *s.highest_humidity;
  in.display = detail::surface_of(s.display, "display");
  in.sump = detail::surface_of(s.sump, "sump");
  for (const further_surface& w : s.surface) {
    in.more_surfaces.push_back(detail::surface_of(w.surface, detail::label_or(w.label, "surface")));
  }
  for (const moisture_source& m : s.moisture) {
    in.sources.push_back({.label = detail::label_or(m.label, "source"), .rate = *m.rate});
  }
  if (s.dehumidifier) in.dehumidifier = detail::dehumidifier_of(*s.dehumidifier);
  if (s.window) in.window = *s.window->transmittance;
  if (s.wall) in.wall = *s.wall->transmittance;
  for (const appliance& a : s.appliance) {
    in.appliances.push_back({detail::label_or(a.label, "appliance"), *a.power, *a.into_water, *a.on});
  }
  if (s.heating) in.heating = detail::heating_of(*s.heating);
  if (s.top_off) in.top_off = detail::top_off_of(*s.top_off);
  if (s.price_per_kwh) in.price = tankwright::room::electricity_price{*s.price_per_kwh};
  in.heating_performance = *s.heating_performance;
  in.water = s.water_temperature.maybe();
  in.salinity = s.salinity.maybe();
  if (s.water_volume) {
    const volume v = *s.water_volume;
    const volume half = volume::from_value(half_width(s.water_volume, usual::metered));
    in.water_volume = estimate<volume>{v - half, v, v + half, "the volume as given"};
  }
  return in;
}

}  // namespace tankwright::plan
