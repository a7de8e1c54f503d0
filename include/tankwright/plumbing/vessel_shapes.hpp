// SPDX-License-Identifier: BSL-1.0
/// @file
/// What is being emptied or filled? Vessels of every shape, seen as horizontal area against height.
#pragma once

#include <algorithm>
#include <cmath>
#include <variant>

#include <tankwright/numerics/solids.hpp>
#include <tankwright/plumbing/area_profile.hpp>

namespace tankwright::plumbing {

/// A round-bottomed bowl or a sphere, with the outlet at its lowest point.
struct bowl {
  required<length> radius;
};

/// A cone standing on its point, with the outlet there.
struct cone {
  required<length> height;
  required<length> top_radius;
};

/// A round tank on its side, with the outlet at its lowest line.
struct lying_cylinder {
  required<length> diameter;
  required<length> axial_length;
};

/// Any vessel: vertical walls or a profile (`area_profile`, or an area alone), or one of the shapes.
using any_vessel = std::variant<area_profile, bowl, cone, lying_cylinder>;

namespace detail {

// The integral of A(z)/sqrt(z) from 0 to z, and the volume below z, of the shapes.

[[nodiscard]] inline double drain_integral(const bowl& b, double z) noexcept {
  constexpr double pi = 3.14159265358979323846;
  return pi * z * std::sqrt(z) * (4.0 / 3.0 * b.radius->value() - 0.4 * z);
}
[[nodiscard]] inline double drain_integral(const cone& c, double z) noexcept {
  constexpr double pi = 3.14159265358979323846;
  const double slope = c.top_radius->value() / c.height->value();
  return pi * slope * slope * 0.4 * z * z * std::sqrt(z);
}
[[nodiscard]] inline double drain_integral(const lying_cylinder& c, double z) noexcept {
  const double d = c.diameter->value(), left = d - z;  // z is at most d
  return 4.0 / 3.0 * c.axial_length->value() * (d * std::sqrt(d) - left * std::sqrt(left));
}
[[nodiscard]] inline double drain_integral(const area_profile& p, double top) noexcept {
  double sum = 0.0;
  numbers_of(p).for_each_piece(top, [&](double from, double to, double a, double slope) {
    to = std::min(to, top);
    if (to <= from) return;
    // A = (a - slope from) + slope z
    const double flat = a - slope * from;
    sum += 2.0 * flat * (std::sqrt(to) - std::sqrt(from)) +
           2.0 / 3.0 * slope * (to * std::sqrt(to) - from * std::sqrt(from));
  });
  return sum;
}

[[nodiscard]] inline double volume_to(const bowl& b, double z) noexcept {
  return numerics::kernel::cap_volume(b.radius->value(), z);
}
[[nodiscard]] inline double volume_to(const cone& c, double z) noexcept {
  return numerics::kernel::frustum_volume(0.0, c.top_radius->value(), c.height->value(), z);
}
[[nodiscard]] inline double volume_to(const lying_cylinder& c, double z) noexcept {
  const double r = 0.5 * c.diameter->value();
  return numerics::kernel::lying_cylinder_volume(r, c.axial_length->value(), 0.0, z);
}
[[nodiscard]] inline double volume_to(const area_profile& p, double z) noexcept { return numbers_of(p).below(z); }

inline constexpr limits vessel_radius_limits{"radius", "m", positive};
inline constexpr limits vessel_height_limits{"height", "m", positive};
inline constexpr limits vessel_diameter_limits{"diameter", "m", positive};
inline constexpr limits axial_length_limits{"axial_length", "m", positive};

/// Check a vessel and give the height of its top.
[[nodiscard]] inline double top_of(std::string_view here, const bowl& b) {
  core::check(here, vessel_radius_limits, b.radius->value());
  return 2.0 * b.radius->value();
}
[[nodiscard]] inline double top_of(std::string_view here, const cone& c) {
  core::check(here, vessel_height_limits, c.height->value());
  core::check(here, vessel_radius_limits, c.top_radius->value());
  return c.height->value();
}
[[nodiscard]] inline double top_of(std::string_view here, const lying_cylinder& c) {
  core::check(here, vessel_diameter_limits, c.diameter->value());
  core::check(here, axial_length_limits, c.axial_length->value());
  return c.diameter->value();
}
[[nodiscard]] inline double top_of(std::string_view here, const area_profile& p) {
  numbers_of(p).check(here, "vessel");
  return core::largest;
}

}  // namespace detail
}  // namespace tankwright::plumbing
