// SPDX-License-Identifier: BSL-1.0
/// @file
/// How long does the oxygen last? Where the level settles, and the time to a limit when the power fails, with battery
/// air or without. What comes in is in `aeration.hpp`, what is used in `oxygen_use.hpp` and `nitrogen.hpp`, saturation
/// in `water/oxygen.hpp`.
#pragma once

#include <cmath>
#include <optional>
#include <string_view>

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/life/aeration.hpp>
#include <tankwright/life/levels.hpp>
#include <tankwright/life/ranges.hpp>
#include <tankwright/water/well_mixed.hpp>

namespace tankwright::life {

/// A tank that uses oxygen and takes some in.
struct oxygen_balance {
  required<volume> net;     ///< net volume of water
  required<mass_flow> use;  ///< animals + filter + the rest
  /// From water::oxygen_saturation_concentration: it is for this salinity already, so do not correct it again.
  required<mass_concentration> saturation;
  rate aeration = {};  ///< from aeration_rate; zero for no way in
};

inline constexpr limits oxygen_use_limits{"oxygen use", "mg/h", {0.0, 1e15}};
inline constexpr limits oxygen_saturation_limits{"oxygen saturation", "mg/L", some_level};
inline constexpr limits oxygen_level_limits{"oxygen level", "mg/L", possible_level};

namespace detail {

inline void check_balance(std::string_view here, const oxygen_balance& tank) {
  core::check(here, net_volume_limits, in_litres(tank.net));
  core::check(here, oxygen_use_limits, in_milligrams_per_hour(tank.use));
  core::check(here, oxygen_saturation_limits, in_milligrams_per_litre(tank.saturation));
  core::check(here, bubbles_limits, in_per_hour(tank.aeration));
}

/// The balance of the level [kg/m^3, s]: dC/dt = k C* - R/V - k C.
inline water::kernel::well_mixed<double> level_balance(const oxygen_balance& tank) noexcept {
  const double k = tank.aeration.value();
  return {k * tank.saturation->value() - tank.use->value() / tank.net->value(), k};
}

}  // namespace detail

/// The course of the oxygen level from a start.
struct oxygen_course {
  oxygen_balance tank;                 ///< in a power cut: with the aeration that is left (still surface, battery air)
  required<mass_concentration> start;  ///< level at time zero
};

/// The oxygen level of a tank after some time.
///
///   C = C_s + (C0 - C_s) exp(-k t),   C_s = C* - R/(k V);   C0 - R t/V without aeration
///
/// @param course net volume > 0, use >= 0, saturation > 0, aeration >= 0; start >= 0, above saturation is allowed
/// @param time   t >= 0
/// @return       level [kg/m^3]; zero once all is used (the formula's line would go below)
/// @throws       invalid_input
/// @accuracy     exact for constant use; animals breathe less when little is left
/// @source       mass balance
[[nodiscard]] inline mass_concentration oxygen_after(const oxygen_course& course, duration time) {
  constexpr std::string_view here = "tankwright::life::oxygen_after";
  const oxygen_balance& tank = course.tank;
  detail::check_balance(here, tank);
  core::check(here, oxygen_level_limits, in_milligrams_per_litre(course.start));
  core::check(here, {"time", "h", {0.0, 1e7}}, in_hours(time));
  const double level = detail::level_balance(tank).after(course.start->value(), time.value());
  return mass_concentration::from_value(level > 0.0 ? level : 0.0);
}

/// The level at which the way in and the use balance.
///
///   C_s = C* - R/(k V)
///
/// @param tank  net volume > 0, use >= 0, saturation > 0, aeration >= 0
/// @return      level [kg/m^3]; empty when the use is more than can come in: the oxygen then runs out
/// @throws      invalid_input
/// @accuracy    exact for constant use
/// @source      mass balance
[[nodiscard]] inline std::optional<mass_concentration> steady_oxygen(const oxygen_balance& tank) {
  detail::check_balance("tankwright::life::steady_oxygen", tank);
  const double most = tank.aeration.value() * tank.net->value() * tank.saturation->value();  // comes in at level zero
  if (!(tank.use->value() <= most) || most == 0.0) return std::nullopt;
  return mass_concentration::from_value(tank.saturation->value() * (1.0 - tank.use->value() / most));
}

/// How long until the oxygen is at a limit.
struct oxygen_countdown {
  std::optional<duration> time;      ///< to the limit; empty when the level stays above it
  std::optional<duration> plan_for;  ///< half of it
  bool above_saturation;             ///< the start is above saturation: it will not last, and it can harm animals
  tankwright::caution caution;
};

/// How long the oxygen lasts in a power cut.
///
///   t = (1/k) ln[(C0 - C_s)/(C_limit - C_s)],   C_s = C* - R/(k V);   (C0 - C_limit) V/R without aeration
///
/// @param course the tank as it is during the cut; start >= 0
/// @param limit  level >= 0
/// @return       time [s] to the limit (zero when the start is already below), half of it to plan for, and the caution
/// @throws       invalid_input
/// @accuracy     exact for constant use and perfect mixing; a screening estimate of a real tank
/// @source       mass balance
[[nodiscard]] inline oxygen_countdown time_to_oxygen_limit(const oxygen_course& course,
                                                           mass_concentration limit = oxygen_alarm) {
  constexpr std::string_view here = "tankwright::life::time_to_oxygen_limit";
  const oxygen_balance& tank = course.tank;
  const mass_concentration start = course.start;
  detail::check_balance(here, tank);
  core::check(here, oxygen_level_limits, in_milligrams_per_litre(start));
  core::check(here, {"oxygen limit", "mg/L", possible_level}, in_milligrams_per_litre(limit));
  oxygen_countdown result{
      std::nullopt,
      std::nullopt,
      start > tank.saturation.get(),
      {"Screening estimate at constant use in mixed water: plan for half of this time. A stopped filter uses oxygen "
       "too and turns foul: do not start it into the tank again after an hour or two. Battery air is cheap."}};
  if (start <= limit) {
    result.time = duration{};
  } else {
    const double time = detail::level_balance(tank).time_between(start.value(), limit.value());
    if (std::isfinite(time)) result.time = seconds(time);
  }
  if (result.time) result.plan_for = *result.time * 0.5;
  return result;
}

/// How strong the (battery) air must be to hold a level for as long as it runs.
///
///   k = R / (V (C* - C))
///
/// @param tank  net volume > 0, use >= 0, saturation > 0 (its own aeration is not counted)
/// @param level to hold, 0 <= C < saturation
/// @return      first-order rate [1/s] that all ways in must have together, at the tank's temperature
/// @throws      invalid_input
/// @accuracy    exact for constant use and perfect mixing
/// @source      mass balance
[[nodiscard]] inline rate aeration_to_keep(const oxygen_balance& tank, mass_concentration level) {
  constexpr std::string_view here = "tankwright::life::aeration_to_keep";
  detail::check_balance(here, tank);
  core::check(here, oxygen_level_limits, in_milligrams_per_litre(level));
  if (!(level < tank.saturation.get())) {
    core::fail<invalid_input>(here, "oxygen level", in_milligrams_per_litre(level), "mg/L",
                              "is not below saturation: air cannot hold it");
  }
  return tank.use.get() / tank.net.get() / (tank.saturation.get() - level);
}

/// How long aeration takes to bring the water of a tank up to a level, with nothing using oxygen meanwhile.
///
///   t = ln[(C* - C0)/(C* - C)] / k
///
/// @param course saturation > 0, aeration > 0, start 0 <= C0 <= C; the tank's use is not counted
/// @param level  to reach, below saturation
/// @return       time [s]
/// @throws       invalid_input
/// @accuracy     exact for perfect mixing
/// @source       first-order gas transfer; ASCE/EWRI 2-06
[[nodiscard]] inline duration time_to_aerate(const oxygen_course& course, mass_concentration level) {
  constexpr std::string_view here = "tankwright::life::time_to_aerate";
  const mass_concentration saturation = course.tank.saturation;
  const mass_concentration start = course.start;
  detail::check_balance(here, course.tank);
  core::check(here, {"aeration", "1/h", {1e-8, 1e5}}, in_per_hour(course.tank.aeration));
  core::check(here, oxygen_level_limits, in_milligrams_per_litre(start));
  if (!(start <= level && level < saturation)) {
    core::fail<invalid_input>(here, "oxygen level", in_milligrams_per_litre(level), "mg/L",
                              "must lie between the start and below saturation");
  }
  const double k = course.tank.aeration.value();
  const water::kernel::well_mixed<double> alone{k * saturation.value(), k};
  return seconds(alone.time_between(start.value(), level.value()));
}

/// Oxygen that the ways in bring at a level.
///
///   OTR = k (C* - C) V
///
/// @param tank  net volume > 0, saturation > 0, aeration >= 0
/// @param level of the water >= 0; above saturation the result is negative (oxygen leaves)
/// @return      oxygen per time [kg/s]
/// @throws      invalid_input
/// @accuracy    exact for the coefficient given
/// @source      first-order gas transfer; ASCE/EWRI 2-06
[[nodiscard]] inline mass_flow oxygen_transfer(const oxygen_balance& tank, mass_concentration level) {
  constexpr std::string_view here = "tankwright::life::oxygen_transfer";
  detail::check_balance(here, tank);
  core::check(here, oxygen_level_limits, in_milligrams_per_litre(level));
  return tank.aeration * (tank.saturation.get() - level) * tank.net.get();
}

}  // namespace tankwright::life
