// SPDX-License-Identifier: BSL-1.0
/// @file
/// Student's t distribution: its probabilities and quantiles, by the incomplete beta function.
///
/// Boost.Math has both and would add the compile time of the whole umbrella again; these forty lines are held against
/// it in the tests.
#pragma once

#include <cmath>
#include <limits>

#include <tankwright/core/detail/root.hpp>

namespace tankwright::detail {

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
  fail<no_convergence>("tankwright::detail::incomplete_beta", "x", static_cast<double>(x), "",
                       "did not converge");
}

/// Probability that Student's t with `freedom` degrees exceeds `t`. With infinite freedom this is the normal law.
template <class T>
[[nodiscard]] T student_t_above(T t, T freedom) {
  if (std::isinf(freedom)) return std::erfc(t / std::sqrt(T(2))) / T(2);
  const T tail = incomplete_beta(freedom / T(2), T(0.5), freedom / (freedom + t * t), t * t / (freedom + t * t)) / T(2);
  return t >= T(0) ? tail : T(1) - tail;
}

/// The t that is exceeded with probability 1 - `below`, for 0 < `below` < 1.
template <class T>
[[nodiscard]] T student_t_quantile(T below, T freedom) {
  if (below == T(0.5)) return T(0);
  if (below < T(0.5)) return -student_t_quantile(T(1) - below, freedom);
  const T above = T(1) - below;
  T high = T(2);
  while (student_t_above(high, freedom) > above) high *= T(2);
  return bracketed_root<T>("tankwright::detail::student_t_quantile", "t",
                           [&](T t) { return student_t_above(t, freedom) - above; }, T(0), high,
                           {.relative = T(1e-14L)});
}

}  // namespace tankwright::detail
