// SPDX-License-Identifier: BSL-1.0
/// @file
/// Integration of smooth functions: Gauss and Legendre's eight points on equal panels.
#pragma once

namespace tankwright::plumbing::detail {

/// The integral of f from a to b. Exact for polynomials of degree 15 on each panel.
template <class F>
[[nodiscard]] double integral(F f, double a, double b, int panels) {
  constexpr double node[] = {0.1834346424956498049394761, 0.5255324099163289858177390, 0.7966664774136267395915539,
                             0.9602898564975362316835609};
  constexpr double weight[] = {0.3626837833783619829651504, 0.3137066458778872873379622, 0.2223810344533744705443560,
                               0.1012285362903762591525314};
  const double half = 0.5 * (b - a) / panels;
  double sum = 0.0;
  for (int p = 0; p < panels; ++p) {
    const double middle = a + (2 * p + 1) * half;
    for (int i = 0; i < 4; ++i) sum += weight[i] * (f(middle - half * node[i]) + f(middle + half * node[i]));
  }
  return sum * half;
}

}  // namespace tankwright::plumbing::detail
