// SPDX-License-Identifier: BSL-1.0
/// @file
/// How well does still water conduct heat? Thermal conductivity of seawater at the surface by IAPWS, and by Jamieson
/// and Tudhope as desalination uses it.
#pragma once

#include <cmath>

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/water/density.hpp>
#include <tankwright/water/salinity.hpp>

namespace tankwright::water {

inline constexpr citation iapws_g10_15{"International Association for the Properties of Water and Steam", 2015,
                                       "Guideline on the Thermal Conductivity of Seawater",
                                       "IAPWS G10-15, eqs 1-5 and table 2", standing::secondary};
inline constexpr citation iapws_r15_11{
    "International Association for the Properties of Water and Steam", 2011,
    "Release on the IAPWS Formulation 2011 for the Thermal Conductivity of Ordinary Water Substance",
    "IAPWS R15-11, eqs 15-17 and tables 1-2, without critical enhancement", standing::secondary};
inline constexpr citation jamieson_tudhope_1970{
    "Jamieson D.T., Tudhope J.S.", 1970, "Physical properties of sea water solutions: thermal conductivity",
    "Desalination 8:393-401; as in Sharqawy et al. 2010, eq. 13", standing::secondary};

inline constexpr limits thermal_conductivity_salinity_limits{
    "absolute salinity", "g/kg", absolute_salinity_limits.possible, {0.0, 120.0}, "IAPWS G10-15, which goes to 170"};
inline constexpr limits thermal_conductivity_temperature_limits{
    "temperature", "degC", {-40.0, 110.0}, celsius_range(0.0, 80.0), "IAPWS G10-15 with TEOS-10 density"};
inline constexpr limits jamieson_tudhope_salinity_limits{
    "absolute salinity", "g/kg", absolute_salinity_limits.possible, {0.0, 160.0}, "Jamieson and Tudhope 1970"};
inline constexpr limits jamieson_tudhope_temperature_limits{
    "temperature", "degC", {-40.0, 373.946}, celsius_range(0.0, 180.0), "Jamieson and Tudhope 1970"};

namespace detail {

/// Thermal conductivity of water [W/(m K)], IAPWS R15-11; temperature in K, density in kg/m^3. The critical enhancement
/// is zero for cold liquid water and left out.
template <class T>
[[nodiscard]] inline T thermal_conductivity_iapws(T kelvin, T density) noexcept {
  using std::exp;
  using std::sqrt;
  constexpr T dilute[] = {T(2.443221e-3L), T(1.323095e-2L), T(6.770357e-3L), T(-3.454586e-3L), T(4.096266e-4L)};
  constexpr T finite[5][6] = {
      {T(1.60397357L), T(-0.646013523L), T(0.111443906L), T(0.102997357L), T(-0.0504123634L), T(0.00609859258L)},
      {T(2.33771842L), T(-2.78843778L), T(1.53616167L), T(-0.463045512L), T(0.0832827019L), T(-0.00719201245L)},
      {T(2.19650529L), T(-4.54580785L), T(3.55777244L), T(-1.40944978L), T(0.275418278L), T(-0.0205938816L)},
      {T(-1.21051378L), T(1.60812989L), T(-0.621178141L), T(0.0716373224L), T(0), T(0)},
      {T(-2.7203370L), T(4.57586331L), T(-3.18369245L), T(1.1168348L), T(-0.19268305L), T(0.012913842L)}};
  const T cold = T(647.096L) / kelvin;
  const T rho = density / T(322);
  T sum = T(0);
  for (int k = 4; k >= 0; --k) sum = sum * cold + dilute[k];
  T exponent = T(0);
  for (int i = 4; i >= 0; --i) {
    T inner = T(0);
    for (int j = 5; j >= 0; --j) inner = inner * (rho - T(1)) + finite[i][j];
    exponent = exponent * (cold - T(1)) + inner;
  }
  return T(1e-3L) / sqrt(cold) / sum * exp(rho * exponent);
}

/// What salt adds to it [W/(m K)], IAPWS G10-15; s in g/kg, t in degC, pressure in MPa.
template <class T>
[[nodiscard]] inline T thermal_conductivity_of_salt(T s, T t, T pressure) noexcept {
  using std::exp;
  using std::pow;
  const T a = (T(-7.180891e-5L) + T(1.831971e-7L) * pressure) * exp((T(1.048077e-3L) - T(4.494722e-6L) * pressure) * t);
  const T b = (T(1.463375e-1L) + T(9.208586e-4L) * pressure) * exp((T(-3.086908e-3L) + T(1.798489e-5L) * pressure) * t);
  return a * pow(s, T(1) + b);
}

/// Thermal conductivity [W/(m K)], Jamieson and Tudhope 1970; s in g/kg, temperature in K (IPTS-68).
template <class T>
[[nodiscard]] inline T thermal_conductivity_jamieson_tudhope(T s, T kelvin) noexcept {
  using std::cbrt;
  using std::log10;
  using std::pow;
  const T sp = s / T(1.00472L);
  const T from_critical = T(1) - kelvin / (T(647.3L) + T(0.03L) * sp);
  return T(1e-3L) * pow(T(10), log10(T(240) + T(0.0002L) * sp) +
                                   T(0.434L) * (T(2.3L) - (T(343.5L) + T(0.037L) * sp) / kelvin) * cbrt(from_critical));
}

}  // namespace detail

/// Thermal conductivity of seawater at one atmosphere (IAPWS).
///
///   k = k_w(T, rho) + a S^(1 + b),   k_w by R15-11, a and b exponentials in t by G10-15
///
/// @param s      absolute salinity [g/kg], 0 to 120
/// @param t      temperature [ITS-90], 0 to 80 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       thermal conductivity [W/(m K)]; 0.602 for S_P 35 at 25 degC
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     2 % (from memory); 1e-9 W/(m K) against the guideline at its density
/// @source       IAPWS G10-15; IAPWS R15-11; density of water by TEOS-10
[[nodiscard]] inline thermal_conductivity thermal_conductivity_of(absolute_salinity s, temperature t,
                                                                  range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::thermal_conductivity_of";
  core::check(here, thermal_conductivity_salinity_limits, in_grams_per_kilogram(s), policy);
  core::check(here, thermal_conductivity_temperature_limits, in_celsius(t), policy);
  const double water = detail::thermal_conductivity_iapws(in_kelvins(t), kernel::density_teos10(0.0, in_celsius(t)));
  return thermal_conductivity::from_value(
      water + detail::thermal_conductivity_of_salt(in_grams_per_kilogram(s), in_celsius(t), 0.101325));
}

/// Thermal conductivity of seawater at one atmosphere, from practical salinity (IAPWS, reference composition).
///
///   k(S_A, t) with S_A = u_PS S_P
///
/// @param s      practical salinity, 0 to 42
/// @param t      temperature [ITS-90], 0 to 80 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       thermal conductivity [W/(m K)]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     as for absolute salinity
/// @source       IAPWS G10-15; IAPWS R15-11; Millero et al. 2008
[[nodiscard]] inline thermal_conductivity thermal_conductivity_of(practical_salinity s, temperature t,
                                                                  range_policy policy = range_policy::published) {
  core::check("tankwright::water::thermal_conductivity_of", practical_salinity_limits, s.value(), policy);
  return thermal_conductivity_of(absolute_from_practical(s, policy), t, policy);
}

/// Thermal conductivity of seawater and brine, as desalination uses it (Jamieson and Tudhope 1970).
///
///   log10 k = log10(240 + 0.0002 S) + 0.434 (2.3 - (343.5 + 0.037 S)/T) (1 - T/(647.3 + 0.03 S))^1/3,   k in mW/(m K)
///
/// @param s      absolute salinity [g/kg], 0 to 160
/// @param t      temperature [ITS-90; turned into the formula's IPTS-68 inside], 0 to 180 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       thermal conductivity [W/(m K)]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     3 %; 1.1 % above IAPWS at S 35, 25 degC, 3.3 % at 0 degC
/// @source       Jamieson and Tudhope 1970, as in Sharqawy et al. 2010, eq. 13
[[nodiscard]] inline thermal_conductivity thermal_conductivity_jamieson_tudhope(
    absolute_salinity s, temperature t, range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::thermal_conductivity_jamieson_tudhope";
  core::check(here, jamieson_tudhope_salinity_limits, in_grams_per_kilogram(s), policy);
  core::check(here, jamieson_tudhope_temperature_limits, in_celsius(t), policy);
  return thermal_conductivity::from_value(detail::thermal_conductivity_jamieson_tudhope(
      in_grams_per_kilogram(s), core::t68_from_t90(in_celsius(t)) + 273.15));
}

}  // namespace tankwright::water
