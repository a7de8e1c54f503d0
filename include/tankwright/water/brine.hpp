// SPDX-License-Identifier: BSL-1.0
/// @file
/// What does a solution of pure table salt weigh? A standard for hydrometers that anybody can make with a scale: so
/// much dried sodium chloride in so much purified water is as dense as a known seawater.
#pragma once

#include <cmath>
#include <tankwright/core/estimate.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/water/density.hpp>

namespace tankwright::water {

inline constexpr citation brine_table_1974{"Poradnik fizykochemiczny", 1974, "Handbook of physical chemistry",
                                           "WNT Warsaw, density of sodium chloride solutions", standing::secondary};

inline constexpr limits brine_share_limits{"salt in the solution", "", {0.0, 0.26}, {0.0, 0.06}, "fitted range"};
inline constexpr limits brine_temperature_limits{"temperature", "degC", celsius_range(-2.0, 100.0),
                                                 celsius_range(10.0, 30.0), "fitted range"};
inline constexpr limits standard_salt_limits{"salt", "kg", {0.0, 1e6}};
inline constexpr limits standard_water_limits{"water", "kg", {1e-6, 1e6}};

namespace kernel {

/// How much denser than pure water a solution of sodium chloride is [kg/m^3]: w its part of the mass, t [degC].
template <class T>
[[nodiscard]] constexpr T brine_over_water(T w, T t) noexcept {
  const T tau = t - T(20);
  return T(100) * w * (T(7.087L) - T(0.0195L) * tau + T(0.0004L) * tau * tau + T(1.63L) * w);
}

}  // namespace kernel

/// Salt and water of a standard, as weighed.
struct salt_standard {
  required<mass> salt;   ///< sodium chloride, pure and dried
  required<mass> water;  ///< purified
};

/// Density of a solution of sodium chloride.
///
///   rho = rho_w(t) + 100 w (7.087 - 0.0195 (t - 20) + 0.0004 (t - 20)^2 + 1.63 w),   w = salt/(salt + water)
///
/// @param made   salt 0 to 1000 t, water 1 mg to 1000 t; the salt 0 to 6 % of both
/// @param t      temperature, 10 to 30 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       density [kg/m^3]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.1 kg/m^3 against the tables, 0.1 in salinity; table salt with iodide and anti-caking 1 % less
/// @source       own fit to tables of 10 to 25 degC (Poradnik fizykochemiczny 1974)
[[nodiscard]] inline mass_density brine_density(const salt_standard& made, temperature t,
                                                range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::brine_density";
  core::check(here, standard_salt_limits, made.salt->value());
  core::check(here, standard_water_limits, made.water->value());
  const double w = made.salt->value() / (made.salt->value() + made.water->value()), celsius = in_celsius(t);
  core::check(here, brine_share_limits, w, policy);
  core::check(here, brine_temperature_limits, celsius, policy);
  return density(practical_salinity{0.0}, t, range_policy::extrapolate) +
         mass_density::from_value(kernel::brine_over_water(w, celsius));
}

/// Sodium chloride for a kilogram of purified water, so that the solution is as dense as a seawater.
///
///   salt/(1 kg) = w/(1 - w) with rho_brine(w, t) = rho_sea(S, t)
///
/// @param s      practical salinity of that seawater, 0 to 42
/// @param t      temperature, 10 to 30 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       mass of salt for each kilogram of water, as a part of it
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     as `brine_density`; for hydrometers only, since light and current see another salt
/// @source       as `brine_density`, and Feistel 2008
[[nodiscard]] inline proportion salt_for_standard(practical_salinity s, temperature t,
                                                  range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::salt_for_standard";
  const double celsius = in_celsius(t);
  core::check(here, brine_temperature_limits, celsius, policy);
  const double fresh = density(practical_salinity{0.0}, t, range_policy::extrapolate).value();
  const double over = density(s, t, policy).value() - fresh;
  // 163 w^2 + 100 a w = over
  const double a = kernel::brine_over_water(1.0, celsius) - 163.0;
  const double w = 2.0 * over / (a + std::sqrt(a * a + 4.0 * 163.0 * over));
  return fraction(w / (1.0 - w));
}

}  // namespace tankwright::water
