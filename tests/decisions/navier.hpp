// SPDX-License-Identifier: BSL-1.0
/// @file
/// A plate on four supported edges with water to its upper edge, by Navier's double sine series (Timoshenko 1959,
/// art. 30): slow, and nothing in common with the library's solution.
#pragma once

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace tankwright::testing {

struct bent_plate {
  double stress;      ///< from the largest principal moment [Pa]
  double deflection;  ///< [m]
};

struct plate {
  double width, height, thickness;  ///< [m]
  double modulus;                   ///< [Pa]
  double poisson;

  [[nodiscard]] bent_plate under_water(double density) const {
    constexpr double pi = std::numbers::pi;
    constexpr int terms = 61, steps = 40;
    const double q0 = density * 9.80665 * height;
    const double stiffness = modulus * std::pow(thickness, 3) / (12.0 * (1.0 - poisson * poisson));
    double largest = 0.0, sag = 0.0;
    for (int i = 0; i <= steps / 2; ++i) {
      for (int j = 0; j <= steps; ++j) {
        const double x = width * i / steps, y = height * j / steps;
        double w = 0.0, across = 0.0, up = 0.0, twist = 0.0;
        for (int m = 1; m <= terms; m += 2) {
          const double kx = m * pi / width, sx = std::sin(kx * x), cx = std::cos(kx * x);
          for (int n = 1; n <= terms; ++n) {
            const double ky = n * pi / height, sy = std::sin(ky * y), cy = std::cos(ky * y);
            const double k = kx * kx + ky * ky;
            const double part = 8.0 * q0 / (m * n * pi * pi) / (k * k);  // of q0 (1 - y/H)
            w += part / stiffness * sx * sy;
            across += part * (kx * kx + poisson * ky * ky) * sx * sy;
            up += part * (ky * ky + poisson * kx * kx) * sx * sy;
            twist += part * (1.0 - poisson) * kx * ky * cx * cy;
          }
        }
        sag = std::max(sag, w);
        largest = std::max(largest, 0.5 * (across + up) + std::hypot(0.5 * (across - up), twist));
      }
    }
    return {6.0 * largest / (thickness * thickness), sag};
  }
};

}  // namespace tankwright::testing
