// SPDX-License-Identifier: BSL-1.0
/// @file
/// Integration of smooth functions: Gauss and Legendre's eight points on a panel.
#pragma once

#include <tankwright/core/validity.hpp>

namespace tankwright::numerics {

/// Calls use(x, weight) for the eight points of a panel.
///
/// @param a   where the panel starts
/// @param b   where it ends
/// @param use any callable on a point and its weight; the weights add up to b - a
/// @throws    what `use` throws
/// @accuracy  exact for polynomials of degree 15
/// @source    Gauss and Legendre; nodes and weights of Abramowitz and Stegun 1964, table 25.4
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
///
/// @param f      any smooth callable on a number; called eight times for each panel
/// @param a      where the integral starts
/// @param b      where it ends
/// @param panels 1 to 1 000 000
/// @return       the integral; negative when b lies below a and f is positive
/// @throws       invalid_input (names the argument and its value); what f throws
/// @accuracy     exact for polynomials of degree 15
/// @source       Gauss and Legendre
template <class F>
[[nodiscard]] double integral(F f, double a, double b, int panels) {
  core::check("tankwright::numerics::integral", {"panels", "", {1.0, 1e6}}, panels);
  const double width = (b - a) / panels;
  double sum = 0.0;
  for (int p = 0; p < panels; ++p) {
    gauss_points(a + p * width, a + (p + 1) * width, [&](double x, double weight) { sum += weight * f(x); });
  }
  return sum;
}

}  // namespace tankwright::numerics
