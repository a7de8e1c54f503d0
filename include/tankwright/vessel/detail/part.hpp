// SPDX-License-Identifier: BSL-1.0
/// @file
/// The three kinds of hollow that all shapes are made of, on raw numbers: volume, free surface and wetted wall as
/// functions of the depth above the part's own floor.
#pragma once

#include <cmath>
#include <numbers>
#include <tankwright/numerics/solids.hpp>

namespace tankwright::vessel::detail {

enum class part_kind { prism, lying_cylinder, cone };

/// One hollow. `dimension` holds: prism: horizontal area, outline; lying cylinder: radius, length, depth of each head;
/// cone (frustum): radius at the floor, radius at the top.
struct part {
  part_kind kind;
  double floor;   ///< height of its floor in the vessel
  double height;  ///< of the part itself
  double dimension[3];
  double floor_area;  ///< bottom that gets wet: all of it, or the ledge that is left where it opens onto a part below
};

using numerics::kernel::chord_angle, numerics::kernel::segment_area, numerics::kernel::x_minus_sin;

/// Wetted wall of two half-ellipsoid heads (depth a each, radius r) at height h.
///
///   S = 4 r integral over u in [0, U] of psi sqrt(a^2 + (r^2 - a^2) u^2) du,   u = x/a,
///   psi half the wetted angle of the circle at u, U the reach of the water line; u = U sin(theta).
/// Near half full psi falls steeply at the end, hence the double-exponential rule. The dry cap of h is the wetted cap
/// of 2 r - h.
template <class T>
[[nodiscard]] T heads_wall(T r, T a, T h) noexcept {
  constexpr T pi = std::numbers::pi_v<T>;
  const T rise = std::fabs(r - h);
  const T reach = std::sqrt((r - rise) * (r + rise)) / r;
  const T c = (r - a) * (r + a);
  constexpr T step = T(0.1L);
  T sum = T(0);
  for (int i = -34; i <= 34; ++i) {
    const T t = step * T(i);
    const T s = T(1) / (T(1) + std::exp(pi * std::sinh(t)));  // distance from the end, as part of the way
    const T from_end = pi / T(2) * s;
    const T u = reach * std::cos(from_end), slope = reach * std::sin(from_end);
    const T weight = pi / T(2) * pi * std::cosh(t) * s * (T(1) - s);
    sum += weight * std::atan2(r * slope, rise) * std::sqrt(a * a + c * u * u) * slope;
  }
  const T cap = T(4) * r * step * sum;
  if (h <= r) return cap;
  const T root = std::sqrt(std::fabs(c));
  T curve = a * (T(1) - c / (T(6) * a * a));  // a sphere, or so near to one that the next term is lost
  if (root > T(1e-4L) * r) curve = a * a / root * (c > T(0) ? std::asinh(root / a) : std::asin(root / a));
  return T(2) * pi * r * (r + curve) - cap;
}

[[nodiscard]] inline double part_volume(const part& p, double h) noexcept {
  const double(&d)[3] = p.dimension;
  switch (p.kind) {
    case part_kind::prism:
      return d[0] * h;
    case part_kind::lying_cylinder:
      return numerics::kernel::lying_cylinder_volume(d[0], d[1], d[2], h);
    case part_kind::cone:
      return numerics::kernel::frustum_volume(d[0], d[1], p.height, h);
  }
  return {};
}

[[nodiscard]] inline double part_plan(const part& p, double h) noexcept {
  const double(&d)[3] = p.dimension;
  switch (p.kind) {
    case part_kind::prism:
      return d[0];
    case part_kind::lying_cylinder: {
      const double half_chord_squared = h * (2.0 * d[0] - h);
      return 2.0 * std::sqrt(half_chord_squared) * d[1] + std::numbers::pi * d[2] / d[0] * half_chord_squared;
    }
    case part_kind::cone: {
      const double r = numerics::kernel::frustum_radius(d[0], d[1], p.height, h);
      return std::numbers::pi * r * r;
    }
  }
  return {};
}

/// Wetted wall without the floor.
[[nodiscard]] inline double part_wall(const part& p, double h) noexcept {
  const double(&d)[3] = p.dimension;
  switch (p.kind) {
    case part_kind::prism:
      return d[1] * h;
    case part_kind::lying_cylinder: {
      const double shell = d[1] * d[0] * chord_angle(d[0], h);
      return shell + (d[2] == 0.0 ? 2.0 * segment_area(d[0], h) : heads_wall(d[0], d[2], h));
    }
    case part_kind::cone: {
      const double r = numerics::kernel::frustum_radius(d[0], d[1], p.height, h);
      return std::numbers::pi * (d[0] + r) * std::hypot(h, r - d[0]);
    }
  }
  return {};
}

/// Depth in a cone that holds a volume.
[[nodiscard]] inline double cone_depth(const part& p, double volume) noexcept {
  return numerics::kernel::frustum_height(p.dimension[0], p.dimension[1], p.height, volume);
}

}  // namespace tankwright::vessel::detail
