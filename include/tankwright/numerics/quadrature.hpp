// SPDX-License-Identifier: BSL-1.0
/// @file
/// Integration of smooth functions: Gauss and Legendre's eight points on a panel.
#pragma once

namespace tankwright::numerics {

/// Calls use(x, weight) for the eight points of a panel from a to b. Exact for polynomials of degree 15.
template <class Use>
void gauss_points(double a, double b, Use use) {
  constexpr double node[] = {0.1834346424956498049394761, 0.5255324099163289858177390, 0.7966664774136267395915539,
                             0.9602898564975362316835609};
  constexpr double weight[] = {0.3626837833783619829651504, 0.3137066458778872873379622, 0.2223810344533744705443560,
                               0.1012285362903762591525314};
  const double half = 0.5 * (b - a), middle = a + half;
  for (int i = 0; i < 4; ++i) {
    use(middle - half * node[i], half * weight[i]);
    use(middle + half * node[i], half * weight[i]);
  }
}

/// The integral of f from a to b on equal panels.
template <class F>
[[nodiscard]] double integral(F f, double a, double b, int panels) {
  const double width = (b - a) / panels;
  double sum = 0.0;
  for (int p = 0; p < panels; ++p) {
    gauss_points(a + p * width, a + (p + 1) * width, [&](double x, double weight) { sum += weight * f(x); });
  }
  return sum;
}

}  // namespace tankwright::numerics
