// SPDX-License-Identifier: BSL-1.0
/// @file
/// The sum of a few deviations, each spread evenly between its two limits: how likely does it pass a number?
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <span>

namespace tankwright::numerics {

/// Probability that the sum of independent deviations, each spread evenly over -w .. w, is above x.
///
///   P(S > x) = 1/(n! 2^n prod w) sum over the 2^n signs of (prod of signs) max(0, sum of (sign w) - x)^n,  x >= 0
///
/// which is the n-fold integral of the product of the steps at both ends of each interval. Widths below a hundredth of
/// the widest are left out: they move the probability by less than 1e-4, and the alternating sum would lose its digits.
///
/// @param x      the number to pass
/// @param widths half widths w >= 0, at most 8 of them count
/// @return       probability, 0 to 1; without a width 1 for x < 0, 0 otherwise
/// @accuracy     1e-4 for what is left out, 1e-9 otherwise
/// @source       sums of rectangular distributions, JCGM 101:2008 9.2; the integral by hand
[[nodiscard]] inline double tail_of_uniform_sum(double x, std::span<const double> widths) noexcept {
  if (x < 0.0) return 1.0 - tail_of_uniform_sum(-x, widths);
  constexpr std::size_t most = 8;
  constexpr double counts = 0.01;  // of the widest
  double widest = 0.0;
  for (const double w : widths) widest = std::max(widest, w);
  if (widest == 0.0) return 0.0;
  // All 2^n sums of signed widths over the widest, with the product of their signs: each width doubles the list.
  double reach[std::size_t{1} << most] = {-x / widest};
  double sign[std::size_t{1} << most] = {1.0};
  std::size_t n = 0, size = 1;
  double all = 1.0;  // n! 2^n prod w
  for (const double w : widths) {
    if (n == most || w < counts * widest) continue;
    const double part = w / widest;
    for (std::size_t i = 0; i < size; ++i) {
      reach[size + i] = reach[i] - part;
      sign[size + i] = -sign[i];
      reach[i] += part;
    }
    size *= 2;
    all *= 2.0 * static_cast<double>(++n) * part;
  }
  double sum = 0.0;
  for (std::size_t i = 0; i < size; ++i) {
    const double positive = std::max(reach[i], 0.0);
    double power = sign[i];
    for (std::size_t k = 0; k < n; ++k) power *= positive;
    sum += power;
  }
  return std::clamp(sum / all, 0.0, 0.5);
}

}  // namespace tankwright::numerics
