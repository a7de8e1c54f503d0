// SPDX-License-Identifier: BSL-1.0
/// @file
/// Student's t distribution: its probabilities and quantiles, by the incomplete beta function.
///
/// Boost.Math has both and would add the compile time of the whole umbrella again; these lines are held against it in
/// the tests.
#pragma once

#include <cmath>
#include <limits>

#include <tankwright/core/errors.hpp>

namespace tankwright::numerics {

/// Regularised incomplete beta function I_x(a, b) by its continued fraction (modified Lentz), 0 <= x <= 1. The caller
/// gives y = 1 - x too, which may be known to more digits than the difference.
template <class T>
[[nodiscard]] T incomplete_beta(T a, T b, T x, T y) {
  if (x <= T(0)) return T(0);
  if (x >= T(1)) return T(1);
  if (x > (a + T(1)) / (a + b + T(2))) return T(1) - incomplete_beta(b, a, y, x);  // where the fraction converges
  const T front =
      std::exp(std::lgamma(a + b) - std::lgamma(a) - std::lgamma(b) + a * std::log(x) + b * std::log(y)) / a;
  constexpr T tiny = T(1e-300L);
  T c = T(1);
  T d = T(1) - (a + b) * x / (a + T(1));
  d = T(1) / (std::fabs(d) < tiny ? tiny : d);
  T fraction = d;
  for (int m = 1; m < 500; ++m) {
    const T k = T(m);
    const T even = k * (b - k) * x / ((a + T(2) * k - T(1)) * (a + T(2) * k));
    const T odd = -(a + k) * (a + b + k) * x / ((a + T(2) * k) * (a + T(2) * k + T(1)));
    T step = T(1);
    for (const T term : {even, odd}) {
      d = T(1) + term * d;
      d = T(1) / (std::fabs(d) < tiny ? tiny : d);
      c = T(1) + term / c;
      c = std::fabs(c) < tiny ? tiny : c;
      step = c * d;
      fraction *= step;
    }
    if (std::fabs(step - T(1)) < std::numeric_limits<T>::epsilon()) return front * fraction;
  }
  core::fail<no_convergence>("numerics::incomplete_beta", "x", static_cast<double>(x), "",
                       "did not converge");
}

/// Probability that Student's t with `freedom` degrees exceeds `t`. With infinite freedom this is the normal law.
template <class T>
[[nodiscard]] T student_t_above(T t, T freedom) {
  if (std::isinf(freedom)) return std::erfc(t / std::sqrt(T(2))) / T(2);
  const T tail = incomplete_beta(freedom / T(2), T(0.5), freedom / (freedom + t * t), t * t / (freedom + t * t)) / T(2);
  return t >= T(0) ? tail : T(1) - tail;
}

/// Density of Student's t; with infinite freedom that of the normal law.
template <class T>
[[nodiscard]] T student_t_density(T t, T freedom) {
  constexpr T two_pi = T(6.283185307179586476925286766559005768L);
  if (std::isinf(freedom)) return std::exp(-t * t / T(2)) / std::sqrt(two_pi);
  const T half = freedom / T(2);
  return std::exp(std::lgamma(half + T(0.5)) - std::lgamma(half) - (half + T(0.5)) * std::log1p(t * t / freedom)) /
         std::sqrt(half * two_pi);
}

/// About the t that is exceeded with probability `above` < 0.5, as a start: Abramowitz & Stegun 26.2.23 and the first
/// terms of 26.7.5; below three degrees the closed form of two.
template <class T>
[[nodiscard]] T student_t_start(T above, T freedom) {
  if (freedom < T(3)) return (T(1) - T(2) * above) / std::sqrt(T(2) * above * (T(1) - above));
  const T s = std::sqrt(T(-2) * std::log(above));
  const T x = s - (T(2.515517L) + s * (T(0.802853L) + s * T(0.010328L))) /
                      (T(1) + s * (T(1.432788L) + s * (T(0.189269L) + s * T(0.001308L))));
  const T x2 = x * x, f = T(1) / freedom;
  return x + f * x * (x2 + T(1)) / T(4) + f * f * x * ((T(5) * x2 + T(16)) * x2 + T(3)) / T(96) +
         f * f * f * x * (((T(3) * x2 + T(19)) * x2 + T(17)) * x2 - T(15)) / T(384);
}

/// The t that is exceeded with probability 1 - `below`, for 0 < `below` < 1.
///
/// Newton's method. In the tail, which falls about as a power of t, it runs on logarithms: there it is concave, in the
/// middle convex, and converges from anywhere.
template <class T>
[[nodiscard]] T student_t_quantile(T below, T freedom) {
  if (below == T(0.5)) return T(0);
  if (below < T(0.5)) return -student_t_quantile(T(1) - below, freedom);
  const T above = T(1) - below;
  const bool in_tail = above < T(0.25);
  const T enough = std::sqrt(std::numeric_limits<T>::epsilon()) / T(4);  // the next step would be its square
  T t = std::fmax(student_t_start(above, freedom), T(0));
  for (int i = 0; i < 100; ++i) {
    const T tail = student_t_above(t, freedom), density = student_t_density(t, freedom);
    const T step = in_tail ? std::log(tail / above) * tail / (t * density) : (tail - above) / density;
    t = in_tail ? t * std::exp(step) : std::fmax(t + step, T(0));
    if (std::fabs(step) <= (in_tail ? enough : enough * t)) return t;
  }
  core::fail<no_convergence>("numerics::student_t_quantile", "probability", static_cast<double>(below), "",
                       "did not converge");
}

}  // namespace tankwright::numerics
