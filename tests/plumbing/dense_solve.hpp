// SPDX-License-Identifier: BSL-1.0
/// @file
/// Gaussian elimination with partial pivoting, as in a textbook: what the library's elimination is held against.
#pragma once

#include <cmath>
#include <utility>
#include <vector>

namespace tankwright::testing {

/// The solution of rows of coefficients, the right side last in each.
inline std::vector<double> dense_solve(std::vector<std::vector<double>> a) {
  const std::size_t n = a.size();
  for (std::size_t i = 0; i < n; ++i) {
    std::size_t p = i;
    for (std::size_t r = i; r < n; ++r) p = std::fabs(a[r][i]) > std::fabs(a[p][i]) ? r : p;
    std::swap(a[i], a[p]);
    for (std::size_t r = i + 1; r < n; ++r) {
      const double m = a[r][i] / a[i][i];
      for (std::size_t c = i; c <= n; ++c) a[r][c] -= m * a[i][c];
    }
  }
  std::vector<double> x(n, 0.0);
  for (std::size_t i = n; i-- > 0;) {
    x[i] = a[i][n];
    for (std::size_t c = i + 1; c < n; ++c) x[i] -= a[i][c] * x[c];
    x[i] /= a[i][i];
  }
  return x;
}

}  // namespace tankwright::testing
