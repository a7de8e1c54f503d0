// SPDX-License-Identifier: BSL-1.0
/// @file
/// What is the floor plan? Area, outline and middle of any simple polygon, and the inside of one that was measured
/// outside.
#pragma once

#include <cmath>
#include <span>
#include <string>
#include <vector>

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/vessel/detail/check.hpp>

namespace tankwright::vessel {

/// A corner of a floor plan. Walk round the plan in either sense; the last corner joins the first.
struct corner {
  required<length> x;
  required<length> y;
};

namespace detail {

struct point {
  double x;
  double y;
};

[[nodiscard]] constexpr point operator-(point a, point b) noexcept { return {a.x - b.x, a.y - b.y}; }
[[nodiscard]] constexpr double cross(point a, point b) noexcept { return a.x * b.y - a.y * b.x; }
[[nodiscard]] constexpr double dot(point a, point b) noexcept { return a.x * b.x + a.y * b.y; }

template <class Corners>
[[nodiscard]] std::vector<point> points_of(const Corners& corners) {
  std::vector<point> points;
  points.reserve(corners.size());
  for (const corner& c : corners) points.push_back({c.x->value(), c.y->value()});
  return points;
}

/// Whether two closed segments have a point in common.
[[nodiscard]] constexpr bool meet(point a, point b, point c, point d) noexcept {
  const auto side = [](point p, point q, point r) {
    const double s = cross(q - p, r - p);
    return (s > 0.0) - (s < 0.0);
  };
  const auto between = [](point p, point q, point r) {  // r on the line pq: is it within the segment?
    return dot(p - r, q - r) <= 0.0;
  };
  const int c_side = side(a, b, c), d_side = side(a, b, d), a_side = side(c, d, a), b_side = side(c, d, b);
  if (c_side != d_side && a_side != b_side) return true;
  return (c_side == 0 && between(a, b, c)) || (d_side == 0 && between(a, b, d)) || (a_side == 0 && between(c, d, a)) ||
         (b_side == 0 && between(c, d, b));
}

/// Signed area: positive when the corners run anticlockwise. Taken about the first corner, so that a plan far from the
/// origin loses no digits.
[[nodiscard]] inline double signed_area(const std::vector<point>& p) noexcept {
  double twice = 0.0;
  for (std::size_t i = 1; i + 1 < p.size(); ++i) twice += cross(p[i] - p[0], p[i + 1] - p[0]);
  return 0.5 * twice;
}

/// Refuse what is not a simple polygon, naming the corners (counted from 1) that are wrong.
inline void check_simple(std::string_view function, std::string_view label, const std::vector<point>& p) {
  const auto count = static_cast<double>(p.size());
  const auto name = [](std::size_t i) { return core::number_text(static_cast<double>(i + 1)); };
  if (p.size() < 3) refuse_of(function, label, "number of corners", count, "", "does not enclose an area");
  for (std::size_t i = 0; i < p.size(); ++i) {
    for (const double coordinate : {p[i].x, p[i].y}) {
      if (any_finite.contains(coordinate)) continue;
      refuse_of(function, label, "corner " + name(i), coordinate, "m", "is not possible; expected a finite number");
    }
  }
  for (std::size_t i = 0; i < p.size(); ++i) {
    const std::size_t next = (i + 1) % p.size(), after = (i + 2) % p.size();
    const point edge = p[next] - p[i], following = p[after] - p[next];
    if (edge.x == 0.0 && edge.y == 0.0) {
      refuse_of(function, label, "corner " + name(i), p[i].x, "m", "(its x) is the same as the next corner");
    }
    if (cross(edge, following) == 0.0 && dot(edge, following) < 0.0) {
      refuse_of(function, label, "corner " + name(next), p[next].x, "m", "(its x) is the tip of a fold without area");
    }
  }
  for (std::size_t i = 0; i < p.size(); ++i) {
    const std::size_t next = (i + 1) % p.size();
    for (std::size_t j = i + 2; j < p.size(); ++j) {
      if (i == 0 && j == p.size() - 1) continue;  // neighbours round the end
      const std::size_t j_next = (j + 1) % p.size();
      if (meet(p[i], p[next], p[j], p[j_next])) {
        refuse_of(function, label, "corners", count, "",
                  "form a polygon that crosses itself: side " + name(i) + "-" + name(next) + " meets side " + name(j) +
                      "-" + name(j_next));
      }
    }
  }
}

[[nodiscard]] inline double outline(const std::vector<point>& p) noexcept {
  double sum = 0.0;
  for (std::size_t i = 0; i < p.size(); ++i) {
    const point edge = p[(i + 1) % p.size()] - p[i];
    sum += std::hypot(edge.x, edge.y);
  }
  return sum;
}

}  // namespace detail

/// Area of a simple polygon.
///
///   A = |sum (x_i y_j - x_j y_i)| / 2,   j the corner after i
///
/// @param corners three or more [m], in either sense; sides may not cross or touch
/// @return        area [m^2]
/// @throws        invalid_input, naming the corners that are wrong
/// @accuracy      exact but for rounding
/// @source        shoelace formula
[[nodiscard]] inline area polygon_area(std::span<const corner> corners) {
  const auto points = detail::points_of(corners);
  detail::check_simple("tankwright::vessel::polygon_area", "polygon", points);
  return area::from_value(std::fabs(detail::signed_area(points)));
}

/// Length of the outline of a simple polygon.
///
///   P = sum of the sides
///
/// @param corners three or more [m]; sides may not cross or touch
/// @return        outline [m]
/// @throws        invalid_input, naming the corners that are wrong
/// @accuracy      exact but for rounding
/// @source        geometry
[[nodiscard]] inline length polygon_outline(std::span<const corner> corners) {
  const auto points = detail::points_of(corners);
  detail::check_simple("tankwright::vessel::polygon_outline", "polygon", points);
  return length::from_value(detail::outline(points));
}

/// The middle of a simple polygon (centre of area). A bed that slopes evenly has its mean depth there.
///
///   C = sum (p_i + p_j) (x_i y_j - x_j y_i) / (6 A)
///
/// @param corners three or more [m]; sides may not cross or touch
/// @return        the point [m]; it may lie outside a polygon with a re-entrant corner
/// @throws        invalid_input, naming the corners that are wrong
/// @accuracy      exact but for rounding
/// @source        geometry
[[nodiscard]] inline corner polygon_middle(std::span<const corner> corners) {
  const auto p = detail::points_of(corners);
  detail::check_simple("tankwright::vessel::polygon_middle", "polygon", p);
  double x = 0.0, y = 0.0;
  for (std::size_t i = 1; i + 1 < p.size(); ++i) {
    const detail::point a = p[i] - p[0], b = p[i + 1] - p[0];
    const double part = detail::cross(a, b);
    x += (a.x + b.x) * part;
    y += (a.y + b.y) * part;
  }
  const double six_areas = 6.0 * detail::signed_area(p);
  return {.x = length::from_value(p[0].x + x / six_areas), .y = length::from_value(p[0].y + y / six_areas)};
}

/// The plan of the inner faces of panels of one thickness, from the plan of their outer faces.
///
///   each side moves inwards by the thickness; the corners are where the moved sides meet
///
/// @param outer     corners of the outer plan, three or more [m]
/// @param thickness of the panels [m] >= 0
/// @return          corners of the inner plan [m], in the same order
/// @throws          invalid_input, also when the panels leave no simple polygon inside
/// @accuracy        exact but for rounding
/// @source          geometry
[[nodiscard]] inline std::vector<corner> inside_corners(std::span<const corner> outer, length thickness) {
  constexpr std::string_view here = "tankwright::vessel::inside_corners";
  const auto p = detail::points_of(outer);
  detail::check_simple(here, "polygon", p);
  core::check(here, detail::length_from_zero("thickness"), thickness.value());
  // Inwards is to the left of a side when the corners run anticlockwise.
  const double t = std::copysign(thickness.value(), detail::signed_area(p));
  const std::size_t n = p.size();
  std::vector<detail::point> inner(n);
  for (std::size_t i = 0; i < n; ++i) {
    const detail::point in = p[i] - p[(i + n - 1) % n], out = p[(i + 1) % n] - p[i];
    const double in_length = std::hypot(in.x, in.y);
    const detail::point unit{in.x / in_length, in.y / in_length};
    // To the left of the incoming side by t, and back along it by t tan(turn/2), where the outgoing side passes too.
    const double half = std::tan(0.5 * std::atan2(detail::cross(in, out), detail::dot(in, out)));
    inner[i] = {p[i].x + t * (-unit.y - half * unit.x), p[i].y + t * (unit.x - half * unit.y)};
  }
  const auto gone = [&] {
    core::fail<invalid_input>(here, "thickness", thickness.value(), "m", "leaves no inside in this polygon");
  };
  for (std::size_t i = 0; i < n; ++i) {  // a side that turned round has been eaten up by its neighbours
    const std::size_t next = (i + 1) % n;
    if (!(detail::dot(inner[next] - inner[i], p[next] - p[i]) > 0.0)) gone();
  }
  try {
    detail::check_simple(here, "polygon", inner);
  } catch (const invalid_input&) {
    gone();
  }
  std::vector<corner> result;
  result.reserve(n);
  for (const auto& q : inner) result.push_back({.x = length::from_value(q.x), .y = length::from_value(q.y)});
  return result;
}

}  // namespace tankwright::vessel
