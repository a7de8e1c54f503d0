// SPDX-License-Identifier: BSL-1.0
/// @file
/// How strongly does the surface hold together? Surface tension of clean seawater by IAPWS: menisci, drops, bubbles.
#pragma once

#include <cmath>

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/water/salinity.hpp>

namespace tankwright::water {

inline constexpr citation iapws_g14_19{"International Association for the Properties of Water and Steam", 2019,
                                       "Guideline on the Surface Tension of Seawater",
                                       "IAPWS G14-19, eq. 1 and table 2, after Nayar et al. 2014", standing::secondary};
inline constexpr citation iapws_r1_76{"International Association for the Properties of Water and Steam", 2014,
                                      "Revised Release on Surface Tension of Ordinary Water Substance",
                                      "IAPWS R1-76(2014), eq. 1", standing::secondary};

inline constexpr limits surface_tension_salinity_limits{
    "absolute salinity", "g/kg", absolute_salinity_limits.possible, {0.0, 131.0}, "IAPWS G14-19"};
/// There is no surface above the critical point.
inline constexpr limits surface_tension_temperature_limits{
    "temperature", "degC", {-273.15, 373.946, edge::open}, celsius_range(1.0, 92.0), "IAPWS G14-19"};

namespace detail {

/// Surface tension of water [N/m], IAPWS R1-76; temperature in K.
template <class T>
[[nodiscard]] inline T surface_tension_of_water(T kelvin) noexcept {
  using std::pow;
  const T x = T(1) - kelvin / T(647.096L);
  return T(0.2358L) * pow(x, T(1.256L)) * (T(1) - T(0.625L) * x);
}

/// What salt makes of it, IAPWS G14-19; s in g/kg, t in degC.
template <class T>
[[nodiscard]] constexpr T surface_tension_ratio(T s, T t) noexcept {
  return T(1) + s * (T(3.766e-4L) + T(2.347e-6L) * t);
}

}  // namespace detail

/// Surface tension of clean seawater against air (IAPWS).
///
///   sigma = sigma_w (1 + 3.766e-4 S + 2.347e-6 S t),   sigma_w = 0.2358 x^1.256 (1 - 0.625 x), x = 1 - T / 647.096 K
///
/// @param s      absolute salinity [g/kg], 0 to 131
/// @param t      temperature [ITS-90], 1 to 92 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       surface tension [N/m]; a film of food or fat lowers it
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.6 %
/// @source       IAPWS G14-19; IAPWS R1-76(2014)
[[nodiscard]] inline surface_tension surface_tension_of(absolute_salinity s, temperature t,
                                                        range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::surface_tension_of";
  core::check(here, surface_tension_salinity_limits, in_grams_per_kilogram(s), policy);
  core::check(here, surface_tension_temperature_limits, in_celsius(t), policy);
  return surface_tension::from_value(detail::surface_tension_of_water(in_kelvins(t)) *
                                     detail::surface_tension_ratio(in_grams_per_kilogram(s), in_celsius(t)));
}

/// Surface tension of clean seawater against air, from practical salinity (IAPWS, reference composition).
///
///   sigma(S_A, t) with S_A = u_PS S_P
///
/// @param s      practical salinity, 0 to 42
/// @param t      temperature [ITS-90], 1 to 92 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       surface tension [N/m]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.6 %
/// @source       IAPWS G14-19; IAPWS R1-76(2014); Millero et al. 2008
[[nodiscard]] inline surface_tension surface_tension_of(practical_salinity s, temperature t,
                                                        range_policy policy = range_policy::published) {
  core::check("tankwright::water::surface_tension_of", practical_salinity_limits, s.value(), policy);
  return surface_tension_of(absolute_from_practical(s, policy), t, policy);
}

}  // namespace tankwright::water
