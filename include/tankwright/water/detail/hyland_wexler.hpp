// SPDX-License-Identifier: BSL-1.0
/// @file
/// Saturation over liquid water by Hyland and Wexler 1983: the logarithm of the pressure with its derivatives, one
/// kernel for the water's side and the air's side of the surface.
#pragma once

#include <cmath>

#include <tankwright/core/citation.hpp>

namespace tankwright::water {

inline constexpr citation hyland_wexler_1983{
    "Hyland R.W., Wexler A.", 1983,
    "Formulations for the thermodynamic properties of the saturated phases of H2O from 173.15 K to 473.15 K",
    "ASHRAE Transactions 89(2A):500-519; as in ASHRAE Handbook Fundamentals 2017, ch. 1, eq. 5 (ice) and 6 (water)",
    standing::secondary};

namespace detail {

/// ln(p/Pa) and its first two derivatives [1/K, 1/K^2].
template <class T>
struct ln_pressure {
  T value;
  T slope;
  T curvature;
};

/// Over liquid water, T in K (eq. 6).
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

}  // namespace detail
}  // namespace tankwright::water
