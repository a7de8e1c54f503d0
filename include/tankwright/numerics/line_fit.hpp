// SPDX-License-Identifier: BSL-1.0
/// @file
/// A straight line through points by least squares, with the standard errors of its two coefficients.
#pragma once

#include <cmath>
#include <cstddef>
#include <span>

namespace tankwright::numerics {

/// y = intercept + slope x.
template <class T>
struct line_fit {
  T intercept;
  T slope;
  T intercept_error;  ///< standard errors
  T slope_error;
  T scatter;  ///< residual standard deviation, n - 2 degrees of freedom
  T mean_x;
  T sxx;  ///< sum of (x - mean)^2
};

/// Ordinary least squares about the mean, which keeps the digits when x is far from zero. At least three points.
template <class T>
[[nodiscard]] line_fit<T> fit_line(std::span<const T> x, std::span<const T> y) {
  const T n = static_cast<T>(x.size());
  T mean_x = 0;
  T mean_y = 0;
  for (std::size_t i = 0; i < x.size(); ++i) mean_x += x[i], mean_y += y[i];
  mean_x /= n;
  mean_y /= n;
  T sxx = 0;
  T sxy = 0;
  for (std::size_t i = 0; i < x.size(); ++i) {
    const T dx = x[i] - mean_x;
    sxx += dx * dx;
    sxy += dx * (y[i] - mean_y);
  }
  const T slope = sxy / sxx;
  T squares = 0;
  for (std::size_t i = 0; i < x.size(); ++i) {
    const T residual = (y[i] - mean_y) - slope * (x[i] - mean_x);
    squares += residual * residual;
  }
  const T scatter = std::sqrt(squares / (n - T(2)));
  return {mean_y - slope * mean_x,
          slope,
          scatter * std::sqrt(T(1) / n + mean_x * mean_x / sxx),
          scatter / std::sqrt(sxx),
          scatter,
          mean_x,
          sxx};
}

}  // namespace tankwright::numerics
