// SPDX-License-Identifier: BSL-1.0
/// @file
/// How hard does the water push into the air? Vapour pressure over fresh water and over seawater, and the water
/// activity that is their ratio. What evaporates, condenses and dissolves at the surface depends on it.
///
/// A vapour pressure is a partial pressure, a plain `pressure`: one multiplies and subtracts it.
#pragma once

#include <cmath>

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/water/density.hpp>
#include <tankwright/water/detail/teos10_energy.hpp>
#include <tankwright/water/kernel.hpp>
#include <tankwright/water/salinity.hpp>

namespace tankwright::water {

inline constexpr citation iapws_r7_97{"International Association for the Properties of Water and Steam", 2012,
                                      "Revised Release on the IAPWS Industrial Formulation 1997",
                                      "IAPWS R7-97(2012), eq. 30", standing::secondary};
inline constexpr citation dickson_2007{
    "Dickson A.G., Sabine C.L., Christian J.R.", 2007, "Guide to Best Practices for Ocean CO2 Measurements",
    "PICES Special Publication 3, ch. 5, sec. 3; osmotic coefficient after Millero 1974", standing::from_memory};
inline constexpr citation witting_1908{
    "Witting R.", 1908, "Untersuchungen zur Kenntnis der Wasserbewegungen und der Wasserumsetzung in den Meeren",
    "Finnl. hydrogr.-biol. Untersuch. 2:173; as used by Green and Carritt 1967, J. Mar. Res. 25:140",
    standing::from_memory};
inline constexpr citation weiss_price_1980{"Weiss R.F., Price B.A.", 1980,
                                           "Nitrous oxide solubility in water and seawater",
                                           "Marine Chemistry 8:347-359, eq. 10", standing::from_memory};
inline constexpr citation nayar_2016{
    "Nayar K.G., Sharqawy M.H., Banchik L.D., Lienhard V J.H.", 2016,
    "Thermophysical properties of seawater: a review and new correlations that include pressure dependence",
    "Desalination 390:1-24, eqs 5-6", standing::secondary};
inline constexpr citation sharqawy_2010_osmotic{
    "Sharqawy M.H., Lienhard V J.H., Zubair S.M.", 2010,
    "Thermophysical properties of seawater: a review of existing correlations and data",
    "Desalination and Water Treatment 16:354-380, eq. 49", standing::secondary};

inline constexpr limits hyland_wexler_temperature_limits{"temperature", "degC", above_absolute_zero_celsius,
                                                         celsius_range(0.0, 200.0), "Hyland and Wexler 1983"};
/// Above the critical point, 373.946 degC, there is no saturation.
inline constexpr limits iapws_saturation_temperature_limits{
    "temperature", "degC", {-273.15, 373.946 + 1e-9, edge::open}, celsius_range(0.0, 373.946), "IAPWS R7-97"};
inline constexpr limits witting_salinity_limits{
    "practical salinity", "", practical_salinity_limits.possible, {0.0, 40.0}, "Witting 1908"};
inline constexpr limits weiss_price_salinity_limits{
    "practical salinity", "", practical_salinity_limits.possible, {0.0, 40.0}, "Weiss and Price 1980"};
inline constexpr limits weiss_price_temperature_limits{"temperature", "degC", above_absolute_zero_celsius,
                                                       celsius_range(0.0, 40.0), "Weiss and Price 1980"};
inline constexpr limits nayar_salinity_limits{
    "absolute salinity", "g/kg", absolute_salinity_limits.possible, {0.0, 160.0}, "Nayar et al. 2016"};
inline constexpr limits nayar_temperature_limits{"temperature", "degC", above_absolute_zero_celsius,
                                                 celsius_range(0.0, 180.0), "Nayar et al. 2016"};
inline constexpr limits osmotic_salinity_limits{
    "absolute salinity", "g/kg", absolute_salinity_limits.possible, {10.0, 120.0}, "Sharqawy 2010"};
inline constexpr limits osmotic_temperature_limits{"temperature", "degC", above_absolute_zero_celsius,
                                                   celsius_range(0.0, 200.0), "Sharqawy 2010"};

namespace detail {

/// Specific gas constant of water [J/(kg K)] of TEOS-10.
template <class T>
inline constexpr T gas_constant_of_water = T(8.314472L) / T(0.018015268L);

/// Saturation pressure [Pa], IAPWS R7-97 region 4, eq. 30; temperature in K.
template <class T>
[[nodiscard]] inline T saturation_iapws(T kelvin) noexcept {
  using std::sqrt;
  const T theta = kelvin + T(-0.23855557567849L) / (kelvin - T(0.65017534844798e3L));
  const T a = (theta + T(0.11670521452767e4L)) * theta + T(-0.72421316703206e6L);
  const T b = (T(-0.17073846940092e2L) * theta + T(0.12020824702470e5L)) * theta + T(-0.32325550322333e7L);
  const T c = (T(0.14915108613530e2L) * theta + T(-0.48232657361591e4L)) * theta + T(0.40511340542057e6L);
  const T root = T(2) * c / (-b + sqrt(b * b - T(4) * a * c));
  return root * root * root * root * T(1e6L);
}

/// Water activity by Dickson et al. 2007; s on the practical scale. m is half the sum of the molalities.
template <class T>
[[nodiscard]] inline T water_activity_dickson(T s) noexcept {
  using std::exp;
  const T sum = T(31.998L) * s / (T(1000) - T(1.005L) * s);
  const T m = sum / T(2);
  const T phi = T(0.90799L) + m * (T(-0.08992L) + m * (T(0.18458L) + m * (T(-0.07395L) + m * T(-0.00221L))));
  return exp(T(-0.018L) * phi * sum);
}

/// Water activity of TEOS-10; sa in g/kg, t in degC (ITS-90).
template <class T>
[[nodiscard]] inline T water_activity_teos10(T sa, T t) noexcept {
  using std::exp;
  using std::sqrt;
  const T shift = teos10_water_potential_shift(sqrt(teos10_sfac<T> * sa), t * T(0.025L));
  return exp(shift / (gas_constant_of_water<T> * (T(273.15L) + t)));
}

/// Vapour pressure of seawater [Pa], Weiss and Price 1980; s on the practical scale, temperature in K.
template <class T>
[[nodiscard]] inline T vapour_pressure_weiss_price(T s, T kelvin) noexcept {
  using std::exp;
  using std::log;
  const T hundreds = kelvin / T(100);
  return T(101325) * exp(T(24.4543L) - T(67.4509L) / hundreds - T(4.8489L) * log(hundreds) - T(0.000544L) * s);
}

/// What salt makes of the vapour pressure by Nayar et al. 2016, eq. 6; s in g/kg.
template <class T>
[[nodiscard]] inline T vapour_pressure_ratio_nayar(T s) noexcept {
  using std::exp;
  return exp(s * (T(-4.5818e-4L) + s * T(-2.0443e-6L)));
}

/// Osmotic coefficient by Sharqawy et al. 2010, eq. 49; s in g/kg, t in degC.
template <class T>
[[nodiscard]] constexpr T osmotic_coefficient_sharqawy(T s, T t) noexcept {
  return T(8.9453233003e-1L) + t * (T(4.1560737424e-4L) + t * (T(-4.6262121398e-6L) + t * t * T(2.2211195897e-11L))) +
         s * (T(-1.1445456438e-4L) + t * (T(-1.4783462366e-6L) + t * t * T(-1.3526263499e-11L))) +
         s * s * (T(7.0132355546e-6L) + t * (T(5.6960486681e-8L) + t * T(-2.8624032584e-10L)));
}

}  // namespace detail

/// Water activity of seawater at room temperature: its vapour pressure over that of fresh water (Dickson et al. 2007).
///
///   a_w = exp(-0.018 phi m),   m = 31.998 S / (1000 - 1.005 S), phi a quartic in m / 2
///
/// @param s      practical salinity, 0 to 42
/// @param policy `extrapolate` to go past 42
/// @return       water activity; 0.9813 at 35. "0.98" is a rounding of it.
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     1e-4 against TEOS-10 from 18 to 40 degC, 4e-4 down to 0 degC (temperature is left out)
/// @source       Dickson, Sabine and Christian 2007, ch. 5
[[nodiscard]] inline proportion water_activity(practical_salinity s, range_policy policy = range_policy::published) {
  core::check("tankwright::water::water_activity", practical_salinity_limits, s.value(), policy);
  return fraction(detail::water_activity_dickson(s.value()));
}

/// Water activity of seawater at its temperature (TEOS-10).
///
///   a_w = exp((mu_W(S_A, t) - mu_W(0, t)) / (R_W T)),   mu_W = g - S_A dg/dS_A the chemical potential of the water
///
/// @param s      practical salinity, 0 to 42
/// @param t      temperature [ITS-90], -6 to 80 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       water activity
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     1e-14 against the chemical potentials of TEOS-10
/// @source       Feistel 2008; IOC, SCOR and IAPSO 2010, eq. 3.40
[[nodiscard]] inline proportion water_activity(practical_salinity s, temperature t,
                                               range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::water_activity";
  core::check(here, practical_salinity_limits, s.value(), policy);
  core::check(here, gibbs_temperature_limits, in_celsius(t), policy);
  return fraction(detail::water_activity_teos10(detail::u_ps<double> * s.value(), in_celsius(t)));
}

/// Water activity of seawater by the oldest and shortest rule (Witting 1908), to reproduce work that used it.
///
///   a_w = 1 - 0.000537 S
///
/// @param s      practical salinity, 0 to 40
/// @param policy `extrapolate` to go past 40
/// @return       water activity
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     4e-4 against TEOS-10 from 0 to 40 degC
/// @source       Witting 1908, as used by Green and Carritt 1967
[[nodiscard]] constexpr proportion water_activity_witting(practical_salinity s,
                                                          range_policy policy = range_policy::published) {
  core::check("tankwright::water::water_activity_witting", witting_salinity_limits, s.value(), policy);
  return fraction(1.0 - 0.000537 * s.value());
}

/// Vapour pressure over fresh water (Hyland and Wexler): the default, and the base of building services' tables.
///
///   ln p = C8/T + C9 + C10 T + C11 T^2 + C12 T^3 + C13 ln T
///
/// @param t      temperature [ITS-90], 0 to 200 degC
/// @param policy `extrapolate` to go past this range; below 0 degC it is the pressure over supercooled water
/// @return       saturation pressure of the vapour [Pa]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     300 ppm against IAPWS-95
/// @source       Hyland and Wexler 1983; ASHRAE Handbook Fundamentals 2017, ch. 1, eq. 6
[[nodiscard]] inline pressure vapour_pressure(temperature t, range_policy policy = range_policy::published) {
  core::check("tankwright::water::vapour_pressure", hyland_wexler_temperature_limits, in_celsius(t), policy);
  return pressure::from_value(kernel::saturation_hyland_wexler(in_kelvins(t)));
}

/// Vapour pressure over seawater: that of fresh water by Hyland and Wexler, times the water activity of TEOS-10.
///
///   p_sw = a_w(S, t) p_w(t)
///
/// @param s      practical salinity, 0 to 42
/// @param t      temperature [ITS-90], 0 to 80 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       vapour pressure [Pa]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     300 ppm against TEOS-10 with IAPWS-95
/// @source       Hyland and Wexler 1983; Feistel 2008
[[nodiscard]] inline pressure vapour_pressure(practical_salinity s, temperature t,
                                              range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::vapour_pressure";
  core::check(here, practical_salinity_limits, s.value(), policy);
  core::check(here, gibbs_temperature_limits, in_celsius(t), policy);
  return water_activity(s, t, policy).value() * vapour_pressure(t, policy);
}

/// Vapour pressure over fresh water by the industrial formulation of IAPWS.
///
///   p = (2 C / (-B + sqrt(B^2 - 4 A C)))^4 MPa,   A, B, C quadratic in T + n9 / (T - n10)
///
/// @param t      temperature [ITS-90], 0 to 373.946 degC
/// @param policy `extrapolate` to go below
/// @return       saturation pressure of the vapour [Pa]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.008 % against IAPWS-95 from 0 to 40 degC; 1e-9 against the release itself
/// @source       IAPWS R7-97(2012), eq. 30
[[nodiscard]] inline pressure vapour_pressure_iapws(temperature t, range_policy policy = range_policy::published) {
  core::check("tankwright::water::vapour_pressure_iapws", iapws_saturation_temperature_limits, in_celsius(t), policy);
  return pressure::from_value(detail::saturation_iapws(in_kelvins(t)));
}

/// Vapour pressure over seawater by Weiss and Price, as gas chemistry uses it. An absolute formula: do not mix it with
/// another one's fresh water, its own lies 0.1 % below.
///
///   ln(p / atm) = 24.4543 - 67.4509 (100/T) - 4.8489 ln(T/100) - 0.000544 S
///
/// @param s      practical salinity, 0 to 40
/// @param t      temperature [ITS-90], 0 to 40 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       vapour pressure [Pa]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.2 % against TEOS-10 with IAPWS-95
/// @source       Weiss and Price 1980, eq. 10
[[nodiscard]] inline pressure vapour_pressure_weiss_price(practical_salinity s, temperature t,
                                                          range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::vapour_pressure_weiss_price";
  core::check(here, weiss_price_salinity_limits, s.value(), policy);
  core::check(here, weiss_price_temperature_limits, in_celsius(t), policy);
  return pressure::from_value(detail::vapour_pressure_weiss_price(s.value(), in_kelvins(t)));
}

/// Vapour pressure over seawater by Nayar et al., as desalination uses it.
///
///   p_sw = p_w exp(-4.5818e-4 S - 2.0443e-6 S^2),   S in g/kg, p_w by Hyland and Wexler
///
/// @param s      absolute salinity [g/kg], 0 to 160
/// @param t      temperature [ITS-90], 0 to 180 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       vapour pressure [Pa]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.26 % above 20 degC, 0.91 % below
/// @source       Nayar et al. 2016, eqs 5-6
[[nodiscard]] inline pressure vapour_pressure_nayar(absolute_salinity s, temperature t,
                                                    range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::vapour_pressure_nayar";
  core::check(here, nayar_salinity_limits, in_grams_per_kilogram(s), policy);
  core::check(here, nayar_temperature_limits, in_celsius(t), policy);
  return pressure::from_value(detail::vapour_pressure_ratio_nayar(in_grams_per_kilogram(s)) *
                              kernel::saturation_hyland_wexler(in_kelvins(t)));
}

/// Osmotic coefficient of seawater, as desalination uses it (Sharqawy et al. 2010).
///
///   phi = a1 + a2 t + a3 t^2 + a4 t^4 + (a5 + a6 t + a7 t^3) S + (a8 + a9 t + a10 t^2) S^2
///
/// @param s      absolute salinity [g/kg], 10 to 120
/// @param t      temperature [ITS-90], 0 to 200 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       [1] osmotic coefficient
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     1.4 %
/// @source       Sharqawy, Lienhard and Zubair 2010, eq. 49
[[nodiscard]] constexpr double osmotic_coefficient(absolute_salinity s, temperature t,
                                                   range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::osmotic_coefficient";
  core::check(here, osmotic_salinity_limits, in_grams_per_kilogram(s), policy);
  core::check(here, osmotic_temperature_limits, in_celsius(t), policy);
  return detail::osmotic_coefficient_sharqawy(in_grams_per_kilogram(s), in_celsius(t));
}

}  // namespace tankwright::water
