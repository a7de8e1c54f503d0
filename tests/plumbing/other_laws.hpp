// SPDX-License-Identifier: BSL-1.0
/// @file
/// Other laws of head loss for the circuit solver: EPANET's, with its own constants, and Hazen-Williams.
#pragma once

#include <cmath>
#include <tankwright/plumbing/detail/network.hpp>

namespace tankwright::testing {

/// EPANET's Darcy-Weisbach (src/hydcoeffs.c): feet and cubic feet per second, g = 32.2, nu = 1.1e-5 ft^2/s, Hagen and
/// Poiseuille below Re 2000, Dunlop's cubic up to 4000, Swamee and Jain above; minor losses with 0.02517.
struct epanet_law {
  struct memory {
    [[nodiscard]] static bool settled() { return true; }
  };
  struct prepared {
    double viscous;  // nu D
    double e;        // relative roughness
    double wall;     // of f q^2
    double minor;    // of q^2
  };

  [[nodiscard]] static prepared prepare(const plumbing::detail::run_numbers<double>& run) {
    constexpr double pi = 3.141592653589793;
    const double area = pi * run.d * run.d / 4.0;
    return {1.1e-5 * run.d, run.e / run.d, run.l / 2.0 / 32.2 / run.d / (area * area),
            0.02517 * run.k / (run.d * run.d * run.d * run.d)};
  }

  [[nodiscard]] plumbing::detail::loss_and_gradient<double> operator()(const prepared& run, double q, memory&) const {
    constexpr double pi = 3.141592653589793;
    constexpr double minus_two_over_ln10 = -0.8685889638;
    const double w = q / run.viscous;  // Re pi/4
    if (w <= 500.0 * pi) {
      const double r = 16.0 * pi * run.viscous * run.wall;
      return {q * (r + run.minor * q), r + 2.0 * run.minor * q};
    }
    double f = 0.0, df = 0.0;  // df/dq
    if (w >= 1000.0 * pi) {
      const double y1 = 4.61841319859 / std::pow(w, 0.9);  // 5.74 (pi/4)^0.9
      const double y2 = run.e / 3.7 + y1;
      const double y3 = minus_two_over_ln10 * std::log(y2);
      f = 1.0 / (y3 * y3);
      df = 1.8 * f * y1 * minus_two_over_ln10 / y2 / y3 / q;
    } else {
      const double y2 = run.e / 3.7 + 3.28895476345e-3;  // 5.74/4000^0.9
      const double y3 = minus_two_over_ln10 * std::log(y2);
      const double fa = 1.0 / (y3 * y3);
      const double fb = (2.0 + -5.14214965799e-3 / (y2 * y3)) * fa;
      const double r = w / (500.0 * pi);
      const double x1 = 7.0 * fa - fb, x2 = 0.128 - 17.0 * fa + 2.5 * fb;
      const double x3 = -0.128 + 13.0 * fa - 2.0 * fb, x4 = 0.032 - 3.0 * fa + 0.5 * fb;
      f = x1 + r * (x2 + r * (x3 + r * x4));
      df = (x2 + r * (2.0 * x3 + r * 3.0 * x4)) / run.viscous / (500.0 * pi);
    }
    const double r = run.wall * f + run.minor;
    return {r * q * q, 2.0 * r * q + df * run.wall * q * q};
  }
};

/// Hazen and Williams in metres, with minor losses.
struct hazen_williams_law {
  double c;
  struct memory {
    [[nodiscard]] static bool settled() { return true; }
  };
  struct prepared {
    double wall;   // of q^1.852
    double minor;  // of q^2
  };

  [[nodiscard]] prepared prepare(const plumbing::detail::run_numbers<double>& run) const {
    constexpr double pi = 3.141592653589793;
    return {10.67 * run.l / (std::pow(c, 1.852) * std::pow(run.d, 4.8704)),
            8.0 * run.k / (pi * pi * 9.80665 * std::pow(run.d, 4))};
  }

  [[nodiscard]] plumbing::detail::loss_and_gradient<double> operator()(const prepared& run, double q, memory&) const {
    const double wall = run.wall * std::pow(q, 0.852);
    return {wall * q + run.minor * q * q, 1.852 * wall + 2.0 * run.minor * q};
  }
};

/// Constant friction factor, so that a split of flows has a closed form.
struct constant_law {
  double f;
  struct memory {
    [[nodiscard]] static bool settled() { return true; }
  };
  struct prepared {
    double all;
  };
  [[nodiscard]] prepared prepare(const plumbing::detail::run_numbers<double>& run) const {
    constexpr double pi = 3.141592653589793;
    return {8.0 * (f * run.l / run.d + run.k) / (pi * pi * 9.80665 * std::pow(run.d, 4))};
  }
  [[nodiscard]] plumbing::detail::loss_and_gradient<double> operator()(const prepared& run, double q, memory&) const {
    return {run.all * q * q, 2.0 * run.all * q};
  }
};

}  // namespace tankwright::testing
