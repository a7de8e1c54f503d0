// SPDX-License-Identifier: BSL-1.0
/// @file
/// A straight line through points by least squares, with the standard errors of its two coefficients.
#pragma once

#include <cmath>
#include <cstddef>
#include <span>

#include <tankwright/core/validity.hpp>

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

/// The straight line through points by ordinary least squares, about the mean, which keeps the digits when x is far
/// from zero.
///
///   slope = Sxy / Sxx,   intercept = y_mean - slope x_mean,   s^2 = sum of squared residuals / (n - 2)
///
/// @param x three numbers or more, not all the same
/// @param y as many
/// @return  coefficients, their standard errors, the scatter about the line
/// @throws  invalid_input for too few points, for spans of different sizes, for what is not finite or beyond 1e100, and
///          where all x are the same
/// @accuracy 1e-9 relative on certified sets of NIST StRD
/// @source  the normal equations
template <class T>
[[nodiscard]] line_fit<T> fit_line(std::span<const T> x, std::span<const T> y) {
  constexpr std::string_view here = "tankwright::numerics::fit_line";
  core::check(here, {"number of points", "", {3.0, 1e15}}, static_cast<double>(x.size()));
  core::check(here, {"number of y", "", {static_cast<double>(x.size()), static_cast<double>(x.size())}},
              static_cast<double>(y.size()));
  for (std::size_t i = 0; i < x.size(); ++i) {
    core::check(here, {"x", "", {-1e100, 1e100}}, static_cast<double>(x[i]));
    core::check(here, {"y", "", {-1e100, 1e100}}, static_cast<double>(y[i]));
  }
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
  if (!(sxx > T(0))) core::fail<invalid_input>(here, "x", static_cast<double>(mean_x), "", "is the same in all points");
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
