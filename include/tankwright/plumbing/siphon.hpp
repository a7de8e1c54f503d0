// SPDX-License-Identifier: BSL-1.0
/// @file
/// What does a full pipe carry from one surface down to another, how high may it climb, and when does it draw air?
#pragma once

#include <cmath>

#include <tankwright/core/estimate.hpp>
#include <tankwright/numerics/quadrature.hpp>
#include <tankwright/plumbing/area_profile.hpp>
#include <tankwright/plumbing/friction.hpp>

namespace tankwright::plumbing {

inline constexpr limits siphon_drop_limits{"drop", "m", not_negative};

namespace detail {

/// The run with the loss at its exit, at one end of the band of its fittings.
[[nodiscard]] inline pipe_run with_exit(const pipe_run& run, losses which) {
  pipe_run result = run;
  result.fittings = known_loss(pick(run.fittings, which) + 1.0);
  return result;
}

}  // namespace detail

/// Flow of a pipe that runs full from one free surface down to another: a siphon, a drain without air.
///
///   Q = (pi D^2/4) sqrt(2 g H / (sum of K + 1 + f L/D)),   the 1 for the exit
///
/// @param run    bore, length, roughness, fittings (without the exit), valve
/// @param drop   H [m] >= 0 from surface to surface, or to the end of the pipe where it ends in the air
/// @param water  density and viscosity at the pipe's temperature
/// @param policy `extrapolate` to go past Re 1e8 or e/D 0.05
/// @return       flow [m^3/s]; its band is that of the fittings
/// @throws       invalid_input, out_of_range (names the run by its label, the argument, its value and the limits)
/// @accuracy     the band; the first metres behind an entrance resist up to 10 % more than a developed flow
/// @source       energy equation; Colebrook 1939
[[nodiscard]] inline estimate<flow_rate> siphon_flow(const pipe_run& run, length drop, const water::liquid& water,
                                                     range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::plumbing::siphon_flow";
  core::check_element(here, run.label, siphon_drop_limits, drop.value());
  water::kernel::check_flowing(here, water);
  const auto at = [&](losses which) { return flow_for_head(detail::with_exit(run, which), drop, water, policy); };
  return {at(losses::most), at(losses::central), at(losses::least), "loss coefficients of the fittings"};
}

/// The highest point of a siphon.
struct siphon_crest {
  required<length> above_surface;  ///< of the water it draws from
  required<velocity> speed;        ///< in the pipe
  required<mass_density> density;
  double loss_before = 0.0;  ///< [1] sum of K and f L/D up to the crest
  absolute_pressure air = standard_atmosphere;
};

inline constexpr limits above_surface_limits{"above_surface", "m", any_finite};
inline constexpr limits siphon_speed_limits{"speed", "m/s", not_negative};
inline constexpr limits siphon_density_limits{"density", "kg/m3", positive};
inline constexpr limits loss_before_limits{"loss_before", "", not_negative};
inline constexpr limits air_pressure_limits{"air", "Pa", positive};
inline constexpr limits siphon_vapour_limits{"vapour_pressure", "Pa", not_negative};

/// Pressure of the water at the crest of a siphon.
///
///   p = p_air - rho [g z + (1 + K) V^2/2]
///
/// @param crest height z [m] above the surface; speed V [m/s] >= 0; density [kg/m^3] > 0; loss K >= 0 up to the crest;
///              air pressure
/// @return      absolute pressure [Pa]; below the vapour pressure the siphon cannot run, and water full of air lets go
/// of
///              it well before
/// @throws      invalid_input
/// @accuracy    that of the loss
/// @source      energy equation: Cengel and Cimbala, ex. 5-7
[[nodiscard]] inline absolute_pressure siphon_crest_pressure(const siphon_crest& crest) {
  constexpr std::string_view here = "tankwright::plumbing::siphon_crest_pressure";
  const double v = crest.speed->value();
  core::check(here, above_surface_limits, crest.above_surface->value());
  core::check(here, siphon_speed_limits, v);
  core::check(here, siphon_density_limits, crest.density->value());
  core::check(here, loss_before_limits, crest.loss_before);
  core::check(here, air_pressure_limits, crest.air.value().value());
  const double lost = standard_gravity.value() * crest.above_surface->value() + 0.5 * (1.0 + crest.loss_before) * v * v;
  return absolute_pressure{pressure::from_value(crest.air.value().value() - crest.density->value() * lost)};
}

/// What limits the height of a siphon.
struct siphon_limit {
  required<velocity> speed;
  required<mass_density> density;
  required<absolute_pressure> vapour_pressure;  ///< of the water
  double loss_before = 0.0;                     ///< [1] sum of K and f L/D up to the crest
  absolute_pressure air = standard_atmosphere;
};

/// Height of the crest above the surface at which the water would boil.
///
///   z = (p_air - p_v)/(rho g) - (1 + K) V^2/2g
///
/// @param limit speed V [m/s] >= 0; density [kg/m^3] > 0; vapour pressure [Pa]; loss K >= 0 up to the crest; air
/// pressure
/// @return      height [m] above the surface; negative when the speed alone is too much
/// @throws      invalid_input
/// @accuracy    an upper bound: dissolved air comes out well below it
/// @source      energy equation: Munson et al., ex. 3.10
[[nodiscard]] inline length highest_siphon_crest(const siphon_limit& limit) {
  constexpr std::string_view here = "tankwright::plumbing::highest_siphon_crest";
  const double v = limit.speed->value(), g = standard_gravity.value();
  core::check(here, siphon_speed_limits, v);
  core::check(here, siphon_density_limits, limit.density->value());
  core::check(here, siphon_vapour_limits, limit.vapour_pressure->value().value());
  core::check(here, loss_before_limits, limit.loss_before);
  core::check(here, air_pressure_limits, limit.air.value().value());
  return length::from_value((limit.air.value().value() - limit.vapour_pressure->value().value()) /
                                (limit.density->value() * g) -
                            (1.0 + limit.loss_before) * v * v / (2.0 * g));
}

/// A surface that a siphon draws down until it draws air.
struct siphon_draw {
  required<area> horizontal_area;  ///< of the water it draws from
  pipe_run run;
  required<length> from;  ///< drop from surface to surface, or to the end of the pipe, at the start
  required<length> to;    ///< the same when the opening draws air
  water::liquid water;
};

/// How long a siphon runs, and how much it brings.
struct siphon_run {
  duration time;
  tankwright::volume volume;
};

inline constexpr limits siphon_from_limits{"from", "m", positive};
inline constexpr limits siphon_to_limits{"to", "m", positive};

/// Time until a siphon draws air. The friction follows the falling head.
///
///   t = integral from H2 to H1 of A/Q(H) dH,   Q of `siphon_flow`
///
/// @param draw   horizontal area A [m^2] > 0; run; drops from H1 >= to H2 [m] > 0; density and viscosity
/// @param policy `extrapolate` to go past Re 1e8 or e/D 0.05
/// @return       time [s] and volume [m^3], at the central losses
/// @throws       invalid_input, out_of_range (names the run by its label)
/// @accuracy     1e-6 against the integral in turbulent flow; that of the losses against a real pipe. A vortex lets air
/// in
///               half a bore to one bore above the opening, so a real siphon brings a little less
/// @source       energy equation; Colebrook 1939
[[nodiscard]] inline siphon_run siphon_until_exposed(const siphon_draw& draw,
                                                     range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::plumbing::siphon_until_exposed";
  const double from = draw.from->value(), to = draw.to->value(), plan = draw.horizontal_area->value();
  core::check_element(here, draw.run.label, horizontal_area_limits, plan);
  core::check_element(here, draw.run.label, siphon_from_limits, from);
  core::check_element(here, draw.run.label, siphon_to_limits, to);
  if (to > from) {
    core::fail<invalid_input>(here, draw.run.label.empty() ? "to" : draw.run.label + ": to", to, "m",
                              "is higher than from, " + core::number_with_unit(from, "m"));
  }
  if (detail::numbers_of(here, draw.run, losses::central, policy).closed) {
    core::refuse_element(here, draw.run.label, "has its valve shut: nothing runs");
  }
  const pipe_run run = detail::with_exit(draw.run, losses::central);
  const double sum = numerics::integral(
      [&](double u) { return 2.0 * u / flow_for_head(run, length::from_value(u * u), draw.water, policy).value(); },
      std::sqrt(to), std::sqrt(from), 8);
  return {duration::from_value(plan * sum), volume::from_value(plan * (from - to))};
}

}  // namespace tankwright::plumbing
