// SPDX-License-Identifier: BSL-1.0
/// @file
/// A room that asks for everything, with its own water, and the same written out for the formulas.
#pragma once

#include <tankwright/room/humidity.hpp>

#include "decisions/asked.hpp"

namespace tankwright::testing {

[[nodiscard]] inline plan::build some_room() {
  plan::build build;
  give(build, {{"room.volume", "60 m3"},
               {"room.water_temperature", "25 °C"},
               {"room.salinity", "35"},
               {"room.water_volume", "2000 L +/- 3 %"},
               {"room.price_per_kwh", "0.30"},
               {"room.winter.indoors", "22 °C"},
               {"room.winter.outdoors", "3 °C"},
               {"room.winter.outdoor_humidity", "85 %"},
               {"room.winter.coldest_night", "-8 °C"},
               {"room.summer.indoors", "26 °C"},
               {"room.summer.outdoors", "24 °C"},
               {"room.summer.outdoor_humidity", "70 %"},
               {"room.summer.air_changes", "1 1/h"},
               {"room.display.area", "2.4 m2"},
               {"room.display.covered", "80 %"},
               {"room.sump.area", "0.8 m2"},
               {"room.surface[1].label", "weir"},
               {"room.surface[1].area", "0.1 m2"},
               {"room.surface[1].movement", "lively"},
               {"room.moisture[1].label", "two people"},
               {"room.moisture[1].rate", "100 g/h"},
               {"room.window.transmittance", "2.8 W/(m2 K)"},
               {"room.wall.transmittance", "0.6 W/(m2 K)"}});
  give(build, {{"room.appliance[1].label", "pump"},
               {"room.appliance[1].power", "150 W"},
               {"room.appliance[1].into_water", "80 %"},
               {"room.appliance[2].label", "lights"},
               {"room.appliance[2].power", "200 W"},
               {"room.appliance[2].into_water", "30 %"},
               {"room.appliance[2].on", "40 %"},
               {"room.heating.heater", "900 W"},
               {"room.heating.filled_at", "12 °C"},
               {"room.heating.wall[1].label", "sides"},
               {"room.heating.wall[1].area", "6 m2"},
               {"room.heating.wall[1].transmittance", "3 W/(m2 K)"},
               {"room.heating.outage.lasts", "12 h"},
               {"room.heating.outage.lowest", "20 °C"},
               {"room.heating.outage.room_settles_at", "8 °C"},
               {"room.heating.outage.room_time_constant", "18 h"},
               {"room.top_off.reservoir", "60 L"},
               {"room.top_off.unattended", "3 d"},
               {"room.top_off.lowest_salinity", "33"},
               {"room.top_off.highest_salinity", "37"},
               {"room.top_off.free_volume", "90 L"},
               {"room.top_off.chamber.surface", "0.3 m2"},
               {"room.top_off.chamber.running_level", "26 cm"},
               {"room.top_off.chamber.lowest_level", "15 cm"}});
  return build;
}

/// Winter of `some_room`, written out.
[[nodiscard]] inline room::tank_room winter_by_hand() {
  room::tank_room r{
      .room = {.volume = cubic_metres(60.0),
               .air_changes = per_hour(0.5),
               .temperature = celsius(22.0),
               .outdoor = {.temperature = celsius(3.0), .humidity = relative_humidity::from_percent(85.0)}},
      .water = {.temperature = celsius(25.0), .salinity = practical_salinity{35.0}},
      .surfaces = {}};
  const auto wet = [&](const char* label, double square_metre, room::agitation agitation, double covered) {
    room::wet_surface s{.label = label, .area = square_metres(square_metre)};
    s.agitation = agitation;
    s.covered = percent(covered);
    r.surfaces.push_back(s);
  };
  wet("display", 2.4, room::gently_moving, 80.0);
  wet("sump", 0.8, room::gently_moving, 0.0);
  wet("weir", 0.1, room::lively, 0.0);
  r.sources = {{.label = "two people", .rate = grams_per_hour(100.0)}};
  return r;
}

/// Summer of `some_room`, written out.
[[nodiscard]] inline room::tank_room summer_by_hand() {
  room::tank_room r = winter_by_hand();
  r.room.air_changes = per_hour(1.0);
  r.room.temperature = celsius(26.0);
  r.room.outdoor = {.temperature = celsius(24.0), .humidity = relative_humidity::from_percent(70.0)};
  return r;
}

/// A number as a text that `plan::set` reads.
[[nodiscard]] inline std::string with_unit(double number, const char* unit) {
  return text::of(number, text::significant(15)) + " " + unit;
}

}  // namespace tankwright::testing
