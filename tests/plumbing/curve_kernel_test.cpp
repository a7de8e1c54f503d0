// SPDX-License-Identifier: BSL-1.0
/// @file
/// Pump curves on raw numbers, with slopes and best points worked out by hand.
#include <tankwright/plumbing/detail/curve_kernel.hpp>

#include <cmath>
#include <cstddef>
#include <utility>
#include <vector>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using tankwright::plumbing::detail::curve_data;
using tankwright::plumbing::detail::set_best_point;
using tankwright::plumbing::detail::set_slopes;
using tankwright::plumbing::detail::value_on_curve;

namespace {

const evidence slopes{"tankwright::plumbing::curve_from_points", kind::identity,
                      "slopes of Fritsch and Butland 1984 by hand"};
const evidence cubic{"tankwright::plumbing::head_at", kind::identity, "Hermite's cubic in its four polynomials"};
const evidence power_law{"tankwright::plumbing::head_at", kind::identity, "H = A - B Q^C and its slope by hand"};
const evidence best{"tankwright::plumbing::best_point", kind::identity,
                    "flow times head is largest where H + Q dH/dQ = 0"};

curve_data through(std::vector<double> q, std::vector<double> h) {
  curve_data curve;
  curve.q = std::move(q);
  curve.h = std::move(h);
  curve.shutoff = curve.h.front();
  curve.end_flow = curve.q.back();
  curve.end_head = curve.h.back();
  set_slopes(curve);
  return curve;
}
curve_data powers(double shutoff, double b, double c, double end) {
  curve_data curve;
  curve.shutoff = shutoff;
  curve.b = b;
  curve.c = c;
  curve.end_flow = end;
  return curve;
}

/// Head and slope of the segment from point i, by Hermite's four polynomials.
std::pair<double, double> hermite(const curve_data& k, std::size_t i, double q) {
  const double w = k.q[i + 1] - k.q[i], t = (q - k.q[i]) / w;
  const double h0 = k.h[i], h1 = k.h[i + 1], m0 = w * k.m[i], m1 = w * k.m[i + 1];
  return {h0 * (1 + 2 * t) * (1 - t) * (1 - t) + h1 * t * t * (3 - 2 * t) + m0 * t * (1 - t) * (1 - t) -
              m1 * t * t * (1 - t),
          (6 * t * (1 - t) * (h1 - h0) + m0 * (1 - t) * (1 - 3 * t) + m1 * t * (3 * t - 2)) / w};
}

}  // namespace

TEST_CASE("curve: slopes at the points are weighted harmonic means, at the ends those of a parabola") {
  // Widths 1, 2, 1; secants -1, -3/2, -4.
  const curve_data curve = through({0.0, 1.0, 3.0, 4.0}, {10.0, 9.0, 6.0, 2.0});
  const double expected[] = {(4.0 * -1.0 - 1.0 * -1.5) / 3.0,  // ((2 w0 + w1) s0 - w0 s1)/(w0 + w1)
                             9.0 / (5.0 / -1.0 + 4.0 / -1.5),  // w1 = 2*2 + 1, w2 = 2 + 2*1
                             9.0 / (4.0 / -1.5 + 5.0 / -4.0),  // w1 = 2*1 + 2, w2 = 1 + 2*2
                             (4.0 * -4.0 - 1.0 * -1.5) / 3.0};
  for (std::size_t i = 0; i < 4; ++i) TW_CHECK(slopes, curve.m[i], expected[i], relative(1e-14));
  // A parabola that would rise at an end lies flat there; one that hardly falls does not.
  TW_CHECK(slopes, through({0.0, 1.0, 2.0}, {10.0, 9.9, 5.0}).m[0], 0.0, tolerance{});
  TW_CHECK(slopes, through({0.0, 1.0, 2.0}, {10.0, 5.0, 4.9}).m[2], 0.0, tolerance{});
  TW_CHECK(slopes, through({0.0, 1.0, 2.0}, {10.0, 9.0, 6.001}).m[0], -0.0005, relative(1e-9));
  // Two points have one secant, and three on a line too.
  for (const double m : through({0.0, 2.0}, {10.0, 4.0}).m) TW_CHECK(slopes, m, -3.0, relative(1e-15));
  for (const double m : through({0.0, 0.5, 2.0}, {10.0, 8.5, 4.0}).m) TW_CHECK(slopes, m, -3.0, relative(1e-14));
}

TEST_CASE("curve: between points the cubic that meets both in head and slope") {
  const curve_data curve = through({0.0, 1.0, 3.0, 4.0}, {10.0, 9.0, 6.0, 2.0});
  for (std::size_t i = 0; i < 3; ++i) {
    for (const double part : {0.0, 1e-9, 0.25, 0.6, 1.0 - 1e-9}) {
      const double q = curve.q[i] + part * (curve.q[i + 1] - curve.q[i]);
      const auto [h, slope] = hermite(curve, i, q);
      TW_CHECK(cubic, value_on_curve(curve, q).head, h, relative(1e-14));
      TW_CHECK(cubic, value_on_curve(curve, q).gradient, slope, relative(1e-12));
    }
  }
  TW_CHECK(cubic, value_on_curve(curve, 4.0).head, 2.0, relative(1e-15));
  TW_CHECK(cubic, value_on_curve(curve, 4.0).gradient, -14.5 / 3.0, relative(1e-13));
}

