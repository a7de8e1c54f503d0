// SPDX-License-Identifier: BSL-1.0
/// @file
/// How thick is the water? Dynamic viscosity of seawater at the surface, by Sharqawy et al. (the default of the
/// library), and by Millero for a second opinion.
#pragma once

#include <cmath>

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/water/density.hpp>
#include <tankwright/water/salinity.hpp>

namespace tankwright::water {

inline constexpr citation sharqawy_2010_viscosity{
    "Sharqawy M.H., Lienhard V J.H., Zubair S.M.", 2010,
    "Thermophysical properties of seawater: a review of existing correlations and data",
    "Desalination and Water Treatment 16:354-380, eqs 22-23; coefficients to full precision from the authors' code",
    standing::secondary};
inline constexpr citation millero_1974{
    "Millero F.J.", 1974, "Seawater as a multicomponent electrolyte solution",
    "The Sea, vol. 5, ed. Goldberg E.D., Wiley, pp. 3-80; pure water after Korson et al. 1969", standing::from_memory};

/// Liquid water exists between its homogeneous nucleation and its critical point; the formula has a pole just below.
inline constexpr limits viscosity_temperature_limits{
    "temperature", "degC", {-40.0, 374.0}, celsius_range(0.0, 180.0), "Sharqawy 2010"};
inline constexpr limits viscosity_salinity_limits{
    "absolute salinity", "g/kg", absolute_salinity_limits.possible, {0.0, 150.0}, "Sharqawy 2010"};
inline constexpr limits viscosity_millero_temperature_limits{
    "temperature", "degC", {-40.0, 120.0}, celsius_range(5.0, 25.0), "Millero 1974"};
inline constexpr limits viscosity_millero_salinity_limits{
    "practical salinity", "", practical_salinity_limits.possible, {0.0, 40.0}, "Millero 1974"};

namespace detail {

/// Viscosity [Pa s] by Sharqawy et al. 2010, eqs 22-23; s in kg/kg, t in degC (ITS-90).
template <class T>
[[nodiscard]] constexpr T viscosity_sharqawy(T s, T t) noexcept {
  const T from_pole = t + T(64.992620050L);
  const T water = T(4.2844324477e-5L) + T(1) / (T(1.5700386464e-1L) * from_pole * from_pole - T(91.296496657L));
  const T a = T(1.5409136040L) + t * (T(1.9981117208e-2L) + t * T(-9.5203865864e-5L));
  const T b = T(7.9739318223L) + t * (T(-7.5614568881e-2L) + t * T(4.7237011074e-4L));
  return water * (T(1) + s * (a + s * b));
}

/// Viscosity [Pa s] by Millero 1974; s on the practical scale, t in degC (IPTS-68), density in kg/m^3.
template <class T>
[[nodiscard]] inline T viscosity_millero(T s, T t, T density) noexcept {
  using std::pow;
  using std::sqrt;
  const T step = t - T(20);
  const T water = T(1.002e-3L) * pow(T(10), (T(-1.1709L) * step - T(0.001827L) * step * step) / (t + T(89.93L)));
  const T chlorinity_per_volume = s / T(1.80655L) * density * T(1e-3L);  // g of Cl per cm^3 times 1000
  const T a = T(1.0675e-4L) + T(5.185e-5L) * t;
  const T b = T(2.591e-3L) + T(3.300e-5L) * t;
  return water * (T(1) + a * sqrt(chlorinity_per_volume) + b * chlorinity_per_volume);
}

}  // namespace detail

/// Dynamic viscosity of seawater at the surface, from absolute salinity (Sharqawy et al. 2010).
///
///   mu = mu_w (1 + A s + B s^2),   mu_w = a0 + 1 / (a1 (t + a2)^2 - a3),   A and B quadratic in t, s in kg/kg
///
/// @param s      absolute salinity S_A [g/kg], 0 to 150
/// @param t      temperature [ITS-90], 0 to 180 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       dynamic viscosity [Pa s]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     1.5 %; the pure water part, against IAPWS R12-08, 0.05 % up to 45 degC and 0.12 % up to 80 degC
/// @source       Sharqawy, Lienhard and Zubair 2010, eqs 22-23
[[nodiscard]] constexpr dynamic_viscosity viscosity(absolute_salinity s, temperature t,
                                                    range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::viscosity";
  core::check(here, viscosity_salinity_limits, in_grams_per_kilogram(s), policy);
  core::check(here, viscosity_temperature_limits, in_celsius(t), policy);
  return dynamic_viscosity::from_value(detail::viscosity_sharqawy(in_grams_per_kilogram(s) * 1e-3, in_celsius(t)));
}

/// Dynamic viscosity of seawater at the surface, from practical salinity (Sharqawy et al. 2010, reference composition).
///
///   mu(S_A, t) with S_A = u_PS S_P
///
/// @param s      practical salinity, 0 to 42
/// @param t      temperature [ITS-90], 0 to 180 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       dynamic viscosity [Pa s]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     as for absolute salinity
/// @source       Sharqawy, Lienhard and Zubair 2010, eqs 22-23; Millero et al. 2008
[[nodiscard]] constexpr dynamic_viscosity viscosity(practical_salinity s, temperature t,
                                                    range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::viscosity";
  core::check(here, practical_salinity_limits, s.value(), policy);
  core::check(here, viscosity_temperature_limits, in_celsius(t), policy);
  return dynamic_viscosity::from_value(
      detail::viscosity_sharqawy(detail::u_ps<double> * s.value() * 1e-3, in_celsius(t)));
}

/// Dynamic viscosity of seawater at the surface by an independent formula (Millero 1974), to compare with the default.
///
///   mu = mu_w (1 + A Cl_v^1/2 + B Cl_v),   Cl_v = rho S / 1.80655 the chlorinity per volume, A and B linear in t;
///   log10(mu_w / mu_20) = (1.1709 (20 - t) - 0.001827 (t - 20)^2) / (t + 89.93)
///
/// @param s      practical salinity, 0 to 40
/// @param t      temperature [ITS-90; turned into the formula's IPTS-68 inside], 5 to 25 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       dynamic viscosity [Pa s]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.5 % below the default at S 40, 25 degC: the two bracket what is known
/// @source       Millero 1974
[[nodiscard]] inline dynamic_viscosity viscosity_millero(practical_salinity s, temperature t,
                                                         range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::viscosity_millero";
  core::check(here, viscosity_millero_salinity_limits, s.value(), policy);
  core::check(here, viscosity_millero_temperature_limits, in_celsius(t), policy);
  const double density = kernel::density_teos10(detail::u_ps<double> * s.value(), in_celsius(t));
  return dynamic_viscosity::from_value(
      detail::viscosity_millero(s.value(), core::t68_from_t90(in_celsius(t)), density));
}

}  // namespace tankwright::water
