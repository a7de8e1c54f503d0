// SPDX-License-Identifier: BSL-1.0
/// @file
/// A second solution of the plate, by another way: Ritz's method. The energy of the plate is made least over
/// polynomials in x and y that keep the supported edges down; free edges need no condition. Nothing is shared with
/// the series of the library but the plate equation.
#pragma once

#include <cmath>
#include <cstddef>
#include <functional>
#include <numbers>
#include <vector>

namespace tankwright::testing {

/// Values of f, f', f'' of the basis functions at a point.
struct basis_values {
  std::vector<double> f, d, dd;
};

/// Legendre polynomials P_0 .. P_{n-1} with two derivatives at s in [-1, 1].
inline basis_values legendre(int n, double s) {
  basis_values p{std::vector<double>(std::size_t(n)), std::vector<double>(std::size_t(n)),
                 std::vector<double>(std::size_t(n))};
  p.f[0] = 1;
  if (n > 1) p.f[1] = s, p.d[1] = 1;
  for (std::size_t k = 1; k + 1 < std::size_t(n); ++k) {
    const double kk = static_cast<double>(k);
    p.f[k + 1] = ((2 * kk + 1) * s * p.f[k] - kk * p.f[k - 1]) / (kk + 1);
    p.d[k + 1] = (2 * kk + 1) * p.f[k] + p.d[k - 1];
    p.dd[k + 1] = (2 * kk + 1) * p.d[k] + p.dd[k - 1];
  }
  return p;
}

/// Gauss-Legendre points and weights on [a, b].
struct quadrature {
  std::vector<double> x, w;
  void add(double a, double b, int n) {
    for (int i = 0; i < n; ++i) {
      double s = std::cos(std::numbers::pi * (i + 0.75) / (n + 0.5));
      double slope = 0;
      for (int it = 0; it < 50; ++it) {
        const auto p = legendre(n + 1, s);
        slope = p.d[std::size_t(n)];
        const double step = p.f[std::size_t(n)] / slope;
        s -= step;
        if (std::fabs(step) < 1e-16) break;
      }
      x.push_back(0.5 * (a + b) + 0.5 * (b - a) * s);
      w.push_back((b - a) / ((1 - s * s) * slope * slope));
    }
  }
};

struct ritz_moments {
  double w, across, up, twist;
  [[nodiscard]] double principal() const {
    return std::fabs(0.5 * (across + up)) + std::hypot(0.5 * (across - up), twist);
  }
};

/// A plate of height 1 and width W, rigidity 1, under the pressure q(y).
class ritz_plate {
 public:
  struct edges {
    bool bottom_clamped;
    bool top_free;
  };

