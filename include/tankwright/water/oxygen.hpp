// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much oxygen does the water hold when it is in balance with the air? Garcia and Gordon by default, Benson and
/// Krause and Weiss by name.
#pragma once

#include <cmath>

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/water/density.hpp>
#include <tankwright/water/salinity.hpp>
#include <tankwright/water/vapour.hpp>

namespace tankwright::water {

inline constexpr citation garcia_gordon_1992{
    "Garcia H.E., Gordon L.I.", 1992, "Oxygen solubility in seawater: better fitting equations",
    "Limnol. Oceanogr. 37:1307-1312, eq. 8 and table 1, Benson and Krause column, in umol/kg; erratum 38:656 (1993)",
    standing::secondary};
inline constexpr citation benson_krause_1984{
    "Benson B.B., Krause D.", 1984,
    "The concentration and isotopic fractionation of oxygen dissolved in freshwater and seawater in equilibrium with "
    "the atmosphere",
    "Limnol. Oceanogr. 29:620-632, eqs 24 and 32", standing::secondary};
inline constexpr citation weiss_1970{"Weiss R.F.", 1970,
                                     "The solubility of nitrogen, oxygen and argon in water and seawater",
                                     "Deep-Sea Research 17:721-735, eq. 4", standing::secondary};

inline constexpr limits garcia_gordon_salinity_limits{
    "practical salinity", "", practical_salinity_limits.possible, {0.0, 42.0}, "Garcia and Gordon 1992"};
/// The formula has a pole at 298.15 degC.
inline constexpr limits garcia_gordon_temperature_limits{
    "temperature", "degC", {-100.0, 298.0}, celsius_range(-2.0, 40.0), "Garcia and Gordon 1992"};
inline constexpr limits benson_krause_salinity_limits{
    "practical salinity", "", practical_salinity_limits.possible, {0.0, 40.0}, "Benson and Krause 1984"};
inline constexpr limits benson_krause_temperature_limits{"temperature", "degC", above_absolute_zero_celsius,
                                                         celsius_range(0.0, 40.0), "Benson and Krause 1984"};
inline constexpr limits oxygen_pressure_limits{
    "air pressure", "Pa", positive, {50e3, 115e3}, "Benson and Krause 1984 (from memory)"};
inline constexpr limits weiss_salinity_limits{
    "practical salinity", "", practical_salinity_limits.possible, {0.0, 40.0}, "Weiss 1970"};
inline constexpr limits weiss_temperature_limits{
    "temperature", "degC", {-100.0, 1e3}, celsius_range(-2.0, 40.0), "Weiss 1970"};

/// Molar mass of O2 [kg/mol], and the volume of a mole of the real gas at 0 degC and 1 atm [m^3/mol].
inline constexpr double oxygen_molar_mass = 31.9988e-3;
inline constexpr double oxygen_molar_volume = 22.3916e-3;

namespace detail {

/// Oxygen [umol/kg] at saturation, Garcia and Gordon 1992; t in degC (IPTS-68).
template <class T>
[[nodiscard]] inline T oxygen_garcia_gordon(T s, T t) noexcept {
  using std::exp;
  using std::log;
  const T ts = log((T(298.15L) - t) / (T(273.15L) + t));
  return exp(T(5.80871L) +
             ts * (T(3.20291L) + ts * (T(4.17887L) + ts * (T(5.10006L) + ts * (T(-9.86643e-2L) + ts * T(3.80369L))))) +
             s * (T(-7.01577e-3L) + ts * (T(-7.70028e-3L) + ts * (T(-1.13864e-2L) + ts * T(-9.51519e-3L))) +
                  s * T(-2.75915e-7L)));
}

/// Oxygen [mg/L] at saturation, Benson and Krause 1984, eq. 32; temperature in K (IPTS-68).
template <class T>
[[nodiscard]] inline T oxygen_benson_krause(T s, T kelvin) noexcept {
  using std::exp;
  const T r = T(1) / kelvin;
  return exp(T(-139.34411L) +
             r * (T(1.575701e5L) + r * (T(-6.642308e7L) + r * (T(1.243800e10L) + r * T(-8.621949e11L)))) -
             s * (T(1.7674e-2L) + r * (T(-1.0754e1L) + r * T(2.1407e3L))));
}

/// Oxygen [mL at 0 degC and 1 atm per litre] at saturation, Weiss 1970, eq. 4; temperature in K (IPTS-68).
template <class T>
[[nodiscard]] inline T oxygen_weiss(T s, T kelvin) noexcept {
  using std::exp;
  using std::log;
  const T h = kelvin / T(100);
  return exp(T(-173.4292L) + T(249.6339L) / h + T(143.3483L) * log(h) + T(-21.8492L) * h +
             s * (T(-0.033096L) + h * (T(0.014259L) + h * T(-0.0017000L))));
}

/// What another air pressure makes of the saturation, Benson and Krause 1984, eq. 24; t in degC, pressures in atm.
template <class T>
[[nodiscard]] constexpr T oxygen_pressure_factor(T p, T vapour, T t) noexcept {
  const T theta = T(0.000975L) + t * (T(-1.426e-5L) + t * T(6.436e-8L));
  return (p - vapour) * (T(1) - theta * p) / ((T(1) - vapour) * (T(1) - theta));
}

/// The same with checks; `t` in degC (ITS-90).
[[nodiscard]] inline double checked_oxygen_pressure_factor(std::string_view function, practical_salinity s, double t,
                                                           absolute_pressure air, range_policy policy) {
  core::check(function, oxygen_pressure_limits, air.value().value(), policy);
  const double activity = water_activity_teos10(u_ps<double> * s.value(), t);
  const double vapour = activity * kernel::saturation_hyland_wexler(t + 273.15);
  if (!(air.value().value() > vapour)) {
    core::fail<invalid_input>(
        function, oxygen_pressure_limits.argument, air.value().value(), "Pa",
        "is not above the vapour pressure of the water, " + core::number_text(vapour) + " Pa: it would boil");
  }
  const double atm = standard_atmosphere.value().value();
  return oxygen_pressure_factor(air.value().value() / atm, vapour / atm, t);
}

}  // namespace detail

/// Oxygen in water in balance with moist air at one atmosphere (Garcia and Gordon 1992).
///
///   ln C = A0 + A1 Ts + ... + A5 Ts^5 + S (B0 + ... + B3 Ts^3) + C0 S^2,   Ts = ln((298.15 - t) / (273.15 + t))
///
/// @param s      practical salinity, 0 to 42
/// @param t      temperature [ITS-90; turned into the formula's IPTS-68 inside], -2 to 40 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       amount of O2 per mass of water [mol/kg]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.3 % (from memory); 1e-12 against the TEOS-10 toolbox
/// @source       Garcia and Gordon 1992, eq. 8, Benson and Krause column
[[nodiscard]] inline amount_content oxygen_saturation(practical_salinity s, temperature t,
                                                      range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::oxygen_saturation";
  core::check(here, garcia_gordon_salinity_limits, s.value(), policy);
  core::check(here, garcia_gordon_temperature_limits, in_celsius(t), policy);
  return amount_content::from_value(1e-6 * detail::oxygen_garcia_gordon(s.value(), core::t68_from_t90(in_celsius(t))));
}

/// Oxygen in water in balance with moist air at the given pressure, as a meter shows it.
///
///   c = M(O2) rho C F(p),   F = (p - p_v)(1 - theta p) / ((1 - p_v)(1 - theta)), pressures in atm
///
/// @param s      practical salinity, 0 to 42
/// @param t      temperature [ITS-90], -2 to 40 degC
/// @param p      air pressure [Pa], 50 000 to 115 000
/// @param policy `extrapolate` to go past these ranges; the pressure must stay above the vapour pressure
/// @return       mass of O2 per volume [kg/m^3]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.3 % (from memory); 0.003 mg/L against Benson and Krause
/// @source       Garcia and Gordon 1992; Benson and Krause 1984, eq. 24; density and water activity by TEOS-10
[[nodiscard]] inline mass_concentration oxygen_saturation_concentration(practical_salinity s, temperature t,
                                                                        absolute_pressure p = standard_atmosphere,
                                                                        range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::oxygen_saturation_concentration";
  core::check(here, garcia_gordon_salinity_limits, s.value(), policy);
  core::check(here, garcia_gordon_temperature_limits, in_celsius(t), policy);
  const double content = oxygen_saturation(s, t, policy).value();
  const double factor = detail::checked_oxygen_pressure_factor(here, s, in_celsius(t), p, policy);
  const double rho = kernel::density_teos10(detail::u_ps<double> * s.value(), in_celsius(t));
  return mass_concentration::from_value(oxygen_molar_mass * content * factor * rho);
}

/// Oxygen in water in balance with moist air by the formula of the standard methods of water analysis.
///
///   ln c = -139.34411 + 1.575701e5/T - ... - S (1.7674e-2 - 10.754/T + 2140.7/T^2),   times F(p)
///
/// @param s      practical salinity, 0 to 40
/// @param t      temperature [ITS-90; turned into the formula's IPTS-68 inside], 0 to 40 degC
/// @param p      air pressure [Pa], 50 000 to 115 000
/// @param policy `extrapolate` to go past these ranges; the pressure must stay above the vapour pressure
/// @return       mass of O2 per volume [kg/m^3]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.3 % (from memory)
/// @source       Benson and Krause 1984, eqs 24 and 32
[[nodiscard]] inline mass_concentration oxygen_saturation_benson_krause(practical_salinity s, temperature t,
                                                                        absolute_pressure p = standard_atmosphere,
                                                                        range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::oxygen_saturation_benson_krause";
  core::check(here, benson_krause_salinity_limits, s.value(), policy);
  core::check(here, benson_krause_temperature_limits, in_celsius(t), policy);
  const double factor = detail::checked_oxygen_pressure_factor(here, s, in_celsius(t), p, policy);
  const double kelvin68 = core::t68_from_t90(in_celsius(t)) + 273.15;
  return mass_concentration::from_value(1e-3 * factor * detail::oxygen_benson_krause(s.value(), kelvin68));
}

/// Oxygen in water in balance with moist air at one atmosphere by Weiss, to reproduce old data.
///
///   ln C = A1 + A2 (100/T) + A3 ln(T/100) + A4 (T/100) + S (B1 + B2 (T/100) + B3 (T/100)^2),   C in mL/L
///
/// @param s      practical salinity, 0 to 40
/// @param t      temperature [ITS-90; turned into the formula's IPTS-68 inside], -2 to 40 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       amount of O2 per volume of water [mol/m^3], at 22.3916 L/mol
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.3 % below Benson and Krause at S 35, 25 degC
/// @source       Weiss 1970, eq. 4
[[nodiscard]] inline amount_concentration oxygen_saturation_weiss(practical_salinity s, temperature t,
                                                                  range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::oxygen_saturation_weiss";
  core::check(here, weiss_salinity_limits, s.value(), policy);
  core::check(here, weiss_temperature_limits, in_celsius(t), policy);
  const double kelvin68 = core::t68_from_t90(in_celsius(t)) + 273.15;
  return amount_concentration::from_value(1e-3 / oxygen_molar_volume * detail::oxygen_weiss(s.value(), kelvin68));
}

}  // namespace tankwright::water
