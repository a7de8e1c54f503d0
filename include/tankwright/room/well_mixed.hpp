// SPDX-License-Identifier: BSL-1.0
/// @file
/// The hand calculation of room humidity: a well-mixed room with constant flows has a closed form. For a tank, whose
/// evaporation falls as the room gets wetter, see `humidity.hpp`.
#pragma once

#include <tankwright/room/air.hpp>
#include <tankwright/water/well_mixed.hpp>

namespace tankwright::room {

/// Constant flows into and out of a room. A surface takes part with what it gives per humidity ratio: E = g (W_s - W).
struct well_mixed_room {
  required<mass_flow> dry_air;  ///< of the ventilation
  required<humidity_ratio> outdoor;
  mass_flow source = kilograms_per_hour(0.0);                                 ///< less what a machine removes
  mass_flow transfer = kilograms_per_hour(0.0);                               ///< g, of the wet surfaces
  humidity_ratio surface = humidity_ratio::from_kilograms_per_kilogram(0.0);  ///< W_s, at the wet surfaces
};

inline constexpr limits dry_air_flow_limits{"dry-air flow", "kg/s", {0.0, 1e6}};
inline constexpr limits moisture_source_limits{"moisture source", "kg/s", {-1e6, 1e6}};
inline constexpr limits moisture_transfer_limits{"moisture transfer", "kg/s", {0.0, 1e6}};
inline constexpr limits dry_air_mass_limits{"mass of dry air", "kg", {1e-6, 1e9}};
inline constexpr limits elapsed_time_limits{"time", "s", {0.0, 1e10}};

namespace detail {

/// dW/dt = (inflow - loss W) / mass.
struct moisture_line {
  double inflow;
  double loss;
};

[[nodiscard]] inline moisture_line checked(std::string_view function, const well_mixed_room& r) {
  const double flow = r.dry_air.get().value();
  core::check(function, dry_air_flow_limits, flow);
  core::check(function, {"outdoor humidity ratio", "", humidity_ratio_limits.possible}, r.outdoor.get().value());
  core::check(function, moisture_source_limits, r.source.value());
  core::check(function, moisture_transfer_limits, r.transfer.value());
  core::check(function, {"humidity ratio at the surface", "", humidity_ratio_limits.possible}, r.surface.value());
  const double loss = flow + r.transfer.value();
  if (!(loss >= core::tiny)) {
    core::fail<invalid_input>(function, dry_air_flow_limits.argument, flow, "kg/s",
                              "lets nothing out: with a source the air only gets wetter, until it is saturated");
  }
  return {flow * r.outdoor.get().value() + r.source.value() + r.transfer.value() * r.surface.value(), loss};
}

[[nodiscard]] inline room::humidity_ratio checked_ratio(std::string_view function, double ratio) {
  core::check(function, {"resulting humidity ratio", "", not_negative}, ratio);
  return room::humidity_ratio::from_kilograms_per_kilogram(ratio);
}

}  // namespace detail

/// Humidity ratio at which a room with constant flows settles.
///
///   W = (m W_o + g W_s + G) / (m + g)
///
/// @param r      dry air m [kg/s] >= 0; outdoor humidity ratio; source G [kg/s], negative for a machine; transfer g
///               [kg/s] >= 0 and humidity ratio at the surface; m + g > 0
/// @return       humidity ratio [kg/kg]; it may be above saturation, which this hand calculation does not know
/// @throws       invalid_input (also without any way out, and when the machine takes more than there is)
/// @accuracy     exact for constant flows
/// @source       mass balance
[[nodiscard]] inline humidity_ratio settled_humidity_ratio(const well_mixed_room& r) {
  constexpr std::string_view here = "tankwright::room::settled_humidity_ratio";
  const auto line = detail::checked(here, r);
  return detail::checked_ratio(here, line.inflow / line.loss);
}

/// Time in which a room with constant flows covers 63 % of the way to where it settles.
///
///   tau = M / (m + g)
///
/// @param r      as for settled_humidity_ratio
/// @param air    dry air in the room M [kg] > 0
/// @return       time constant [s]
/// @throws       invalid_input
/// @accuracy     exact for constant flows; walls and furniture that take up moisture make it longer
/// @source       mass balance
[[nodiscard]] inline duration humidity_time_constant(const well_mixed_room& r, mass air) {
  constexpr std::string_view here = "tankwright::room::humidity_time_constant";
  core::check(here, dry_air_mass_limits, air.value());
  return duration::from_value(air.value() / detail::checked(here, r).loss);
}

/// Where a room with constant flows starts, and when to look.
struct humidity_start {
  required<humidity_ratio> ratio;  ///< at the start
  required<mass> dry_air;          ///< in the room
  required<duration> time;         ///< since
};

/// Humidity ratio of a room with constant flows after some time.
///
///   W(t) = W_settled + (W_0 - W_settled) exp(-t / tau)
///
/// @param r      as for settled_humidity_ratio
/// @param start  humidity ratio W_0; dry air in the room [kg] > 0; time t [s] >= 0
/// @return       humidity ratio [kg/kg]
/// @throws       invalid_input
/// @accuracy     exact for constant flows
/// @source       mass balance
[[nodiscard]] inline humidity_ratio humidity_ratio_after(const well_mixed_room& r, const humidity_start& start) {
  constexpr std::string_view here = "tankwright::room::humidity_ratio_after";
  const auto line = detail::checked(here, r);
  core::check(here, {"humidity ratio at the start", "", humidity_ratio_limits.possible}, start.ratio.get().value());
  core::check(here, dry_air_mass_limits, start.dry_air.get().value());
  core::check(here, elapsed_time_limits, start.time.get().value());
  const double dry_air = start.dry_air.get().value();
  const water::kernel::well_mixed<double> balance{line.inflow / dry_air, line.loss / dry_air};
  return detail::checked_ratio(here, balance.after(start.ratio.get().value(), start.time.get().value()));
}

}  // namespace tankwright::room
