// SPDX-License-Identifier: BSL-1.0
/// @file
/// Arithmetic of water on raw numbers, without checks: what the floors above call in their inner loops.
///
/// Each is the kernel of a public function, where its source, range and accuracy stand: `density`, `vapour_pressure`,
/// `latent_heat_of_water`.
#pragma once

#include <cmath>

#include <tankwright/core/citation.hpp>
#include <tankwright/water/detail/teos10.hpp>

namespace tankwright::water {

inline constexpr citation hyland_wexler_1983{
    "Hyland R.W., Wexler A.", 1983,
    "Formulations for the thermodynamic properties of the saturated phases of H2O from 173.15 K to 473.15 K",
    "ASHRAE Transactions 89(2A):500-519; as in ASHRAE Handbook Fundamentals 2017, ch. 1, eq. 5 (ice) and 6 (water)",
    standing::secondary};

namespace kernel {

/// Density [kg/m^3] of seawater at p = 0; sa in g/kg, t in degC (ITS-90).
template <class T>
[[nodiscard]] inline T density_teos10(T sa, T t) noexcept {
  using std::sqrt;
  const T x2 = detail::teos10_sfac<T> * sa;
  return T(1) / detail::teos10_specific_volume(sqrt(x2), x2, t * T(0.025L));
}

/// Latent heat [J/kg] of pure water at its saturation pressure, Sharqawy et al. 2010, eq. 55; t in degC.
template <class T>
[[nodiscard]] constexpr T latent_heat_of_water(T t) noexcept {
  return T(2.5008991412e6L) +
         t * (T(-2.3691806479e3L) + t * (T(2.6776439436e-1L) + t * (T(-8.1027544602e-3L) + t * T(-2.0799346624e-5L))));
}

/// ln(p/Pa) and its first two derivatives [1/K, 1/K^2].
template <class T>
struct ln_pressure {
  T value;
  T slope;
  T curvature;
};

/// Saturation over liquid water, Hyland and Wexler 1983, eq. 6; temperature in K.
template <class T>
[[nodiscard]] inline ln_pressure<T> ln_saturation_hyland_wexler(T kelvin) noexcept {
  using std::log;
  constexpr T c8 = T(-5.8002206e3L), c9 = T(1.3914993L), c10 = T(-4.8640239e-2L), c11 = T(4.1764768e-5L),
              c12 = T(-1.4452093e-8L), c13 = T(6.5459673L);
  const T per_t = T(1) / kelvin;
  return {c8 * per_t + c9 + kelvin * (c10 + kelvin * (c11 + kelvin * c12)) + c13 * log(kelvin),
          per_t * (c13 - c8 * per_t) + c10 + kelvin * (T(2) * c11 + kelvin * T(3) * c12),
          per_t * per_t * (T(2) * c8 * per_t - c13) + T(2) * c11 + kelvin * T(6) * c12};
}

/// Saturation pressure over liquid water [Pa], Hyland and Wexler 1983; temperature in K.
template <class T>
[[nodiscard]] inline T saturation_hyland_wexler(T kelvin) noexcept {
  using std::exp;
  return exp(ln_saturation_hyland_wexler(kelvin).value);
}

}  // namespace kernel
}  // namespace tankwright::water
