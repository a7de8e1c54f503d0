// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much water vapour can air of this temperature hold? Saturation pressure over ice and liquid water, and its
/// inverse, the dew or frost point of a vapour pressure.
///
/// Hyland and Wexler 1983, as ASHRAE prints it: without iteration, over ice and water, and the base of every table a
/// heating engineer compares with. Ice gives way to water at the triple point, 0.01 degC, where the two meet to 6e-9.
#pragma once

#include <cmath>
#include <cstddef>
#include <limits>
#include <span>

#include <tankwright/core/batch.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/room/ranges.hpp>
#include <tankwright/water/kernel.hpp>

namespace tankwright::room {

using water::hyland_wexler_1983;

/// Temperatures of the saturation formulas.
inline constexpr limits saturation_temperature_limits{"temperature", "degC", possible_air, celsius_range(-100.0, 200.0),
                                                      "Hyland and Wexler 1983"};
/// Vapour pressures at the ends of that range.
inline constexpr limits vapour_pressure_limits{
    "vapour pressure", "Pa", {1e-12, 2.2e7}, {1.405102e-3, 1.5550738e6}, "Hyland and Wexler 1983, -100 to 200 degC"};

namespace detail {

/// Triple point of water [K]: below it the saturation pressure is that over ice.
template <class T>
inline constexpr T triple_point = T(273.16L);

using water::kernel::ln_pressure;

/// Over ice, T in K (eq. 5).
template <class T>
[[nodiscard]] inline ln_pressure<T> ln_saturation_over_ice(T t) noexcept {
  using std::log;
  constexpr T c1 = T(-5.6745359e3L), c2 = T(6.3925247L), c3 = T(-9.677843e-3L), c4 = T(6.2215701e-7L),
              c5 = T(2.0747825e-9L), c6 = T(-9.484024e-13L), c7 = T(4.1635019L);
  const T per_t = T(1) / t;
  return {c1 * per_t + c2 + t * (c3 + t * (c4 + t * (c5 + t * c6))) + c7 * log(t),
          per_t * (c7 - c1 * per_t) + c3 + t * (T(2) * c4 + t * (T(3) * c5 + t * T(4) * c6)),
          per_t * per_t * (T(2) * c1 * per_t - c7) + T(2) * c4 + t * (T(6) * c5 + t * T(12) * c6)};
}

template <class T>
[[nodiscard]] inline ln_pressure<T> ln_saturation(T t) noexcept {
  return t < triple_point<T> ? ln_saturation_over_ice(t) : water::kernel::ln_saturation_hyland_wexler(t);
}

/// Saturation pressure [Pa], T in K.
template <class T>
[[nodiscard]] inline T saturation_pressure(T t) noexcept {
  using std::exp;
  return exp(ln_saturation(t).value);
}

/// A guess of the temperature [K] from ln(p/Pa): Magnus' curve over ice and over water, good to 0.03 K in a room and to
/// 3 K in the range.
template <class T>
[[nodiscard]] constexpr T saturation_temperature_guess(T ln_p) noexcept {
  const T x = ln_p - T(6.41474L);  // ln 610.78
  return T(273.15L) + (x < T(0) ? T(265.5L) * x / (T(21.875L) - x) : T(237.3L) * x / (T(17.27L) - x));
}

/// Temperature [K] at which ln(p/Pa) is that of saturation: Halley's steps on ln p, of which two from the guess reach
/// the last digits.
template <class T>
[[nodiscard]] T saturation_temperature(std::string_view function, T ln_p) {
  using std::fabs;
  const bool ice = ln_p < water::kernel::ln_saturation_hyland_wexler(triple_point<T>).value;
  T t = saturation_temperature_guess(ln_p);
  for (T last = std::numeric_limits<T>::infinity();;) {
    const auto at = ice ? ln_saturation_over_ice(t) : water::kernel::ln_saturation_hyland_wexler(t);
    const T miss = ln_p - at.value;
    const T step = T(2) * miss * at.slope / (T(2) * at.slope * at.slope + miss * at.curvature);
    t += step;
    if (fabs(step) <= T(3e-3L)) return t;  // the next step would be less than 1e-12 K
    if (!(fabs(step) < last)) {
      core::fail<no_convergence>(function, "ln of the vapour pressure", static_cast<double>(ln_p), "",
                                 "has no saturation temperature within reach of the formula");
    }
    last = fabs(step);
  }
}

}  // namespace detail

/// Saturation pressure of water vapour: over ice below 0.01 degC, over liquid water above.
///
///   ln p = C1/T + C2 + C3 T + C4 T^2 + C5 T^3 + C6 T^4 + C7 ln T   (ice);   five terms and a logarithm over water
///
/// @param t      temperature [ITS-90], -100 to 200 degC
/// @param policy `extrapolate` to go past that range
/// @return       saturation pressure [Pa]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     300 ppm of ASHRAE's tables; between 5 and 30 degC 0.01 to 0.023 % below IAPWS-95
/// @source       Hyland and Wexler 1983; ASHRAE Handbook-Fundamentals 2017, ch. 1, eq. 5 and 6
[[nodiscard]] inline pressure saturation_pressure(temperature t, range_policy policy = range_policy::published) {
  core::check("tankwright::room::saturation_pressure", saturation_temperature_limits, in_celsius(t), policy);
  return pressure::from_value(detail::saturation_pressure(in_kelvins(t)));
}

/// Saturation pressure at many temperatures.
///
///   element i of the result is saturation_pressure(t[i])
///
/// @param t      temperatures [ITS-90], -100 to 200 degC
/// @param result saturation pressures [Pa]; as many as `t`. Untouched when the call throws.
/// @param policy `extrapolate` to go past that range
/// @throws       invalid_input, out_of_range (for the first bad element)
/// @accuracy     the same numbers as the scalar function
/// @source       Hyland and Wexler 1983
inline void saturation_pressure(std::span<const temperature> t, std::span<pressure> result,
                                range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::saturation_pressure";
  core::check_same_size(here, t.size(), result.size());
  core::check_all(
      here, saturation_temperature_limits, t.size(), [&](std::size_t i) { return in_celsius(t[i]); }, policy);
  for (std::size_t i = 0; i < t.size(); ++i) {
    result[i] = pressure::from_value(detail::saturation_pressure(in_kelvins(t[i])));
  }
}

/// Temperature at which a vapour pressure is that of saturation: the dew point, or below 0.01 degC the frost point.
///
///   the T with saturation_pressure(T) = p, by Halley's steps on ln p
///
/// @param vapour vapour pressure [Pa], 0.001405 to 1.555e6 (saturation at -100 and 200 degC)
/// @param policy `extrapolate` to go past that range
/// @return       temperature [ITS-90]
/// @throws       invalid_input, out_of_range, no_convergence (far outside the range)
/// @accuracy     inverts saturation_pressure to 1e-11 K
/// @source       Hyland and Wexler 1983
[[nodiscard]] inline temperature saturation_temperature(pressure vapour,
                                                        range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::saturation_temperature";
  core::check(here, vapour_pressure_limits, vapour.value(), policy);
  return kelvins(detail::saturation_temperature(here, std::log(vapour.value())));
}

}  // namespace tankwright::room
