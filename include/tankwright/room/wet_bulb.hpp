// SPDX-License-Identifier: BSL-1.0
/// @file
/// The thermodynamic wet bulb: how far evaporation alone can cool, and what a sling psychrometer measures.
///
/// Above 0 degC the wick is wet, below it is iced, and the two equations do not meet: air near freezing can keep either
/// wick. Where both are possible the wet one is returned.
#pragma once

#include <algorithm>
#include <cmath>
#include <limits>

#include <tankwright/room/moist_air.hpp>

namespace tankwright::room {

inline constexpr limits wet_bulb_limits{"wet bulb", "degC", possible_air, celsius_range(-100.0, 100.0),
                                        "ASHRAE 2017, ch. 1"};

/// Air by its dry and wet bulb: what a psychrometer gives.
struct air_of_wet_bulb {
  required<tankwright::temperature> temperature;
  required<tankwright::temperature> wet_bulb;
  absolute_pressure pressure = standard_atmosphere;
};

namespace detail {

/// Coefficients of eq. 33 (water) and eq. 35 (ice), kJ and degC.
template <class T>
struct wet_bulb_equation {
  T latent;          ///< 2501 or 2830
  T latent_slope;    ///< 2.326 or 0.24
  T condensed_heat;  ///< 4.186 or 2.1
};
template <class T>
inline constexpr wet_bulb_equation<T> wet_wick{T(2501), T(2.326L), T(4.186L)};
template <class T>
inline constexpr wet_bulb_equation<T> iced_wick{T(2830), T(0.24L), T(2.1L)};

/// Humidity ratio of air of temperature t whose wet bulb is s, degC; `saturated` is that of saturation at s.
template <class T>
[[nodiscard]] constexpr T ratio_from_wet_bulb(const wet_bulb_equation<T>& e, T t, T s, T saturated) noexcept {
  return ((e.latent - e.latent_slope * s) * saturated - T(1.006L) * (t - s)) /
         (e.latent + T(1.86L) * t - e.condensed_heat * s);
}

/// Wet bulb [degC] of air of t [degC] and vapour pressure p [Pa]: Halley's steps, from the dry bulb, on the equation
/// times its denominators, which is smooth through the boiling point.
///
///   p_sat(s) B(s) = P H(s),   H = 1.006 (t - s) + W (latent + 1.86 t - c s),   B = eps (latent - slope s) + H
template <class T>
[[nodiscard]] T wet_bulb(std::string_view function, T t, T p, T total) {
  using std::exp;
  using std::fabs;
  constexpr T zero = T(273.15L);
  const T ratio = humidity_ratio(p, total);
  const T saturated_at_zero = humidity_ratio(T(611.1535708907679L), total);  // over ice, as below the triple point
  const bool wet = ratio_from_wet_bulb(wet_wick<T>, t, T(0), saturated_at_zero) <= ratio;
  const wet_bulb_equation<T>& e = wet ? wet_wick<T> : iced_wick<T>;
  const T heat_slope = -(T(1.006L) + ratio * e.condensed_heat);
  const T both_slope = heat_slope - molar_mass_ratio<T> * e.latent_slope;
  T s = t;
  for (T last = std::numeric_limits<T>::infinity();;) {
    const auto ln_p = ln_saturation(s + zero);
    const T vapour = exp(ln_p.value);
    const T heat = T(1.006L) * (t - s) + ratio * (e.latent + T(1.86L) * t - e.condensed_heat * s);
    const T both = molar_mass_ratio<T> * (e.latent - e.latent_slope * s) + heat;
    const T value = vapour * both - total * heat;
    const T slope = vapour * (ln_p.slope * both + both_slope) - total * heat_slope;
    const T curve = vapour * ((ln_p.slope * ln_p.slope + ln_p.curvature) * both + T(2) * ln_p.slope * both_slope);
    const T step = T(2) * value * slope / (T(2) * slope * slope - value * curve);
    s -= step;
    if (fabs(step) <= T(1e-7L)) return std::min(s, t);  // small: between ice and water the slope has a kink
    if (!(fabs(step) < last)) {                         // they shrink for all air that is possible
      core::fail<no_convergence>(function, "wet bulb", static_cast<double>(s), "degC", "did not converge");
    }
    last = fabs(step);
  }
}

}  // namespace detail

/// Thermodynamic wet-bulb temperature: what air becomes when it is cooled by evaporating water into it.
///
///   W = [(2501 - 2.326 s) W_sat(s) - 1.006 (t - s)] / (2501 + 1.86 t - 4.186 s),   s >= 0 degC
///   W = [(2830 - 0.24 s) W_sat(s) - 1.006 (t - s)] / (2830 + 1.86 t - 2.1 s),      s < 0 degC (iced)
///
/// @param a      the air: temperature -100 to 200 degC, relative humidity 0 to 1, pressure 22.6 to 177.7 kPa
/// @param policy `extrapolate` to go past these ranges
/// @return       temperature [ITS-90]
/// @throws       invalid_input, out_of_range, no_convergence
/// @accuracy     solves the equations to 1e-10 K; a real psychrometer reads within 0.3 K of it
/// @source       ASHRAE Handbook-Fundamentals 2017, ch. 1, eq. 33 and 35
[[nodiscard]] inline temperature wet_bulb(const air& a, range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::wet_bulb";
  const auto raw = detail::checked(here, a, policy);
  return celsius(detail::wet_bulb(here, raw.celsius, raw.vapour, raw.pressure));
}

/// The air of a psychrometer's two readings.
///
///   eq. 33 (wet wick, s >= 0 degC) or eq. 35 (iced) gives W
///
/// @param state  temperature and wet bulb -100 to 100 degC, the wet bulb not above the temperature; pressure
/// @param policy `extrapolate` to go past the published ranges
/// @return       air with its relative humidity
/// @throws       invalid_input (also for a pair that no air can have), out_of_range
/// @accuracy     inverts wet_bulb to 1e-11; reading both thermometers to 0.2 K leaves 3 points of humidity
/// @source       ASHRAE Handbook-Fundamentals 2017, ch. 1, eq. 33 and 35
[[nodiscard]] inline air air_from(const air_of_wet_bulb& state, range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::air_from";
  const double t = in_celsius(state.temperature);
  const double s = in_celsius(state.wet_bulb);
  const double total = in_pascals(state.pressure.value());
  core::check(here, saturation_temperature_limits, t, policy);
  core::check(here, wet_bulb_limits, s, policy);
  detail::check_air_pressure(here, state.pressure, policy);
  if (!(s <= t)) {
    core::fail<invalid_input>(
        here, wet_bulb_limits.argument, s, "degC",
        "is above the dry bulb, " + core::number_with_unit(t, "degC") + ": change the thermometers over");
  }
  const double vapour_at_s = detail::saturation_pressure(in_kelvins(state.wet_bulb));
  detail::check_vapour(here, vapour_at_s, total);
  const double ratio = detail::ratio_from_wet_bulb(s >= 0.0 ? detail::wet_wick<double> : detail::iced_wick<double>, t,
                                                   s, detail::humidity_ratio(vapour_at_s, total));
  if (!(ratio >= -1e-12)) {
    core::fail<invalid_input>(here, wet_bulb_limits.argument, s, "degC",
                              "is lower than dry air of " + core::number_with_unit(t, "degC") + " can cool a wick");
  }
  return detail::air_from_vapour(here, wet_bulb_limits.argument, s, "degC", state.temperature,
                                 detail::vapour_pressure(std::max(ratio, 0.0), total), state.pressure);
}

}  // namespace tankwright::room
