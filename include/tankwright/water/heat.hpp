// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much heat warms the water, and how much does a kilogram that evaporates take along? Specific heat and latent
/// heat by TEOS-10 (the default of the library), with EOS-80, Sharqawy et al. and pure water by name.
#pragma once

#include <cmath>

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/water/density.hpp>
#include <tankwright/water/detail/teos10_energy.hpp>
#include <tankwright/water/kernel.hpp>
#include <tankwright/water/salinity.hpp>

namespace tankwright::water {

inline constexpr citation feistel_2008_heat{
    "Feistel R.", 2008, "A Gibbs function for seawater thermodynamics for -6 to 80 degC and salinity up to 120 g/kg",
    "Deep-Sea Research I 55:1639-1671; second temperature derivative at p = 0", standing::secondary};
inline constexpr citation unesco_44_heat{
    "Fofonoff N.P., Millard R.C.", 1983, "Algorithms for computation of fundamental properties of seawater",
    "UNESCO Technical Papers in Marine Science 44, eqs 26-28, after Millero et al. 1973"};
inline constexpr citation sharqawy_2010_heat{
    "Sharqawy M.H., Lienhard V J.H., Zubair S.M.", 2010,
    "Thermophysical properties of seawater: a review of existing correlations and data",
    "Desalination and Water Treatment 16:354-380, eqs 9 (after Jamieson et al. 1969) and 55", standing::secondary};
inline constexpr citation teos10_evaporation{
    "IOC, SCOR and IAPSO", 2010, "The international thermodynamic equation of seawater - 2010",
    "Manuals and Guides 56, eq. 3.39.7; the polynomial that the TEOS-10 toolbox fits to it", standing::secondary};

inline constexpr limits specific_heat_eos80_salinity_limits{
    "practical salinity", "", practical_salinity_limits.possible, {0.0, 40.0}, "UNESCO 1983"};
inline constexpr limits specific_heat_eos80_temperature_limits{"temperature", "degC", above_absolute_zero_celsius,
                                                               celsius_range(0.0, 35.0), "UNESCO 1983"};
inline constexpr limits specific_heat_sharqawy_salinity_limits{
    "absolute salinity", "g/kg", absolute_salinity_limits.possible, {0.0, 180.0}, "Sharqawy 2010"};
inline constexpr limits specific_heat_sharqawy_temperature_limits{"temperature", "degC", above_absolute_zero_celsius,
                                                                  celsius_range(0.0, 180.0), "Sharqawy 2010"};
inline constexpr limits latent_heat_salinity_limits{
    "practical salinity", "", practical_salinity_limits.possible, {0.0, 41.8}, "TEOS-10 toolbox"};
inline constexpr limits latent_heat_temperature_limits{"temperature", "degC", above_absolute_zero_celsius,
                                                       celsius_range(0.0, 40.0), "TEOS-10 toolbox"};
inline constexpr limits latent_heat_of_water_temperature_limits{"temperature", "degC", above_absolute_zero_celsius,
                                                                celsius_range(0.0, 200.0), "Sharqawy 2010"};

namespace detail {

/// Specific heat [J/(kg K)], UNESCO 1983, eqs 26-28 at p = 0; s on the practical scale, t in degC (IPTS-68).
template <class T>
[[nodiscard]] inline T specific_heat_eos80(T s, T t) noexcept {
  using std::sqrt;
  const T a = T(-7.643575L) + t * (T(0.1072763L) + t * T(-1.38385e-3L));
  const T b = T(0.1770383L) + t * (T(-4.07718e-3L) + t * T(5.148e-5L));
  const T fresh = T(4217.4L) + t * (T(-3.720283L) + t * (T(0.1412855L) + t * (T(-2.654387e-3L) + t * T(2.093236e-5L))));
  return fresh + s * (a + b * sqrt(s));
}

/// Specific heat [J/(kg K)], Sharqawy et al. 2010, eq. 9; s in g/kg, temperature in K (IPTS-68).
template <class T>
[[nodiscard]] constexpr T specific_heat_sharqawy(T s, T kelvin) noexcept {
  const T a = T(5.328L) + s * (T(-9.76e-2L) + s * T(4.04e-4L));
  const T b = T(-6.913e-3L) + s * (T(7.351e-4L) + s * T(-3.15e-6L));
  const T c = T(9.6e-6L) + s * (T(-1.927e-6L) + s * T(8.23e-9L));
  const T d = T(2.5e-9L) + s * (T(1.666e-9L) + s * T(-7.125e-12L));
  return T(1000) * (a + kelvin * (b + kelvin * (c + kelvin * d)));
}

/// Latent heat [J/kg of vapour] of TEOS-10: all terms up to the sixth degree in x = sqrt(sfac S_A) and in conservative
/// temperature over 40 degC. Row i belongs to x^i.
template <class T>
[[nodiscard]] constexpr T latent_heat_teos10(T x, T y) noexcept {
  constexpr T x0[] = {T(2.499065844825125e6L),  T(-9.096800915831875e4L), T(1.894281502222415e1L),
                      T(-1.207006482532330e3L), T(5.731307337366114e2L),  T(-3.233571307223379e2L),
                      T(1.021046205356775e2L)};
  constexpr T x1[] = {T(-1.544590633515099e-1L), T(4.589984751248335e1L), T(-1.104989199195898e2L),
                      T(1.186568375570869e1L),   T(8.460780175632090e1L), T(-2.389853928747630e1L)};
  constexpr T x2[] = {T(1.665513670736000e2L), T(-6.631757848479068e3L), T(2.519335841663499e3L),
                      T(-1.541083032068263e3L), T(1.797443329095446e2L)};
  constexpr T x3[] = {T(1.192559661490269e3L), T(7.437431482069087e2L), T(-6.399956483223386e2L),
                      T(7.510134932437941e2L)};
  constexpr T x4[] = {T(-3.148710097513822e3L), T(1.062383995581363e3L), T(-8.062279018001309e2L)};
  constexpr T x5[] = {T(1.213387273240204e3L), T(4.351585544019463e1L)};
  constexpr T x6[] = {T(-2.031538422351553e2L)};
  const auto at = [y](const auto& c) { return curve_of(c, y).value; };
  return at(x0) + x * (at(x1) + x * (at(x2) + x * (at(x3) + x * (at(x4) + x * (at(x5) + x * at(x6))))));
}

}  // namespace detail

/// Specific heat of seawater at constant pressure, at the surface (TEOS-10).
///
///   c_p = -T d2g/dT2,   g the Gibbs energy of seawater
///
/// @param s      practical salinity, 0 to 42
/// @param t      temperature [ITS-90], -6 to 80 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       specific heat [J/(kg K)]; 3999 at S 35 and 25 degC, 4 % below fresh water
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.5 J/(kg K) (from memory); 1e-12 against the TEOS-10 toolbox
/// @source       Feistel 2003 and 2008
[[nodiscard]] inline specific_heat_capacity specific_heat(practical_salinity s, temperature t,
                                                          range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::specific_heat";
  core::check(here, practical_salinity_limits, s.value(), policy);
  core::check(here, gibbs_temperature_limits, in_celsius(t), policy);
  const double x = std::sqrt(detail::teos10_sfac<double> * detail::u_ps<double> * s.value());
  return specific_heat_capacity::from_value(detail::teos10_specific_heat(x, in_celsius(t) / 40.0));
}

/// Specific heat of seawater at the surface by EOS-80, to reproduce old work.
///
///   c_p = c_p(0, t) + A S + B S^1.5,   A, B quadratic and c_p(0, t) quartic in t
///
/// @param s      practical salinity, 0 to 40
/// @param t      temperature [ITS-90; turned into the formula's IPTS-68 inside], 0 to 35 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       specific heat [J/(kg K)]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.5 J/(kg K) (standard deviation of the fit)
/// @source       Fofonoff and Millard 1983, eqs 26-28
[[nodiscard]] inline specific_heat_capacity specific_heat_eos80(practical_salinity s, temperature t,
                                                                range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::specific_heat_eos80";
  core::check(here, specific_heat_eos80_salinity_limits, s.value(), policy);
  core::check(here, specific_heat_eos80_temperature_limits, in_celsius(t), policy);
  return specific_heat_capacity::from_value(detail::specific_heat_eos80(s.value(), core::t68_from_t90(in_celsius(t))));
}

/// Specific heat of seawater and brine, as desalination uses it (Sharqawy et al. 2010).
///
///   c_p = A + B T + C T^2 + D T^3,   A to D quadratic in S
///
/// @param s      absolute salinity [g/kg], 0 to 180
/// @param t      temperature [ITS-90; turned into the formula's IPTS-68 inside], 0 to 180 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       specific heat [J/(kg K)]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.28 %
/// @source       Sharqawy, Lienhard and Zubair 2010, eq. 9
[[nodiscard]] constexpr specific_heat_capacity specific_heat_sharqawy(absolute_salinity s, temperature t,
                                                                      range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::specific_heat_sharqawy";
  core::check(here, specific_heat_sharqawy_salinity_limits, in_grams_per_kilogram(s), policy);
  core::check(here, specific_heat_sharqawy_temperature_limits, in_celsius(t), policy);
  return specific_heat_capacity::from_value(
      detail::specific_heat_sharqawy(in_grams_per_kilogram(s), core::t68_from_t90(in_celsius(t)) + 273.15));
}

/// Heat that each kilogram of vapour takes from the seawater it leaves, into air at one atmosphere (TEOS-10).
///
///   L = polynomial of degree 6 in (S_A / (40 u_PS))^1/2 and in conservative temperature / 40 degC
///
/// @param s      practical salinity, 0 to 41.8
/// @param t      temperature [ITS-90], 0 to 40 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       latent heat [J per kg of vapour]; salt hardly changes it
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.6 J/kg of the fit; 0.1 % below pure water at its own pressure, because the vapour enters air
/// @source       IOC, SCOR and IAPSO 2010, eq. 3.39.7, as fitted in the TEOS-10 toolbox
[[nodiscard]] inline specific_energy latent_heat(practical_salinity s, temperature t,
                                                 range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::latent_heat";
  core::check(here, latent_heat_salinity_limits, s.value(), policy);
  core::check(here, latent_heat_temperature_limits, in_celsius(t), policy);
  const double x = std::sqrt(detail::teos10_sfac<double> * detail::u_ps<double> * s.value());
  const double conservative = detail::teos10_enthalpy(x, in_celsius(t) / 40.0) / 3991.86795711963;
  return specific_energy::from_value(detail::latent_heat_teos10(x, conservative / 40.0));
}

/// Heat that evaporates a kilogram of pure water at its own vapour pressure, without air.
///
///   L = 2 500 899 - 2369.18 t + 0.26776 t^2 - 8.1028e-3 t^3 - 2.0799e-5 t^4 J/kg
///
/// @param t      temperature [ITS-90], 0 to 200 degC
/// @param policy `extrapolate` to go past this range
/// @return       latent heat [J/kg]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.01 % against IAPWS-95 up to 200 degC
/// @source       Sharqawy, Lienhard and Zubair 2010, eq. 55
[[nodiscard]] constexpr specific_energy latent_heat_of_water(temperature t,
                                                             range_policy policy = range_policy::published) {
  core::check("tankwright::water::latent_heat_of_water", latent_heat_of_water_temperature_limits, in_celsius(t),
              policy);
  return specific_energy::from_value(kernel::latent_heat_of_water(in_celsius(t)));
}

}  // namespace tankwright::water
