// SPDX-License-Identifier: BSL-1.0
/// @file
/// What flows in the pipes? Density and viscosity of the water in one value: all that moving it needs.
#pragma once

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/water/density.hpp>
#include <tankwright/water/viscosity.hpp>

namespace tankwright::water {

/// What flows: density and dynamic viscosity at the pipe's temperature.
struct liquid {
  required<mass_density> density;
  required<dynamic_viscosity> viscosity;
};

inline constexpr limits liquid_density_limits{"density of the liquid", "kg/m3", {1.0, 3e4}};
inline constexpr limits liquid_viscosity_limits{"viscosity of the liquid", "Pa s", {1e-8, 1e6}};

namespace kernel {

/// Refuse what cannot flow, whether or not a formula needs both numbers.
constexpr void check_flowing(std::string_view function, const liquid& water) {
  core::check(function, liquid_density_limits, water.density->value());
  core::check(function, liquid_viscosity_limits, water.viscosity->value());
}

}  // namespace kernel

/// Seawater as it flows: TEOS-10 density and Sharqawy viscosity, at the surface.
///
///   { rho(S, t), mu(S, t) }
///
/// @param s      practical salinity, 0 to 42
/// @param t      temperature [ITS-90], 0 to 80 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       density [kg/m^3] and dynamic viscosity [Pa s]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     density 0.004 kg/m^3, viscosity 1.5 %
/// @source       Feistel 2008; Sharqawy, Lienhard and Zubair 2010
[[nodiscard]] inline liquid seawater(practical_salinity s, temperature t,
                                     range_policy policy = range_policy::published) {
  return {.density = density(s, t, policy), .viscosity = viscosity(s, t, policy)};
}

/// Fresh water as it flows: seawater without salt.
///
///   { rho(0, t), mu(0, t) }
///
/// @param t      temperature [ITS-90], 0 to 80 degC
/// @param policy `extrapolate` to go past this range
/// @return       density [kg/m^3] and dynamic viscosity [Pa s]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     against IAPWS-95 and R12-08: density 1e-4 kg/m^3 up to 40 degC, viscosity 0.05 % up to 45 degC
/// @source       Feistel 2003 (water part of TEOS-10); Sharqawy, Lienhard and Zubair 2010, eq. 23
[[nodiscard]] inline liquid fresh_water(temperature t, range_policy policy = range_policy::published) {
  return seawater(practical_salinity{0.0}, t, policy);
}

/// Kinematic viscosity of a liquid, as in the Reynolds number.
///
///   nu = mu / rho
///
/// @param water  density 1 to 3e4 kg/m^3; dynamic viscosity 1e-8 to 1e6 Pa s
/// @return       kinematic viscosity [m^2/s]
/// @throws       invalid_input
/// @accuracy     that of the viscosity
/// @source       definition
[[nodiscard]] constexpr kinematic_viscosity kinematic_viscosity_of(const liquid& water) {
  constexpr std::string_view here = "tankwright::water::kinematic_viscosity_of";
  kernel::check_flowing(here, water);
  return kinematic_viscosity::from_value(water.viscosity->value() / water.density->value());
}

}  // namespace tankwright::water
