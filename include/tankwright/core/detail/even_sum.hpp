// SPDX-License-Identifier: BSL-1.0
/// @file
/// The sum of a few deviations, each spread evenly between its two limits: how likely does it pass a number?
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <span>

namespace tankwright::detail {

/// Probability that the sum of independent deviations, each spread evenly over -w .. w, is above x.
///
///   P(S > x) = 1/(n! 2^n prod w) sum over the 2^n signs of (prod of signs) max(0, sum of (sign w) - x)^n,  x >= 0
///
/// which is the n-fold integral of the product of the steps at both ends of each interval. Widths below a hundredth of
/// the widest are left out: they move the probability by less than 1e-4, and the alternating sum would lose its digits.
///
/// @param x      the number to pass
/// @param widths half widths w >= 0, at most 16
/// @return       probability, 0 to 1; without a width 1 for x < 0, 0 otherwise
/// @accuracy     1e-4 for what is left out, 1e-9 otherwise
/// @source       sums of rectangular distributions, JCGM 101:2008 9.2; the integral by hand
[[nodiscard]] inline double even_sum_above(double x, std::span<const double> widths) noexcept {
  if (x < 0.0) return 1.0 - even_sum_above(-x, widths);
  constexpr std::size_t most = 16;
  constexpr double counts = 0.01;  // of the widest
  double widest = 0.0;
  for (const double w : widths) widest = std::max(widest, w);
  if (widest == 0.0) return 0.0;
  double kept[most];  // over the widest, so that nothing overflows
  std::size_t n = 0;
  double all = 1.0;  // n! 2^n prod w
  for (const double w : widths) {
    if (n == most || w < counts * widest) continue;
    kept[n++] = w / widest;
    all *= 2.0 * static_cast<double>(n) * kept[n - 1];
  }
  double sum = 0.0;
  for (std::size_t minus = 0; minus < (std::size_t{1} << n); ++minus) {
    double reach = -x / widest;
    double sign = 1.0;
    for (std::size_t i = 0; i < n; ++i) {
      const bool down = (minus >> i & 1U) != 0;
      reach += down ? -kept[i] : kept[i];
      if (down) sign = -sign;
    }
    if (reach <= 0.0) continue;
    double power = sign;
    for (std::size_t i = 0; i < n; ++i) power *= reach;
    sum += power;
  }
  return std::clamp(sum / all, 0.0, 0.5);
}

}  // namespace tankwright::detail
