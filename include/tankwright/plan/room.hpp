// SPDX-License-Identifier: BSL-1.0
/// @file
/// The room of a plan: its air, its heat, its top-off. The key [room].
#pragma once

#include <optional>
#include <string>
#include <tankwright/core/units.hpp>
#include <tankwright/plan/air_rating.hpp>
#include <tankwright/plan/description.hpp>
#include <vector>

namespace tankwright::plan {

/// How the water of a surface moves.
enum class movement { still, gentle, lively, splashing };
/// What lies over the water.
enum class cover { lid, foam, bubble_sheet, floating_discs };
/// What a wall of the tank is made of.
enum class wall_material { glass, acrylic, plywood, glass_fibre, polystyrene };

/// The room in one season, and the air outdoors.
struct season {
  value<temperature> indoors{};
  value<temperature> outdoors{};
  value<relative_humidity> outdoor_humidity{};
  value<rate> air_changes{};
  value<temperature> coldest_night{};
  value<temperature> hottest_day{};
  std::string note{};
};

/// How water meets the air.
struct water_surface {
  value<tankwright::area> area{};
  word<plan::movement> movement = word_by_default(plan::movement::gentle);
  value<velocity> air_speed = by_default(metres_per_second(0.1));
  value<proportion> covered = by_default(percent(0.0));
  word<plan::cover> cover = word_by_default(plan::cover::lid);
};

/// The display, or the sump.
struct open_water {
  water_surface surface{};
  value<tankwright::area> gap{};
  std::string note{};
};

/// Another wet surface: a weir, a trickling filter.
struct further_surface {
  std::string label{};
  water_surface surface{};
  std::string note{};
};

/// Anything else that gives off moisture.
struct moisture_source {
  std::string label{};
  value<mass_flow> rate{};
  std::string note{};
};

/// A dehumidifier by its label.
struct dehumidifier {
  value<flow_rate> capacity{};
  value<relative_humidity> set_point{};
  air_rating rated_at{};
  value<tankwright::power> power{};
  std::string note{};
};

/// A pane or an outside wall of the room.
struct cold_surface {
  value<thermal_transmittance> transmittance{};
  std::string note{};
};

/// A pump, a light.
struct appliance {
  std::string label{};
  value<tankwright::power> power{};
  value<proportion> into_water = by_default(percent(0.0));
  value<proportion> on = by_default(percent(100.0));
  std::string circuit{};
  value<electric_current> leakage{};
  value<double> power_factor = by_default(1.0);
  value<double> kept_as{};
  flag over_water{};
  std::string note{};
};

/// How the lights hang over the display.
struct lights {
  value<length> height{};
  value<angle> beam{};
  value<length> spacing{};
  value<length> depth{};
  value<proportion> through_a_metre = by_default(percent(88.0));
  value<proportion> through_cover = by_default(percent(100.0));
  value<proportion> least_share{};
  std::string note{};
};

/// A circuit of the house with its protection.
struct circuit {
  std::string label{};
  value<tankwright::voltage> voltage{};
  value<electric_current> breaker{};
  value<electric_current> trips_at{};
  value<proportion> continuous = by_default(percent(80.0));
  std::string note{};
};

/// What gives electricity while the power is away.
struct backup {
  value<energy> capacity{};
  value<proportion> usable = by_default(percent(50.0));
  value<proportion> inverter = by_default(percent(85.0));
  value<duration> lasts{};
  value<tankwright::power> generator{};
  std::string note{};
};

/// What the year brings, month by month.
struct months_of_year {
  values<temperature> outdoors{};
  values<relative_humidity> humidity{};
  values<temperature> indoors{};
  std::string note{};
};

/// A week of heat, and what may be done about it.
struct heat_week {
  value<temperature> indoors{};
  value<relative_humidity> humidity{};
  value<temperature> highest{};
  value<velocity> fan{};
  value<tankwright::power> chiller{};
  value<temperature> night{};
  std::string note{};
};

/// A price for what is used up and bought again.
struct consumable {
  std::string label{};
  value<double> price{};
  value<duration> every{};
  std::string note{};
};

/// The running year beside the electricity.
struct running_year {
  value<proportion> water_change{};
  value<duration> every{};
  value<double> price_of_water{};  ///< per cubic metre
  value<double> price_of_salt{};   ///< per kilogram
  value<proportion> recovery{};
  std::vector<plan::consumable> consumable{};
  std::string note{};
};

/// A wall, pane or floor of the tank.
struct tank_wall {
  std::string label{};
  value<tankwright::area> area{};
  value<thermal_transmittance> transmittance{};
  word<wall_material> material{};
  value<length> thickness{};
  value<temperature> outside{};
  std::string note{};
};

/// Hours without power, as the heat sees them.
struct heat_outage {
  value<duration> lasts{};
  value<temperature> lowest{};
  value<temperature> room_settles_at{};
  value<duration> room_time_constant{};
  std::string note{};
};

/// What keeps the water warm.
struct heating {
  value<power> heater{};
  value<double> margin = by_default(1.25);
  value<temperature> highest{};
  value<temperature> filled_at{};
  value<duration> looked_every = by_default(hours(12.0));
  std::vector<tank_wall> wall{};
  std::optional<heat_outage> outage{};
  std::string note{};
};

/// The chamber of the return pump, whose level shows what evaporates. With a sump its surface and level are the sump's.
struct pump_chamber {
  value<area> surface{};
  value<length> running_level{};
  value<length> lowest_level{};
  std::string note{};
};

/// The reservoir of fresh water.
struct top_off {
  value<volume> reservoir{};
  value<duration> unattended = by_default(days(7.0));
  value<practical_salinity> lowest_salinity = by_default(practical_salinity{30.0});
  value<practical_salinity> highest_salinity = by_default(practical_salinity{38.0});
  value<volume> free_volume{};
  value<temperature> fresh_water = by_default(celsius(20.0));
  std::optional<pump_chamber> chamber{};
  std::string note{};
};

/// [room]
struct room_section {
  value<tankwright::volume> volume{};
  value<tankwright::length> length{};
  value<tankwright::length> width{};
  value<tankwright::length> height{};
  value<rate> air_changes = by_default(per_hour(0.5));
  value<relative_humidity> highest_humidity = by_default(relative_humidity::from_percent(60.0));
  value<double> price_per_kwh{};
  value<double> heating_performance = by_default(1.0);
  value<temperature> water_temperature{};
  value<practical_salinity> salinity{};
  value<tankwright::volume> water_volume{};
  std::optional<season> winter{};
  std::optional<season> summer{};
  std::optional<open_water> display{};
  std::optional<open_water> sump{};
  std::vector<further_surface> surface{};
  std::vector<moisture_source> moisture{};
  std::optional<plan::dehumidifier> dehumidifier{};
  std::optional<cold_surface> window{};
  std::optional<cold_surface> wall{};
  std::vector<plan::appliance> appliance{};
  std::optional<plan::lights> lights{};
  std::vector<plan::circuit> circuit{};
  std::optional<plan::backup> backup{};
  std::optional<months_of_year> year{};
  std::optional<plan::heat_week> heat_week{};
  std::optional<running_year> running{};
  std::optional<plan::heating> heating{};
  std::optional<plan::top_off> top_off{};
  std::string note{};
};

void describe(visitor& key, season& s);
void describe(visitor& key, open_water& s);
void describe(visitor& key, further_surface& s);
void describe(visitor& key, moisture_source& s);
void describe(visitor& key, dehumidifier& s);
void describe(visitor& key, cold_surface& s);
void describe(visitor& key, appliance& s);
void describe(visitor& key, lights& s);
void describe(visitor& key, circuit& s);
void describe(visitor& key, backup& s);
void describe(visitor& key, months_of_year& s);
void describe(visitor& key, heat_week& s);
void describe(visitor& key, consumable& s);
void describe(visitor& key, running_year& s);
void describe(visitor& key, tank_wall& s);
void describe(visitor& key, heat_outage& s);
void describe(visitor& key, heating& s);
void describe(visitor& key, pump_chamber& s);
void describe(visitor& key, top_off& s);
void describe(visitor& key, room_section& s);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/room.ipp>
#endif
