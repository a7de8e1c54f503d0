// SPDX-License-Identifier: BSL-1.0
/// @file
/// Where does the salinity drift? Evaporation takes water and leaves the salt; top-off brings water back, too little,
/// too much, or with salt in it.
#pragma once

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/water/density.hpp>
#include <tankwright/water/salinity.hpp>

namespace tankwright::water {

inline constexpr caution drift_caution{
    "A float valve that sticks open can empty a whole reservoir into the system, and one that sticks shut lets the "
    "pumps run dry: size the reservoir so that all of it does no harm, and check the level daily by eye."};

/// Water between two readings, nothing added.
struct evaporation_between {
  required<tankwright::volume> volume;  ///< of the water at the first reading
  required<practical_salinity> first;
  required<practical_salinity> second;
  required<tankwright::temperature> temperature;
};

/// What went into the air.
struct evaporated_water {
  tankwright::mass mass;
  tankwright::volume volume;  ///< as fresh water: what to top off
};

/// A system that evaporates and is topped off. All flows are constant.
struct drifting_system {
  required<tankwright::volume> volume;  ///< of the water at the start
  required<practical_salinity> salinity;
  required<tankwright::temperature> temperature;
  required<flow_rate> evaporation;  ///< fresh water lost
  required<flow_rate> top_off;      ///< water brought; zero where the top-off has failed
  practical_salinity top_off_salinity{0.0};
};

/// Where it is after a while.
struct drifted_system {
  practical_salinity salinity;
  tankwright::volume volume;
  tankwright::caution caution = drift_caution;
};

inline constexpr limits evaporation_limits{"evaporation", "L/d", not_negative};
inline constexpr limits top_off_limits{"top-off", "L/d", not_negative};
inline constexpr limits top_off_salinity_limits = detail::renamed(practical_salinity_limits, "salinity of the top-off");
inline constexpr limits drift_time_limits{"time", "d", not_negative};

namespace detail {

/// The balance of a drifting system in kilograms and seconds.
struct drift_balance {
  double mass;       // at the start
  double gain;       // kg/s
  double salt_mass;  // S times kg at the start
  double salt_gain;  // S times kg/s
};

[[nodiscard]] inline drift_balance balance_of(std::string_view function, const drifting_system& system,
                                              range_policy policy) {
  core::check(function, water_volume_limits, in_litres(system.volume), policy);
  core::check(function, practical_salinity_limits, system.salinity->value(), policy);
  core::check(function, top_off_salinity_limits, system.top_off_salinity.value(), policy);
  core::check(function, gibbs_temperature_limits, in_celsius(system.temperature), policy);
  check_liquid(function, system.salinity->value(), in_celsius(system.temperature), policy);
  core::check(function, evaporation_limits, in_litres_per_day(system.evaporation), policy);
  core::check(function, top_off_limits, in_litres_per_day(system.top_off), policy);
  const auto rho = [&](practical_salinity s) {
    return density(s, system.temperature, range_policy::extrapolate).value();
  };
  const double mass = rho(system.salinity) * system.volume->value();
  const double brought = rho(system.top_off_salinity) * system.top_off->value();
  const double lost = rho(practical_salinity{0.0}) * system.evaporation->value();
  return {mass, brought - lost, mass * system.salinity->value(), brought * system.top_off_salinity.value()};
}

}  // namespace detail

/// Water that evaporated between two readings of the salinity, nothing added.
///
///   m = M (1 - S1 / S2),   M the mass of the water at the first reading
///
/// @param readings volume > 0; first and second, practical salinity 0 to 42, second not below first and above 0;
///                 temperature, from freezing to 80 degC
/// @param policy   `extrapolate` to go past the published ranges
/// @return         mass and volume of fresh water
/// @throws         invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy       the balance is exact; an error of 0.1 in a reading is 0.3 % of all the water
/// @source         conservation of salt; density by TEOS-10
[[nodiscard]] inline evaporated_water evaporation_from_readings(const evaporation_between& readings,
                                                                range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::evaporation_from_readings";
  const double first = readings.first->value(), second = readings.second->value();
  core::check(here, water_volume_limits, in_litres(readings.volume), policy);
  core::check(here, detail::renamed(practical_salinity_limits, "first reading"), first, policy);
  core::check(here, detail::renamed(practical_salinity_limits, "second reading"), second, policy);
  core::check(here, gibbs_temperature_limits, in_celsius(readings.temperature), policy);
  if (!(second >= first && second > 0.0)) {
    core::fail<invalid_input>(
        here, "second reading", second, "",
        "is not above the first, " + core::number_text(first) + ": evaporation only raises salinity");
  }
  const mass gone =
      (1.0 - first / second) * (density(readings.first, readings.temperature, policy) * readings.volume.get());
  return {gone, gone / density(practical_salinity{0.0}, readings.temperature, range_policy::extrapolate)};
}

/// Salinity and volume of a system after a while of evaporation and top-off.
///
///   S(t) = (S0 M0 + S_in A t) / (M0 + (A - E) t),   A, E the masses brought and lost per time
///
/// @param system  volume > 0; practical salinities, 0 to 42; temperature, from freezing to 80 degC; flows >= 0
/// @param elapsed time >= 0, before the system is dry
/// @param policy  `extrapolate` to go past the published ranges
/// @return        practical salinity, volume and a caution
/// @throws        invalid_input, out_of_range (names the argument, its value and the limits); out_of_range where the
///                result leaves the scale of practical salinity
/// @accuracy      the balance is exact for constant flows; evaporation is an estimate
/// @source        conservation of mass; density by TEOS-10
[[nodiscard]] inline drifted_system drift(const drifting_system& system, duration elapsed,
                                          range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::drift";
  const detail::drift_balance b = detail::balance_of(here, system, policy);
  core::check(here, drift_time_limits, in_days(elapsed), policy);
  const double mass = b.mass + b.gain * elapsed.value();
  if (!(mass > 0.0)) {
    core::fail<invalid_input>(
        here, drift_time_limits.argument, in_days(elapsed), "d",
        "is too long: the system is dry after " + core::number_text(-b.mass / b.gain / 86400.0) + " d");
  }
  const practical_salinity s{(b.salt_mass + b.salt_gain * elapsed.value()) / mass};
  core::check(here, detail::renamed(practical_salinity_limits, "practical salinity reached"), s.value(), policy);
  return {s, kilograms(mass) / density(s, system.temperature, range_policy::extrapolate)};
}

/// Time until a system reaches a salinity: how long the top-off may fail, or stick open.
///
///   t = M0 (S - S0) / (S_in A - S (A - E))
///
/// @param system  volume > 0; practical salinities, 0 to 42; temperature, from freezing to 80 degC; flows >= 0
/// @param reached practical salinity to be reached, 0 to 42
/// @param policy  `extrapolate` to go past the published ranges
/// @return        time from the start
/// @throws        invalid_input, out_of_range (names the argument, its value and the limits; also where the system
///                never gets there)
/// @accuracy      the balance is exact for constant flows; evaporation is an estimate
/// @source        conservation of mass; density by TEOS-10
[[nodiscard]] inline duration time_to_salinity(const drifting_system& system, practical_salinity reached,
                                               range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::time_to_salinity";
  const detail::drift_balance b = detail::balance_of(here, system, policy);
  constexpr limits wanted = detail::renamed(practical_salinity_limits, "practical salinity to be reached");
  core::check(here, wanted, reached.value(), policy);
  const double missing = b.mass * reached.value() - b.salt_mass;
  if (missing == 0.0) return seconds(0.0);
  const double time = missing / (b.salt_gain - reached.value() * b.gain);
  if (!(time > 0.0 && time < core::vast && b.mass + b.gain * time > 0.0)) {
    core::fail<invalid_input>(
        here, wanted.argument, reached.value(), "",
        "is never reached from " + core::number_text(system.salinity->value()) + " with this evaporation and top-off");
  }
  return seconds(time);
}

}  // namespace tankwright::water
