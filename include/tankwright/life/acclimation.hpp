// SPDX-License-Identifier: BSL-1.0
/// @file
/// How do new arrivals come from their water into this one, and how fast? Drip acclimation, the water on the way, and
/// the largest drip that keeps to a pace. Equal steps are `water::left_after_changes`.
#pragma once

#include <cmath>
#include <string_view>

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/life/drip_vessel.hpp>
#include <tankwright/life/levels.hpp>
#include <tankwright/life/ranges.hpp>
#include <tankwright/water/exchange.hpp>

namespace tankwright::life {

inline constexpr limits start_volume_limits{"volume at the start", "L", {1e-3, 1e7}};
inline constexpr limits drip_flow_limits{"flow", "L/min", {0.0, 1e6}};

/// Tank water dripping into the water that animals came in.
struct drip {
  required<volume> start;  ///< water at the start
  required<flow_rate> flow;
  drip_vessel vessel = drip_vessel::filling;
};

namespace detail {

inline void check_drip(std::string_view here, const drip& d) {
  core::check(here, start_volume_limits, in_litres(d.start));
  core::check(here, drip_flow_limits, in_litres_per_minute(d.flow));
}

}  // namespace detail

/// How much of the animals' water is tank water after some time of dripping.
///
///   filling: Q t/(V0 + Q t),   overflowing: 1 - exp(-Q t/V0)
///
/// @param how    volume at the start > 0, flow >= 0
/// @param time   t >= 0
/// @return       share of tank water
/// @throws       invalid_input
/// @accuracy     exact for mixed water; shares by volume, which for seawater differ from shares by mass by 0.1 %
/// @source       mass balance
[[nodiscard]] inline proportion share_of_tank_water(const drip& how, duration time) {
  constexpr std::string_view here = "tankwright::life::share_of_tank_water";
  detail::check_drip(here, how);
  core::check(here, {"time", "min", {0.0, 1e8}}, in_minutes(time));
  if (how.vessel == drip_vessel::overflowing) {
    return fraction(1.0 - water::left_after_flow({.volume = how.start, .flow = how.flow, .time = time}).value());
  }
  const volume added = how.flow.get() * time;
  return fraction(added / (how.start.get() + added));
}

/// How long a drip takes to a share of tank water.
///
///   filling: V0/Q p/(1 - p),   overflowing: -V0/Q ln(1 - p)
///
/// @param how    volume at the start > 0, flow > 0
/// @param share  p, 0 to below 1; 0.9 leaves a tenth of the difference
/// @return       time [s]
/// @throws       invalid_input
/// @accuracy     exact for mixed water
/// @source       mass balance
[[nodiscard]] inline duration time_to_share(const drip& how, proportion share) {
  constexpr std::string_view here = "tankwright::life::time_to_share";
  detail::check_drip(here, how);
  core::check(here, {"flow", "L/min", {1e-8, 1e6}}, in_litres_per_minute(how.flow));
  core::check(here, {"share of tank water", "", zero_to_below_one}, share.value());
  const double left = 1.0 - share.value();
  if (how.vessel == drip_vessel::overflowing) {
    return water::time_to_leave({.volume = how.start, .flow = how.flow, .left = fraction(left)});
  }
  return how.start.get() / how.flow.get() * (share.value() / left);
}

/// From one salinity and temperature to another.
struct water_step {
  required<practical_salinity> salinity_from;
  required<practical_salinity> salinity_to;
  required<tankwright::temperature> temperature_from;
  required<tankwright::temperature> temperature_to;
};

namespace detail {

inline void check_step(std::string_view here, const water_step& step) {
  core::check(here, {"salinity before", "", possible_salt}, step.salinity_from->value());
  core::check(here, {"salinity after", "", possible_salt}, step.salinity_to->value());
  core::check(here, {"temperature before", "degC", possible_water}, in_celsius(step.temperature_from));
  core::check(here, {"temperature after", "degC", possible_water}, in_celsius(step.temperature_to));
}

}  // namespace detail

/// The animals' water part of the way.
struct water_between {
  practical_salinity salinity;
  tankwright::temperature temperature;
};

/// Salinity and temperature of a mixture of the two waters.
///
///   from + share (to - from)
///
/// @param step   the two waters
/// @param share  of the water to come
/// @return       practical salinity and temperature; heat exchanged with the room is not counted
/// @throws       invalid_input
/// @accuracy     0.003 of salinity for steps up to 5 (shares by volume instead of mass)
/// @source       mass balance
[[nodiscard]] inline water_between mixed_at(const water_step& step, proportion share) {
  constexpr std::string_view here = "tankwright::life::mixed_at";
  core::check(here, {"share of tank water", "", zero_to_one}, share.value());
  detail::check_step(here, step);
  const auto between = [&](double from, double to) { return from + share.value() * (to - from); };
  return {practical_salinity{between(step.salinity_from->value(), step.salinity_to->value())},
          temperature::from_value(between(step.temperature_from->value(), step.temperature_to->value()))};
}

/// A drip that must not change the water faster than a pace. There is no published general pace: that of the salinity
/// is the user's, a kelvin an hour is from memory.
struct gentle_drip {
  required<volume> start;  ///< water at the start
  water_step step;
  required<double> salinity_per_hour;  ///< [1/h]
  temperature_difference temperature_per_hour = temperature_change_in_an_hour.level;
};

/// The largest drip that keeps to a pace. A drip changes the water fastest when it begins.
///
///   Q = V0 min( pace_S/|S1 - S0|, pace_T/|T1 - T0| )
///
/// @param drip   volume at the start > 0; the two waters, which must differ; pace > 0
/// @return       flow [m^3/s]
/// @throws       invalid_input; also when the waters do not differ, because any flow will do
/// @accuracy     exact for mixed water without heat from the room
/// @source       mass balance
[[nodiscard]] inline flow_rate gentle_flow(const gentle_drip& drip) {
  constexpr std::string_view here = "tankwright::life::gentle_flow";
  core::check(here, start_volume_limits, in_litres(drip.start));
  core::check(here, {"salinity per hour", "", positive}, drip.salinity_per_hour);
  core::check(here, {"temperature per hour", "K", positive}, in_kelvin_steps(drip.temperature_per_hour));
  detail::check_step(here, drip.step);
  const water_step& step = drip.step;
  const double by_salinity =
      std::fabs(step.salinity_to->value() - step.salinity_from->value()) / drip.salinity_per_hour;
  const double by_temperature = std::fabs(step.temperature_to->value() - step.temperature_from->value()) /
                                in_kelvin_steps(drip.temperature_per_hour);
  const double hours_of_exchange = std::fmax(by_salinity, by_temperature);
  if (hours_of_exchange == 0.0) {
    core::fail<invalid_input>(here, "step", 0.0, "", "because both waters are the same: any flow is gentle");
  }
  return drip.start.get() / hours(hours_of_exchange);
}

}  // namespace tankwright::life
