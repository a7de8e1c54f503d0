// SPDX-License-Identifier: BSL-1.0
/// @file
/// How far does a jet reach? Water leaving a nozzle or a hole into air.
#pragma once

#include <cmath>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/plumbing/pipe_run.hpp>
#include <tankwright/water/liquid.hpp>

namespace tankwright::plumbing {

/// A horizontal jet that falls freely.
struct free_jet {
  required<head> drive;                ///< over the hole
  required<length> fall;               ///< down to where the reach is asked for
  double velocity_coefficient = 0.98;  ///< [1] true velocity over sqrt(2 g h): 0.97 to 0.99 for a clean hole
};

/// A jet as it was measured.
struct measured_jet {
  required<head> drive;
  required<length> fall;
  required<length> reach;
};

inline constexpr limits jet_drive_limits{"drive", "m", positive};
inline constexpr limits jet_fall_limits{"fall", "m", positive};
inline constexpr limits jet_reach_limits{"reach", "m", not_negative};
inline constexpr limits velocity_coefficient_limits{"velocity coefficient", "", above_zero_to_one};
inline constexpr limits jet_pressure_limits{"pressure", "Pa", not_negative};

/// Horizontal reach of a free jet.
///
///   x = 2 C_v sqrt(h y)
///
/// @param jet    head h over the hole, fall y [m] > 0; velocity coefficient, above 0, to 1
/// @return       reach [m]
/// @throws       invalid_input (names the argument, its value and the limits)
/// @accuracy     2 % for a jet that holds together; air brakes a fine one
/// @source       Torricelli; ballistics
[[nodiscard]] inline length jet_reach(const free_jet& jet) {
  constexpr std::string_view here = "tankwright::plumbing::jet_reach";
  core::check(here, jet_drive_limits, jet.drive->value());
  core::check(here, jet_fall_limits, jet.fall->value());
  core::check(here, velocity_coefficient_limits, jet.velocity_coefficient);
  return length::from_value(2.0 * jet.velocity_coefficient * std::sqrt(jet.drive->value() * jet.fall->value()));
}

/// Velocity coefficient of a hole or nozzle from the reach of its jet.
///
///   C_v = x / (2 sqrt(h y))
///
/// @param jet    head h over the hole, fall y [m] > 0; reach x [m] >= 0
/// @return       [1] velocity coefficient
/// @throws       invalid_input (names the argument, its value and the limits)
/// @accuracy     that of the measurement
/// @source       Torricelli; ballistics
[[nodiscard]] inline double velocity_coefficient(const measured_jet& jet) {
  constexpr std::string_view here = "tankwright::plumbing::velocity_coefficient";
  core::check(here, jet_drive_limits, jet.drive->value());
  core::check(here, jet_fall_limits, jet.fall->value());
  core::check(here, jet_reach_limits, jet.reach->value());
  return jet.reach->value() / (2.0 * std::sqrt(jet.drive->value() * jet.fall->value()));
}

/// Height that an upward jet would reach without air: where a split pipe can wet the ceiling.
///
///   h = p/(rho g)
///
/// @param behind gauge pressure behind the hole [Pa] >= 0
/// @param water  its density
/// @return       height [m]
/// @throws       invalid_input (names the argument, its value and the limits)
/// @accuracy     an upper limit; air takes a tenth and more
/// @source       Bernoulli's equation
[[nodiscard]] inline length jet_height(gauge_pressure behind, const water::liquid& water) {
  constexpr std::string_view here = "tankwright::plumbing::jet_height";
  core::check(here, jet_pressure_limits, behind.value().value());
  water::kernel::check_flowing(here, water);
  return length::from_value(behind.value().value() / (water.density->value() * standard_gravity.value()));
}

}  // namespace tankwright::plumbing