TEST_CASE("curve: a power law, and its straight start where the power is below one") {
  for (const double c : {1.0, 1.5, 2.0, 2.002, 3.0, 20.0}) {
    const curve_data curve = powers(9.0, 0.7, c, 1.5);
    for (const double q : {1e-9, 0.3, 1.0, 1.5}) {
      TW_CHECK(power_law, value_on_curve(curve, q).head, 9.0 - 0.7 * std::pow(q, c), relative(1e-14));
      TW_CHECK(power_law, value_on_curve(curve, q).gradient, -0.7 * c * std::pow(q, c - 1.0), relative(1e-13));
    }
    TW_CHECK(power_law, value_on_curve(curve, 0.0).head, 9.0, tolerance{});
    TW_CHECK(power_law, value_on_curve(curve, 0.0).gradient, c == 1.0 ? -0.7 : 0.0, tolerance{});
  }
  // Hardly above a line it begins flat and has no straight start.
  const curve_data hardly = powers(9.0, 0.7, 1.0005, 1.5);
  TW_CHECK(power_law, value_on_curve(hardly, 0.0).gradient, 0.0, tolerance{});
  TW_CHECK(power_law, value_on_curve(hardly, 1e-6).gradient, -0.7 * 1.0005 * std::pow(1e-6, 0.0005), relative(1e-13));
  const curve_data root = powers(9.0, 0.7, 0.5, 1.5);
  const double least = 1e-6 * 1.5, steepest = 0.7 / std::sqrt(least);
  for (const double part : {0.0, 0.5, 0.999}) {
    TW_CHECK(power_law, value_on_curve(root, part * least).head, 9.0 - steepest * part * least, relative(1e-15));
    TW_CHECK(power_law, value_on_curve(root, part * least).gradient, -steepest, relative(1e-14));
  }
  for (const double part : {1.0, 1.001, 1e6}) {  // from there on the law itself, which has half of that slope
    TW_CHECK(power_law, value_on_curve(root, part * least).head, 9.0 - 0.7 * std::sqrt(part * least), relative(1e-14));
    TW_CHECK(power_law, value_on_curve(root, part * least).gradient, -0.35 / std::sqrt(part * least), relative(1e-13));
  }
}

TEST_CASE("curve: the best point of a power law, inside it or at its end") {
  curve_data curve = powers(9.0, 0.7, 2.0, 3.5);
  set_best_point(curve);
  TW_CHECK(best, curve.best_flow, std::sqrt(9.0 / 2.1), relative(1e-14));  // A = (C + 1) B Q^C
  TW_CHECK(best, curve.best_head, 6.0, relative(1e-14));
  curve = powers(9.0, 0.7, 2.0, 1.5);
  set_best_point(curve);
  TW_CHECK(best, curve.best_flow, 1.5, tolerance{});
  TW_CHECK(best, curve.best_head, 9.0 - 0.7 * 2.25, relative(1e-14));
}

TEST_CASE("curve: the best point of a line is half of where it would end, or its own end") {
  for (const double peak : {32.3, 32.7, 40.0, 62.9, 63.4}) {  // in sixty-fourths of the end
    const double whole = 2.0 * peak / 64.0;                   // where 10 (1 - q/whole) would end
    curve_data line = through({0.0, 0.4, 1.0}, {10.0, 10.0 - 4.0 / whole, 10.0 - 10.0 / whole});
    set_best_point(line);
    TW_CHECK(best, line.best_flow, peak / 64.0, relative(1e-13));
    TW_CHECK(best, line.best_head, 5.0, relative(1e-13));
  }
  curve_data rising = through({0.0, 2.0}, {10.0, 6.0});
  set_best_point(rising);
  TW_CHECK(best, rising.best_flow, 2.0, tolerance{});
  TW_CHECK(best, rising.best_head, 6.0, relative(1e-15));
}

TEST_CASE("curve: of several peaks the best point is the highest, wherever it lies") {
  struct {
    std::vector<double> q, h;
    double place;  // in sixty-fourths of the end
    bool at_end = false;
  } const cases[] = {{{0.0, 0.02, 1.0}, {10.0, 0.1, 0.001}, 0.504},              // before the first of them
                     {{0.0, 0.06, 1.0}, {10.0, 0.1, 0.001}, 1.506},              // before the second
                     {{0.0, 0.032, 0.04, 1.0}, {10.0, 9.0, 0.1, 0.001}, 2.065},  // after it, and little at the third
                     {{0.0, 0.0375, 0.040625, 0.0515625, 0.05625, 1.0},          // a lower one shortly before it
                      {10.1, 10.0, 8.0, 7.9, 1.0, 0.01},
                      3.30},
                     {{0.0, 0.24, 0.28, 0.52, 0.56, 1.0}, {10.0, 9.0, 5.0, 4.9, 1.0, 0.5}, 33.3},
                     {{0.0, 0.31, 0.35, 1.0}, {10.0, 8.0, 2.6, 2.5}, 64.0, true}};
  for (const auto& each : cases) {
    curve_data curve = through(each.q, each.h);
    set_best_point(curve);
    TW_CHECK(best, curve.best_flow, each.place / 64.0, relative(0.01));
    TW_CHECK(best, curve.best_head, value_on_curve(curve, curve.best_flow).head, tolerance{});
    std::size_t i = 0;
    while (i + 2 < curve.q.size() && curve.best_flow > curve.q[i + 1]) ++i;
    const auto [h, slope] = hermite(curve, i, curve.best_flow);
    TW_HOLDS(best, each.at_end ? h + slope * curve.best_flow > 0.0 : std::fabs(h + slope * curve.best_flow) < 1e-11);
    for (int part = 0; part <= 5000; ++part) {
      const double q = part / 5000.0;
      i = 0;
      while (i + 2 < curve.q.size() && q > curve.q[i + 1]) ++i;
      CHECK(q * hermite(curve, i, q).first <= curve.best_flow * curve.best_head * (1.0 + 1e-13));
    }
  }
}
