// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the engines take of the section [room]: its air, its heat, its top-off.
#pragma once

#include <optional>
#include <string>
#include <tankwright/plan/room.hpp>
#include <tankwright/room/humidity.hpp>
#include <tankwright/room/running_cost.hpp>
#include <tankwright/room/temperature_course.hpp>
#include <vector>

namespace tankwright::plan {

/// The room in one season, and the air outdoors.
struct season_inputs {
  required<temperature> indoors;
  required<temperature> outdoors;  ///< mean of the season
  required<relative_humidity> outdoor_humidity;
  std::optional<rate> air_changes{};           ///< where windows stand otherwise than the rest of the year
  std::optional<temperature> coldest_night{};  ///< for the window; the mean when left out
  std::optional<temperature> hottest_day{};    ///< of the room, for chillers; that of the room when left out
};

/// Display or sump as the air meets it. Without an area, that of the system.
struct surface_inputs {
  std::optional<tankwright::area> area{};
  tankwright::room::wet_surface surface{
      .label = {}, .area = square_metres(0.0), .agitation = tankwright::room::gently_moving};
};

/// A pump, a light: what it draws, how much of that ends up in the water, and how long it runs.
struct appliance_inputs {
  std::string label;
  required<power> electricity;
  proportion into_water;
  proportion on;  ///< part of the day; what is off at times does not help to size the heater
};

/// A wall of the tank as heat goes through it, and the sheet that it is made of, where the plan says.
struct tank_wall_inputs {
  tankwright::room::tank_wall wall;
  std::optional<wall_material> material{};
  std::optional<length> thickness{};
};

/// The power cut, as the heat sees it.
struct heat_outage_inputs {
  required<duration> lasts;
  required<temperature> lowest;                           ///< that the animals stand
  std::optional<tankwright::room::drifting_room> room{};  ///< the room cools too; left out: it stays as it is
};

/// What keeps the water warm.
struct heating_inputs {
  std::vector<tank_wall_inputs> walls{};
  std::optional<power> heater{};           ///< that is there, or chosen
  double margin = 1.25;                    ///< over the high estimate
  std::optional<temperature> highest{};    ///< that the animals stand
  std::optional<temperature> filled_at{};  ///< asks for the warm-up
  std::optional<heat_outage_inputs> outage{};
};

/// Levels of the last chamber, where the return pump stands, above any mark. What is left out comes from the sump.
struct pump_chamber_inputs {
  std::optional<area> surface{};
  std::optional<length> running{};
  required<length> lowest;  ///< at which the pump still draws no air
};

/// The reservoir of fresh water.
struct top_off_inputs {
  required<volume> reservoir;
  duration unattended;                  ///< how long nobody looks
  practical_salinity lowest{30.0};      ///< that the animals stand
  practical_salinity highest{38.0};     ///< that the animals stand
  std::optional<volume> free_volume{};  ///< up to the rim, where it runs in
  std::optional<pump_chamber_inputs> chamber{};
  temperature fresh_water = celsius(20.0);
};

/// The room, its air, its heat, its top-off. What is not given is not asked, or the finding says what it needs.
struct room_inputs {
  required<tankwright::volume> volume;  ///< of the room
  rate air_changes;                     ///< of outdoor air
  std::optional<season_inputs> winter{};
  std::optional<season_inputs> summer{};
  relative_humidity target = relative_humidity::from_percent(60.0);  ///< most that the room may have
  surface_inputs display{};
  surface_inputs sump{};
  std::vector<tankwright::room::wet_surface> more_surfaces{};  ///< weirs, trickling filters
  std::vector<tankwright::room::moisture_source> sources{};
  std::optional<tankwright::room::controlled_dehumidifier> dehumidifier{};
  std::optional<thermal_transmittance> window{};
  std::optional<thermal_transmittance> wall{};
  std::vector<appliance_inputs> appliances{};
  std::optional<heating_inputs> heating{};
  std::optional<top_off_inputs> top_off{};
  std::optional<tankwright::room::electricity_price> price{};
  double heating_performance = 1.0;  ///< heat per electricity: 3 for a heat pump
  // Where the plan knows better than the sections before it:
  std::optional<temperature> water{};
  std::optional<practical_salinity> salinity{};
  std::optional<estimate<tankwright::volume>> water_volume{};
};

/// The section as the engines take it.
///
/// @param s a section that `validate` accepts
/// @return  room, seasons, surfaces, machines, walls and reservoir
/// @throws  invalid_input, out_of_range (names what is missing, or what a wall of one sheet cannot be)
/// @accuracy that of the design conductivities of a wall that is given by its material
/// @source  EN ISO 6946 by `room/wall.hpp`
[[nodiscard]] room_inputs inputs_of(const room_section& s);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/inputs/room_inputs.ipp>
#endif
