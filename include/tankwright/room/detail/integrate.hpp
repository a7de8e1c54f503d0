// SPDX-License-Identifier: BSL-1.0
/// @file
/// One step of the classical Runge-Kutta method, for the slow and smooth courses of a tank.
#pragma once

namespace tankwright::room::detail {

/// y(t + h) from y(t) and dy/dt = f(t, y).
template <class F>
[[nodiscard]] double runge_kutta(F f, double t, double y, double h) {
  const double k1 = f(t, y);
  const double k2 = f(t + 0.5 * h, y + 0.5 * h * k1);
  const double k3 = f(t + 0.5 * h, y + 0.5 * h * k2);
  const double k4 = f(t + h, y + h * k3);
  return y + h / 6.0 * (k1 + 2.0 * (k2 + k3) + k4);
}

}  // namespace tankwright::room::detail
