// SPDX-License-Identifier: BSL-1.0
/// @file
/// The arithmetic of the Practical Salinity Scale 1978 and of its extension below salinity 2.
///
/// Symbols: t = IPTS-68 degC, p = dbar above the atmosphere, R = C(S,t,p) / C(35,15,0) = Rp rt Rt, x = sqrt(Rt),
/// f = (t - 15) / (1 + k (t - 15)). Coefficients in the order of Fofonoff and Millard 1983, eqs 1-6.
#pragma once

#include <cmath>
#include <limits>

#include <tankwright/numerics/root.hpp>

namespace tankwright::water::detail {

/// C(35, 15, 0) [S/m], Culkin and Smith 1980.
template <class T>
inline constexpr T pss78_standard = T(4.29140L);

template <class T>
[[nodiscard]] constexpr T pss78_rt(T t) noexcept {
  return T(0.6766097L) + t * (T(2.00564e-2L) + t * (T(1.104259e-4L) + t * (T(-6.9698e-7L) + t * T(1.0031e-9L))));
}

/// Numerator of f over its denominator; `f_of` divides them.
template <class T>
[[nodiscard]] constexpr T pss78_f_denominator(T t) noexcept {
  return T(1) + T(0.0162L) * (t - T(15));
}
template <class T>
[[nodiscard]] constexpr T pss78_f(T t) noexcept {
  return (t - T(15)) / pss78_f_denominator(t);
}

/// Salinity, 2 <= S <= 42.
template <class T>
[[nodiscard]] constexpr T pss78_salinity(T x, T f) noexcept {
  const T a =
      T(0.0080L) + x * (T(-0.1692L) + x * (T(25.3851L) + x * (T(14.0941L) + x * (T(-7.0261L) + x * T(2.7081L)))));
  const T b =
      T(0.0005L) + x * (T(-0.0056L) + x * (T(-0.0066L) + x * (T(-0.0375L) + x * (T(0.0636L) + x * T(-0.0144L)))));
  return a + f * b;
}

/// Its derivative with respect to x.
template <class T>
[[nodiscard]] constexpr T pss78_slope(T x, T f) noexcept {
  const T a = T(-0.1692L) + x * (T(2 * 25.3851L) + x * (T(3 * 14.0941L) + x * (T(4 * -7.0261L) + x * T(5 * 2.7081L))));
  const T b = T(-0.0056L) + x * (T(2 * -0.0066L) + x * (T(3 * -0.0375L) + x * (T(4 * 0.0636L) + x * T(5 * -0.0144L))));
  return a + f * b;
}

/// A first guess of x for 2 <= S <= 42 from root_s = sqrt(S), within 0.005: three Newton steps give every digit.
template <class T>
[[nodiscard]] constexpr T pss78_guess(T root_s) noexcept {
  return T(0.0155L) + root_s * (T(0.18208L) - T(0.00265L) * root_s);
}
template <class T>
[[nodiscard]] constexpr T pss78_newton(T x, T f, T s) noexcept {
  return x - (pss78_salinity(x, f) - s) / pss78_slope(x, f);
}

/// x of a salinity of 2 or more. The scale rises and curves upwards, so that Newton's method cannot miss.
template <class T>
[[nodiscard]] inline T pss78_x(T s, T f) noexcept {
  T x = pss78_guess(std::sqrt(s));
  for (int i = 0; i < 50; ++i) {
    const T next = pss78_newton(x, f, s);
    const bool done = std::fabs(next - x) <= T(2) * std::numeric_limits<T>::epsilon() * x;
    x = next;
    if (done) break;
  }
  return x;
}

/// Salinity below 2 by Hill, Dauphinee and Woods 1986, before rescaling. Zero at x = 0, slightly negative up to
/// x = 0.0056 (2 microsiemens per centimetre), rising from x = 0.0028 on.
template <class T>
[[nodiscard]] constexpr T hill_salinity(T x, T f) noexcept {
  const T big_x = T(400) * x * x;
  const T root_y = T(10) * x;
  const T a0 = T(0.0080L) / (T(1) + big_x * (T(1.5L) + big_x));
  const T b0 = T(0.0005L) * f / (T(1) + root_y * (T(1) + root_y * (T(1) + root_y)));
  return pss78_salinity(x, f) - a0 - b0;
}

/// The factor that makes the extension meet the scale at S = 2 for every temperature, as TEOS-10 does.
template <class T>
[[nodiscard]] inline T hill_factor(T f) noexcept {
  return T(2) / hill_salinity(pss78_x(T(2), f), f);
}

/// Salinity below 2. Where the extension turns negative the water is pure: 0, as in TEOS-10.
template <class T>
[[nodiscard]] inline T low_salinity(T x, T f) noexcept {
  const T s = hill_factor(f) * hill_salinity(x, f);
  return s > T(0) ? s : T(0);
}

/// x of a salinity below 2.
template <class T>
[[nodiscard]] inline T low_salinity_x(T s, T f) {
  const T factor = hill_factor(f);
  return numerics::bracketed_root<T>(
      "tankwright::water::conductivity_from_salinity", "sqrt(Rt)",
      [&](T x) { return factor * hill_salinity(x, f) - s; }, T(0.0028L), pss78_x(T(2), f));
}

/// The whole scale, from Rt and back.
template <class T>
[[nodiscard]] inline T salinity_from_rt_ratio(T rt_ratio, T t) noexcept {
  const T x = std::sqrt(rt_ratio);
  const T f = pss78_f(t);
  const T s = pss78_salinity(x, f);
  return s >= T(2) ? s : low_salinity(x, f);
}
template <class T>
[[nodiscard]] inline T rt_ratio_from_salinity(T s, T t) {
  const T f = pss78_f(t);
  const T x = s >= T(2) ? pss78_x(s, f) : low_salinity_x(s, f);
  return x * x;
}

/// Rp = 1 + numerator / (b + a R).
template <class T>
struct pss78_pressure_terms {
  T numerator, b, a;
  constexpr pss78_pressure_terms(T t, T p) noexcept
      : numerator{p * (T(2.070e-5L) + p * (T(-6.370e-10L) + p * T(3.989e-15L)))},
        b{T(1) + t * (T(3.426e-2L) + t * T(4.464e-4L))},
        a{T(4.215e-1L) - T(3.107e-3L) * t} {}
};

/// Rt from the measured R.
template <class T>
[[nodiscard]] constexpr T rt_ratio_from_ratio(T r, T t, T p) noexcept {
  const pss78_pressure_terms<T> terms{t, p};
  const T rp = T(1) + terms.numerator / (terms.b + terms.a * r);
  return r / (rp * pss78_rt(t));
}

/// R from Rt: the root of a R^2 + (b - a r0) R - r0 (b + numerator) = 0 with r0 = rt Rt, in the form that keeps its
/// digits when R is small.
template <class T>
[[nodiscard]] inline T ratio_from_rt_ratio(T rt_ratio, T t, T p) noexcept {
  const T r0 = pss78_rt(t) * rt_ratio;
  if (p == T(0)) return r0;
  const pss78_pressure_terms<T> terms{t, p};
  const T linear = terms.b - terms.a * r0;
  const T constant = r0 * (terms.b + terms.numerator);
  return T(2) * constant / (linear + std::sqrt(linear * linear + T(4) * terms.a * constant));
}

}  // namespace tankwright::water::detail
