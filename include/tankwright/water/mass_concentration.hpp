// SPDX-License-Identifier: BSL-1.0
/// @file
/// How many grams of salt are in a litre of this water? Not the salinity: 36 g/L is salinity 35 at 25 degC, and
/// "35 g/L" only 34.
#pragma once

#include <tankwright/water/density.hpp>

namespace tankwright::water {

/// Mass of salt per volume of water. Its upper end is above any brine: saturated, of table salt, is 317 g/L.
inline constexpr limits mass_concentration_limits{"mass concentration", "g/L", {0.0, 400.0}};

/// Mass of salt in a volume of seawater.
///
///   c = S_A rho(S_A, t),   S_A = u_PS S_P
///
/// @param s      practical salinity, 0 to 42
/// @param t      temperature [ITS-90], from freezing to 80 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       mass concentration [g/L]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     5e-6 relative for seawater of standard composition
/// @source       Feistel 2008; Millero et al. 2008
[[nodiscard]] inline mass_concentration mass_concentration_from_salinity(
    practical_salinity s, temperature t, range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::mass_concentration_from_salinity";
  core::check(here, practical_salinity_limits, s.value(), policy);
  core::check(here, gibbs_temperature_limits, in_celsius(t), policy);
  detail::check_liquid(here, s.value(), in_celsius(t), policy);
  const double sa = detail::u_ps<double> * s.value();
  return mass_concentration::from_value(1e-3 * sa * kernel::density_teos10(sa, in_celsius(t)));
}

/// Practical salinity from the mass of salt in a volume of seawater.
///
///   u_PS S_P rho(u_PS S_P, t) = c, solved for S_P by a bracketed root
///
/// @param c      mass concentration [g/L]; the salinity must come out at 0 to 42
/// @param t      temperature [ITS-90], from freezing to 80 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       practical salinity
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     there and back to 1e-14 relative
/// @source       Feistel 2008; Millero et al. 2008
[[nodiscard]] inline practical_salinity salinity_from_mass_concentration(
    mass_concentration c, temperature t, range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::salinity_from_mass_concentration";
  const double celsius = in_celsius(t);
  core::check(here, mass_concentration_limits, in_grams_per_litre(c), policy);
  core::check(here, gibbs_temperature_limits, celsius, policy);
  // Water is lighter than 2 kg/L and heavier than 0.5 kg/L whatever its salt: the root lies between these.
  const double grams = in_grams_per_litre(c);
  const double sa = numerics::bracketed_root<double>(
      here, "absolute salinity",
      [&](double guess) { return 1e-3 * guess * kernel::density_teos10(guess, celsius) - grams; }, 0.5 * grams,
      2.0 * grams);
  const practical_salinity s{detail::within_rounding(sa / detail::u_ps<double>)};
  core::check(here, practical_salinity_limits, s.value(), policy);
  detail::check_liquid(here, s.value(), celsius, policy);
  return s;
}

}  // namespace tankwright::water
