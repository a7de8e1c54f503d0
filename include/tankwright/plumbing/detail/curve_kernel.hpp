// SPDX-License-Identifier: BSL-1.0
/// @file
/// A pump curve on raw numbers: a power law or a monotone cubic through points.
#pragma once

#include <cmath>
#include <cstddef>
#include <string>
#include <vector>

namespace tankwright::plumbing::detail {

/// Head against flow between zero flow and the last point; flows in m^3/s, heads in m.
struct curve_data {
  std::string label{};
  double shutoff{};   // head at zero flow
  double end_flow{};  // the last point
  double end_head{};
  double best_flow{};  // where flow times head is largest: the best point, or near it
  double best_head{};
  // Without points H = shutoff - b Q^c.
  double b{};
  double c{};
  // Points and slopes dH/dQ of the cubic through them.
  std::vector<double> q{}, h{}, m{};
};

/// A power below one begins infinitely steep: it is taken straight up to this part of the end of the curve.
inline constexpr double straight_start = 1e-6;

struct curve_value {
  double head;
  double gradient;  // dH/dQ, not above zero
};

/// Slopes of the monotone cubic: inside the weighted harmonic mean of Fritsch and Butland 1984 (a falling curve stays
/// falling), at the ends the parabola through three points.
inline void set_slopes(curve_data& curve) {
  const std::size_t last = curve.q.size() - 1;
  const auto width = [&](std::size_t i) { return curve.q[i + 1] - curve.q[i]; };
  const auto secant = [&](std::size_t i) { return (curve.h[i + 1] - curve.h[i]) / width(i); };
  curve.m.assign(last + 1, secant(0));
  if (last == 1) return;
  for (std::size_t i = 1; i < last; ++i) {
    const double w1 = 2.0 * width(i) + width(i - 1);
    const double w2 = width(i) + 2.0 * width(i - 1);
    curve.m[i] = (w1 + w2) / (w1 / secant(i - 1) + w2 / secant(i));
  }
  const auto at_end = [](double w0, double w1, double s0, double s1) {
    const double slope = ((2.0 * w0 + w1) * s0 - w0 * s1) / (w0 + w1);
    return slope < 0.0 ? slope : 0.0;
  };
  curve.m[0] = at_end(width(0), width(1), secant(0), secant(1));
  curve.m[last] = at_end(width(last - 1), width(last - 2), secant(last - 1), secant(last - 2));
}

/// The cubic of the segment from point i to the next.
[[nodiscard]] inline curve_value value_in_segment(const curve_data& curve, std::size_t i, double flow) noexcept {
  const double w = curve.q[i + 1] - curve.q[i];
  const double x = (flow - curve.q[i]) / w;
  const double rise = curve.h[i + 1] - curve.h[i];
  const double d0 = curve.m[i] * w;
  const double d1 = curve.m[i + 1] * w;
  const double c2 = 3.0 * rise - 2.0 * d0 - d1;
  const double c3 = d0 + d1 - 2.0 * rise;
  return {curve.h[i] + x * (d0 + x * (c2 + x * c3)), (d0 + x * (2.0 * c2 + x * 3.0 * c3)) / w};
}

/// Head and slope at a flow from 0 to the end of the curve.
[[nodiscard]] inline curve_value value_on_curve(const curve_data& curve, double flow) noexcept {
  if (curve.q.empty()) {
    const double least = straight_start * curve.end_flow;
    if (curve.c < 1.0 && flow < least) {
      const double steepest = curve.b * std::pow(least, curve.c) / least;
      return {curve.shutoff - steepest * flow, -steepest};
    }
    if (flow <= 0.0) return {curve.shutoff, curve.c > 1.0 ? 0.0 : -curve.b};
    const double fall = curve.b * (curve.c == 2.0 ? flow * flow : std::pow(flow, curve.c));
    return {curve.shutoff - fall, -curve.c * fall / flow};
  }
  std::size_t i = 0;
  while (i + 2 < curve.q.size() && flow >= curve.q[i + 1]) ++i;
  return value_in_segment(curve, i, flow);
}

/// Find the best point of a finished curve whose head begins above zero.
inline void set_best_point(curve_data& curve) {
  if (curve.q.empty()) {
    const double best = std::pow(curve.shutoff / ((curve.c + 1.0) * curve.b), 1.0 / curve.c);
    curve.best_flow = best < curve.end_flow ? best : curve.end_flow;
    curve.best_head = value_on_curve(curve, curve.best_flow).head;
    return;
  }
  const auto power = [&](double q) { return q * value_on_curve(curve, q).head; };
  constexpr int parts = 64;  // a curve through points may have more than one peak
  int best = 1;
  for (int i = 2; i <= parts; ++i) {
    if (power(curve.end_flow * i / parts) > power(curve.end_flow * best / parts)) best = i;
  }
  double low = curve.end_flow * (best - 1) / parts;
  double high = curve.end_flow * (best < parts ? best + 1 : parts) / parts;
  for (;;) {  // halves, until there is no number between
    const double middle = 0.5 * (low + high);
    if (!(low < middle && middle < high)) break;
    const curve_value there = value_on_curve(curve, middle);
    (there.head + middle * there.gradient > 0.0 ? low : high) = middle;
  }
  curve.best_flow = high;
  curve.best_head = value_on_curve(curve, curve.best_flow).head;
}

}  // namespace tankwright::plumbing::detail
