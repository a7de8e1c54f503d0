// SPDX-License-Identifier: BSL-1.0
/// @file
/// What a person says about the room for closing the top: its air, its heat, its top-off.
#pragma once

#include <optional>
#include <string>
#include <tankwright/room/humidity.hpp>
#include <tankwright/room/outage.hpp>
#include <tankwright/room/running_cost.hpp>
#include <vector>

namespace tankwright::commissioning {

/// The room in one season, and the air outdoors.
struct room_season {
  required<temperature> indoors;
  required<temperature> outdoors;  ///< mean of the season
  required<relative_humidity> outdoor_humidity;
  std::optional<rate> air_changes{};           ///< where windows stand otherwise than the rest of the year
  std::optional<temperature> coldest_night{};  ///< for the window; the mean when left out
};

/// Display or sump as the air meets it.
struct open_surface {
  std::optional<tankwright::area> area{};  ///< that of the system when left out
  room::agitation moved = room::gently_moving;
  velocity air_speed = metres_per_second(0.1);
  proportion covered = fraction(0.0);
  room::cover_material cover = room::rigid_lid;
};

/// A pane or an outside wall of the room.
struct cold_surface {
  required<thermal_transmittance> transmittance;
};

/// A pump, a light: what it draws, how much of that ends up in the water, and how long it runs.
struct appliance {
  std::string label = "appliance";
  required<power> electricity;
  proportion into_water = fraction(0.0);
  proportion on = fraction(1.0);  ///< part of the day; what is off at times does not help to size the heater
};

/// The power cut, as the heat sees it.
struct outage_plan {
  required<duration> lasts;
  required<temperature> lowest;               ///< that the animals stand
  std::optional<room::drifting_room> room{};  ///< the room cools too; left out: it stays as it is
};

/// What keeps the water warm.
struct heating_plan {
  std::vector<room::tank_wall> walls{};
  std::optional<power> heater{};           ///< that is there, or chosen
  double margin = 1.25;                    ///< over the high estimate
  std::optional<temperature> filled_at{};  ///< asks for the warm-up
  std::optional<outage_plan> outage{};
};

/// Levels of the last chamber, where the return pump stands, above any mark.
struct chamber_levels {
  required<area> surface;
  required<length> running;
  required<length> lowest;  ///< at which the pump still draws no air
};

/// The reservoir of fresh water.
struct top_off_plan {
  required<volume> reservoir;
  duration unattended = days(7.0);      ///< how long nobody looks
  practical_salinity lowest{30.0};      ///< that the animals stand
  practical_salinity highest{38.0};     ///< that the animals stand
  std::optional<volume> free_volume{};  ///< up to the rim, where it runs in
  std::optional<chamber_levels> chamber{};
  temperature fresh_water = celsius(20.0);
};

/// The room, its air, its heat, its top-off. What is not given is not asked, or the finding says what it needs.
struct room_plan {
  required<tankwright::volume> volume;  ///< of the room
  rate air_changes = per_hour(0.5);     ///< of outdoor air
  std::optional<room_season> winter{};
  std::optional<room_season> summer{};
  relative_humidity target = relative_humidity::from_percent(60.0);  ///< most that the room may have
  open_surface display{};
  open_surface sump{};
  std::vector<room::wet_surface> more_surfaces{};  ///< weirs, trickling filters
  std::vector<room::moisture_source> sources{};
  std::optional<room::controlled_dehumidifier> dehumidifier{};
  std::optional<cold_surface> window{};
  std::optional<cold_surface> wall{};
  std::vector<appliance> appliances{};
  std::optional<heating_plan> heating{};
  std::optional<top_off_plan> top_off{};
  std::optional<room::electricity_price> price{};
  double heating_performance = 1.0;  ///< heat per electricity: 3 for a heat pump
  // Where the plan knows better than the sections before it:
  std::optional<temperature> water{};
  std::optional<practical_salinity> salinity{};
  std::optional<estimate<tankwright::volume>> water_volume{};
};

}  // namespace tankwright::commissioning
