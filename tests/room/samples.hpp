// SPDX-License-Identifier: BSL-1.0
/// @file
/// The air, tank and room that the tests of this folder share.
#pragma once

#include <string>

#include <tankwright/room.hpp>

#include "support/reference.hpp"
#include "support/refusals.hpp"

namespace tankwright::testing {

inline room::air air_of(double celsius_number, double percent) {
  return {.temperature = celsius(celsius_number), .humidity = relative_humidity::from_percent(percent)};
}

inline room::tank_water seawater(double celsius_number, double salinity = 35.0) {
  return {.temperature = celsius(celsius_number), .salinity = practical_salinity{salinity}};
}

/// The three conditions at which the theory page compares all correlations.
struct condition {
  double water, air, humidity;
};
inline constexpr condition conditions[] = {{25.0, 22.0, 50.0}, {26.0, 24.0, 60.0}, {25.0, 28.0, 40.0}};

/// A display with an open sump, glass sides and a plywood base.
inline room::tank_heat display_tank(double water, double air, double humidity) {
  return {
      .water = seawater(water),
      .air = air_of(air, humidity),
      .surfaces = {{.label = "display", .area = square_metres(2.16)}, {.label = "sump", .area = square_metres(0.54)}},
      .walls = {{.label = "glass",
                 .area = square_metres(4.95),
                 .transmittance = room::transmittance(
                     {.layers = {{.thickness = millimetres(15), .conductivity = room::glass_conductivity}}})},
                {.label = "base",
                 .area = square_metres(2.16),
                 .transmittance = room::transmittance(
                     {.layers = {{.thickness = millimetres(18), .conductivity = room::plywood_conductivity}}})}}};
}

/// 150 m3 with half an air change an hour and 3 m2 of open seawater at 25 degC.
inline room::tank_room cellar(double room_temperature, const room::air& outdoor, double changes = 0.5) {
  return {.room = {.volume = cubic_metres(150.0),
                   .air_changes = per_hour(changes),
                   .temperature = celsius(room_temperature),
                   .outdoor = outdoor},
          .water = seawater(25.0),
          .surfaces = {{.label = "all", .area = square_metres(3.0)}}};
}

}  // namespace tankwright::testing
