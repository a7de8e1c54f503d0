// SPDX-License-Identifier: BSL-1.0
/// @file
/// The heater sticks on: how hot does the water get, how fast, and how long is there to act?
#pragma once

#include <tankwright/room/temperature_course.hpp>

namespace tankwright::room {

/// A tank whose heater sticks on.
struct stuck_heater {
  tank_heat tank;  ///< at the temperature it is held at; its sources are what else runs
  required<tankwright::heat_capacity> heat_capacity;
  required<power> heater;
  required<tankwright::temperature> highest;  ///< that the animals stand
  duration within = days(7.0);                ///< how far to look ahead
};

struct stuck_heater_result {
  temperature_crossing reaches_highest;
  /// Where it ends; empty: above 90 degC or below -2 degC.
  std::optional<estimate<tankwright::temperature>> settles_at;
  estimate<temperature_difference> in_an_hour;  ///< the largest change
  estimate<temperature_difference> in_a_day;
  tankwright::caution caution;
};

/// The course of a tank whose heater sticks on.
///
///   C dT/dt = P - Q(T),   Q as in heat_balance
///
/// @param s      the tank as for heat_balance; heat capacity [J/K]; heater P [W] 1e-3 to 1e9; highest temperature,
///               above that of the water; time to look ahead [s], 0 to 1e7
/// @param policy `extrapolate` to go past the published ranges
/// @return       times to the highest temperature (plan on the soonest), where it ends, the largest rise in an hour and
///               in a day
/// @throws       invalid_input (also when the water is at the highest temperature already), out_of_range,
///               no_convergence
/// @accuracy     as temperature_course_of
/// @source       energy balance; Dormand & Prince 1980
[[nodiscard]] inline stuck_heater_result heater_stuck_on(const stuck_heater& s,
                                                         range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::heater_stuck_on";
  core::check(here, heater_limits, s.heater.get().value());
  core::check(here, {"highest temperature", "degC", possible_water}, in_celsius(s.highest));
  core::check(here, uncontrolled_time_limits, s.within.value());
  if (!(in_kelvins(s.highest) > in_kelvins(s.tank.water.temperature))) {
    core::fail<invalid_input>(
        here, "highest temperature", in_celsius(s.highest), "degC",
        "is not above that of the water, " + core::number_with_unit(in_celsius(s.tank.water.temperature), "degC"));
  }
  uncontrolled_tank hot{.tank = s.tank, .heat_capacity = s.heat_capacity};
  hot.tank.sources.push_back({.label = "heater", .heat = s.heater});
  const temperature_crossing reaches = time_to_temperature(hot, s.highest, s.within, policy);
  // A large heater boils the tank in time; what animals feel is over before that.
  const duration until = reaches.latest && *reaches.latest < s.within ? *reaches.latest : s.within;
  const auto change = [&](duration window) { return largest_change(hot, until, window, policy).largest; };
  const detail::checked_course c = detail::checked(here, hot, policy);
  return {.reaches_highest = reaches,
          .settles_at = detail::settles_in(here, c, c.start.areas.agitated ? agitated_band : still_band),
          .in_an_hour = change(hours(1.0)),
          .in_a_day = change(days(1.0)),
          .caution = water_and_electricity_caution};
}

}  // namespace tankwright::room