  ritz_plate(double width, double poisson, edges held, const std::function<double(double)>& q,
             const std::vector<double>& kinks = {})
      : width_{width}, nu_{poisson}, held_{held} {
    quadrature qx, qy;
    qx.add(0.0, 0.5 * width, 40);  // symmetric about the middle
    double from = 0.0;
    for (const double kink : kinks) qy.add(from, kink, 40), from = kink;
    qy.add(from, 1.0, 40);
    const std::size_t n = std::size_t(nx * ny);
    // Integrals of products, one direction at a time.
    const auto products = [](const quadrature& rule, std::size_t count, auto values) {
      std::vector<double> out(5 * count * count);
      for (std::size_t p = 0; p < rule.x.size(); ++p) {
        const basis_values v = values(rule.x[p]);
        for (std::size_t i = 0; i < count; ++i) {
          for (std::size_t j = 0; j < count; ++j) {
            double* o = &out[5 * (i * count + j)];
            o[0] += rule.w[p] * v.f[i] * v.f[j];
            o[1] += rule.w[p] * v.d[i] * v.d[j];
            o[2] += rule.w[p] * v.dd[i] * v.dd[j];
            o[3] += rule.w[p] * v.f[i] * v.dd[j];
            o[4] += rule.w[p] * v.dd[i] * v.f[j];
          }
        }
      }
      return out;
    };
    const auto X = products(qx, std::size_t(nx), [&](double x) { return in_x(x); });
    const auto Y = products(qy, std::size_t(ny), [&](double y) { return in_y(y); });
    std::vector<double> a(n * n);
    coefficients_.assign(n, 0.0);
    for (std::size_t r = 0; r < n; ++r) {
      const std::size_t ri = r / std::size_t(ny), rj = r % std::size_t(ny);
      for (std::size_t c = 0; c < n; ++c) {
        const double* x = &X[5 * (ri * std::size_t(nx) + c / std::size_t(ny))];
        const double* y = &Y[5 * (rj * std::size_t(ny) + c % std::size_t(ny))];
        a[r * n + c] = x[2] * y[0] + x[0] * y[2] + nu_ * (x[4] * y[3] + x[3] * y[4]) + 2 * (1 - nu_) * x[1] * y[1];
      }
      for (std::size_t px = 0; px < qx.x.size(); ++px) {
        for (std::size_t py = 0; py < qy.x.size(); ++py) {
          coefficients_[r] += qx.w[px] * qy.w[py] * q(qy.x[py]) * in_x(qx.x[px]).f[ri] * in_y(qy.x[py]).f[rj];
        }
      }
    }
    // Cholesky.
    for (std::size_t i = 0; i < n; ++i) {
      for (std::size_t j = 0; j <= i; ++j) {
        double s = a[i * n + j];
        for (std::size_t k = 0; k < j; ++k) s -= a[i * n + k] * a[j * n + k];
        a[i * n + j] = i == j ? std::sqrt(s) : s / a[j * n + j];
      }
    }
    for (std::size_t i = 0; i < n; ++i) {
      for (std::size_t k = 0; k < i; ++k) coefficients_[i] -= a[i * n + k] * coefficients_[k];
      coefficients_[i] /= a[i * n + i];
    }
    for (std::size_t i = n; i-- > 0;) {
      for (std::size_t k = i + 1; k < n; ++k) coefficients_[i] -= a[k * n + i] * coefficients_[k];
      coefficients_[i] /= a[i * n + i];
    }
  }

  [[nodiscard]] ritz_moments at(double x, double y) const {
    const auto fx = in_x(x), fy = in_y(y);
    double w = 0, xx = 0, yy = 0, xy = 0;
    for (std::size_t r = 0; r < coefficients_.size(); ++r) {
      const std::size_t i = r / std::size_t(ny), j = r % std::size_t(ny);
      w += coefficients_[r] * fx.f[i] * fy.f[j];
      xx += coefficients_[r] * fx.dd[i] * fy.f[j];
      yy += coefficients_[r] * fx.f[i] * fy.dd[j];
      xy += coefficients_[r] * fx.d[i] * fy.d[j];
    }
    return {w, -(xx + nu_ * yy), -(yy + nu_ * xx), -(1 - nu_) * xy};
  }

 private:
  static constexpr int nx = 9, ny = 14;

  /// factor(t) times Legendre polynomials.
  static basis_values times(const basis_values& p, double g, double dg, double ddg, double scale, std::size_t count,
                            std::size_t stride) {
    basis_values v{std::vector<double>(count), std::vector<double>(count), std::vector<double>(count)};
    for (std::size_t i = 0; i < count; ++i) {
      const double f = p.f[i * stride], d = p.d[i * stride] * scale, dd = p.dd[i * stride] * scale * scale;
      v.f[i] = g * f;
      v.d[i] = dg * f + g * d;
      v.dd[i] = ddg * f + 2 * dg * d + g * dd;
    }
    return v;
  }
  [[nodiscard]] basis_values in_x(double x) const {  // even about the middle, zero at both sides
    const double w = width_;
    return times(legendre(2 * nx - 1, 2 * x / w - 1), 4 * x * (w - x) / (w * w), 4 * (w - 2 * x) / (w * w),
                 -8 / (w * w), 2 / w, std::size_t(nx), 2);
  }
  [[nodiscard]] basis_values in_y(double y) const {
    double g = y, dg = 1, ddg = 0;
    if (held_.bottom_clamped) g = y * y, dg = 2 * y, ddg = 2;
    if (!held_.top_free) {
      const double f = g, df = dg;
      g = f * (1 - y), dg = df * (1 - y) - f, ddg = ddg * (1 - y) - 2 * df;
    }
    return times(legendre(ny, 2 * y - 1), g, dg, ddg, 2, std::size_t(ny), 1);
  }

  double width_, nu_;
  edges held_;
  std::vector<double> coefficients_;
};

}  // namespace tankwright::testing
