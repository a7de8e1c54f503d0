// SPDX-License-Identifier: BSL-1.0
/// @file
/// The friction factor of a full pipe on raw numbers: Colebrook-White solved to rounding, laminar, and the blend
/// between.
#pragma once

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <tankwright/core/bit_cast.hpp>
#include <tankwright/core/validity.hpp>
#include <type_traits>

namespace tankwright::plumbing::detail {

// Where laminar flow ends and where Colebrook-White begins.
template <class T>
inline constexpr T laminar_end = T(2000);
template <class T>
inline constexpr T turbulent_start = T(4000);

/// ln y of a positive normal number. For double a form without a branch or a call, so that loops over it vectorise:
/// y = 2^k m with m in [sqrt(1/2), sqrt 2), and ln m = 2 artanh s with s = (m - 1)/(m + 1).
template <class T>
[[nodiscard]] inline T logarithm(T y) noexcept {
  if constexpr (std::is_same_v<T, double>) {
    constexpr std::uint64_t root_half = 0x3fe6a09e667f3bcd;  // the bits of sqrt(1/2)
    constexpr std::uint64_t bias = std::uint64_t{1023} << 52;
    const auto bits = core::bit_cast<std::uint64_t>(y);
    const std::uint64_t power = (bits - root_half + bias) >> 52;  // k + 1023
    const double m = core::bit_cast<double>(bits - (power << 52) + bias);
    const double k = core::bit_cast<double>(power | 0x4330000000000000) - (0x1p52 + 1023.0);
    const double s = (m - 1.0) / (m + 1.0);
    const double z = s * s;
    // (artanh(s)/s - 1)/z, interpolated at the seven Chebyshev nodes of z in [0, 0.0295]: 7e-18 of ln m
    const double z2 = z * z;
    const double tail = (0.3333333333333335 + z * 0.19999999999949752) +
                        z2 * (0.14285714312987743 + z * 0.1111110556739754) +
                        z2 * z2 * (0.09091444562630861 + z * 0.07665860800278021 + z2 * 0.07308224842521703);
    return k * 0.6931471805599453 + (2.0 * s + 2.0 * s * z * tail);
  } else {
    using std::log;
    return log(y);
  }
}

/// Base-2 logarithm to 0.05, from the exponent and the mantissa as they stand.
[[nodiscard]] inline double rough_log2(double y) noexcept {
  const auto bits = core::bit_cast<std::uint64_t>(y);
  const double power = core::bit_cast<double>((bits >> 52) | 0x4330000000000000) - (0x1p52 + 1023.0);
  const double m = core::bit_cast<double>((bits & 0x000fffffffffffff) | 0x3ff0000000000000);
  return power + (m - 0.957);
}

/// A friction factor and how steeply it changes: slope = d ln f / d ln Re.
template <class T>
struct friction {
  T f;
  T slope;
};

/// Colebrook-White, 1/sqrt f = -2 log10(e/3.7 + 2.51/(Re sqrt f)), for any Re > 0, in x = 1/sqrt f.
///
/// With a = 2.51/Re, b = e/3.7, c = 2/ln 10 it reads x + c ln(b + a x) = 0. Each step of Halley's method about triples
/// the correct digits.
template <class T>
struct colebrook_equation {
  static constexpr T c = T(0.868588963806503655302257837833210164588794L);
  T a;
  T b;
  colebrook_equation(T re, T e) noexcept : a{T(2.51L) / re}, b{e * T(1 / 3.7L)} {}

  /// The smooth pipe of Swamee and Jain 1976 with a rough logarithm.
  [[nodiscard]] static T start(T re) noexcept { return T(0.5418 * rough_log2(static_cast<double>(re)) - 1.518); }
  [[nodiscard]] T step(T x) const noexcept {
    const T y = b + a * x;
    const T residual = x + c * logarithm(y);
    const T p = a / y;
    const T rise = T(1) + c * p;
    return x - T(2) * residual * rise / (T(2) * rise * rise + residual * c * p * p);
  }
  [[nodiscard]] friction<T> factor(T x) const noexcept { return {T(1) / (x * x), T(-2) * c * a / (b + a * x + c * a)}; }
};

/// The friction factor from a cold start: two steps give all digits.
template <class T>
[[nodiscard]] inline friction<T> colebrook(T re, T e) noexcept {
  const colebrook_equation<T> equation{re, e};
  return equation.factor(equation.step(equation.step(equation.start(re))));
}

/// The same by one step from the last solution x, or from a cold start where x is zero: what a solver asks for again
/// and again at flows that come closer to each other.
template <class T>
[[nodiscard]] inline friction<T> colebrook_again(T re, T e, T& x) noexcept {
  const colebrook_equation<T> equation{re, e};
  x = equation.step(x > T(0) ? x : equation.start(re));
  return equation.factor(x);
}

/// Between laminar and turbulent: the cubic in Re that meets 64/Re at 2000 and `at_end` (Colebrook-White at 4000), each
/// in value and slope. f Re^2, and with it the head loss, rises all the way.
template <class T>
[[nodiscard]] inline friction<T> transition(T re, friction<T> at_end) noexcept {
  const T r = (re - laminar_end<T>) / (turbulent_start<T> - laminar_end<T>);
  const T f0 = T(64) / laminar_end<T>;
  const T d0 = -f0;                               // df/dr of 64/Re
  const T d1 = at_end.f * at_end.slope * T(0.5);  // d ln Re / dr = 1/2 at the end
  const T rise = at_end.f - f0;
  const T c2 = T(3) * rise - T(2) * d0 - d1;
  const T c3 = d0 + d1 - T(2) * rise;
  const T f = f0 + r * (d0 + r * (c2 + r * c3));
  const T df = d0 + r * (T(2) * c2 + r * T(3) * c3);
  return {f, df * (T(1) + r) / f};
}

/// Friction factor at any Re > 0: laminar up to 2000, Colebrook-White from 4000, a blend between.
template <class T>
[[nodiscard]] inline friction<T> friction_factor(T re, T e) noexcept {
  if (re <= laminar_end<T>) return {T(64) / re, T(-1)};
  if (re >= turbulent_start<T>) return colebrook(re, e);
  return transition(re, colebrook(turbulent_start<T>, e));
}

}  // namespace tankwright::plumbing::detail
