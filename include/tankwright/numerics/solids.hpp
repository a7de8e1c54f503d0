// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much lies below a height? The volumes of the hollows that tanks are made of, on raw numbers, for every floor
/// that fills or empties one. h is the height above the lowest point; all in metres, or all in any other unit.
#pragma once

#include <cmath>
#include <numbers>

namespace tankwright::numerics::kernel {

/// x - sin x without loss of digits near zero.
template <class T>
[[nodiscard]] T x_minus_sin(T x) noexcept {
  if (std::fabs(x) > T(0.5)) return x - std::sin(x);
  const T q = x * x;
  T sum = T(1);
  for (int n = 16; n >= 4; n -= 2) sum = T(1) - q / T(n * (n + 1)) * sum;
  return x * q / T(6) * sum;
}

/// Angle at the centre of a circle of radius r that a chord at height h above its lowest point spans, 0 to 2 pi.
template <class T>
[[nodiscard]] T chord_angle(T r, T h) noexcept {
  return T(4) * std::atan2(std::sqrt(h), std::sqrt(T(2) * r - h));
}

/// Area of a circle of radius r below height h: r^2 (phi - sin phi) / 2.
template <class T>
[[nodiscard]] T segment_area(T r, T h) noexcept {
  return T(0.5) * r * r * x_minus_sin(chord_angle(r, h));
}

/// Volume of a sphere of radius r below height h: pi h^2 (r - h/3). Of an ellipsoid that is b times as deep along one
/// level axis: b times that.
template <class T>
[[nodiscard]] T cap_volume(T r, T h) noexcept {
  return std::numbers::pi_v<T> * h * h * (r - h / T(3));
}

/// Radius at height h of a cone or a part of one, from `bottom` at h = 0 to `top` at h = `height`.
template <class T>
[[nodiscard]] T frustum_radius(T bottom, T top, T height, T h) noexcept {
  return bottom + (top - bottom) * (h / height);
}

/// Volume of a cone or a part of one below height h: pi h (R^2 + R r + r^2) / 3, r the radius at h.
template <class T>
[[nodiscard]] T frustum_volume(T bottom, T top, T height, T h) noexcept {
  const T r = frustum_radius(bottom, top, height, h);
  return std::numbers::pi_v<T> / T(3) * h * (bottom * bottom + bottom * r + r * r);
}

/// Height in a cone or a part of one that holds a volume: the inverse, with r^3 - R^3 = 3 k V / pi.
template <class T>
[[nodiscard]] T frustum_height(T bottom, T top, T height, T volume) noexcept {
  const T slope = (top - bottom) / height;
  const T r = std::cbrt(bottom * bottom * bottom + T(3) * slope * volume / std::numbers::pi_v<T>);
  return T(3) * volume / (std::numbers::pi_v<T> * (bottom * bottom + bottom * r + r * r));
}

/// Volume of a cylinder on its side below height h: radius r, length along its axis, each head a half-ellipsoid of
/// depth `head` (0: flat).
template <class T>
[[nodiscard]] T lying_cylinder_volume(T r, T length, T head, T h) noexcept {
  return length * segment_area(r, h) + (head > T(0) ? head / r * cap_volume(r, h) : T(0));
}

}  // namespace tankwright::numerics::kernel
