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
  double shutoff = 0.0;   // head at zero flow
  double end_flow = 0.0;  // the last point
  double end_head = 0.0;
  // Without points H = shutoff - b Q^c.
  double b = 0.0;
  double c = 1.0;
  // Points and slopes dH/dQ of the cubic through them.
  std::vector<double> q{}, h{}, m{};
};

struct curve_value {
  double head;
  double slope;  // dH/dQ, not above zero
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
    if (flow <= 0.0) return {curve.shutoff, curve.c > 1.0 ? 0.0 : -curve.b};
    const double fall = curve.b * (curve.c == 2.0 ? flow * flow : std::pow(flow, curve.c));
    return {curve.shutoff - fall, -curve.c * fall / flow};
  }
  std::size_t i = 0;
  while (i + 2 < curve.q.size() && flow >= curve.q[i + 1]) ++i;
  return value_in_segment(curve, i, flow);
}

}  // namespace tankwright::plumbing::detail
