// SPDX-License-Identifier: BSL-1.0
/// @file
/// Several shapes as one vessel: chambers side by side that share a water level, or shapes stacked on one another. The
/// result is a shape like any other.
#pragma once

#include <cmath>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include <tankwright/vessel/shape.hpp>

namespace tankwright::vessel {

/// A shape with the height of its floor above the lowest floor of the vessel.
struct placed_shape {
  required<shape> what;
  length floor = length::from_value(0.0);
};

/// Shapes that share one water level: the chambers of a tank that are open to each other, a tank with an annexe.
///
///   V(h) = sum of V_i(h - z_i)
///
/// @param chambers the shapes with the heights z of their floors [m]; the lowest must stand at 0
/// @param label    what the whole is called
/// @return         the shape; its rim is the lowest rim, its wetted area counts both faces of a wall between chambers
/// @throws         invalid_input
/// @accuracy       exact but for rounding
/// @source         geometry
[[nodiscard]] inline shape side_by_side(const std::vector<placed_shape>& chambers, std::string label = "vessel") {
  constexpr std::string_view here = "tankwright::vessel::side_by_side";
  if (chambers.empty()) detail::refuse_of(here, label, "number of shapes", 0.0, "", "makes no vessel");
  std::vector<detail::part> parts;
  double rim = core::largest, lowest = core::largest;
  for (const placed_shape& c : chambers) {
    const double floor = c.floor.value();
    core::check_element(here, label, detail::length_from_zero("floor of a chamber"), floor);
    lowest = std::fmin(lowest, floor);
    rim = std::fmin(rim, floor + c.what->height().value());
    for (detail::part p : detail::parts_of(c.what)) {
      p.floor += floor;
      parts.push_back(p);
    }
  }
  if (lowest != 0.0) {
    detail::refuse_of(here, label, "lowest floor", lowest, "m", "must be at 0, from where the depth is counted");
  }
  for (const placed_shape& c : chambers) {
    if (!(c.floor.value() < rim)) {
      detail::refuse_of(here, label, "floor of '" + c.what->label() + "'", c.floor.value(), "m",
                        "is not below the lowest rim, which is at " + core::number_text(rim) + " m");
    }
  }
  return detail::shape_of(std::move(label), std::move(parts), rim);
}

/// Shapes standing on one another, open where they meet: a cylinder on a cone, a wide tank on a narrow well.
///
///   V(h) = sum of V_i(h - z_i),   z_i the top of the shape below
///
/// @param from_the_bottom the shapes, lowest first
/// @param label           what the whole is called
/// @return                the shape; where two meet, only the ledge between their openings gets wet
/// @throws                invalid_input, also when a shape does not open onto the one above it
/// @accuracy              exact but for rounding
/// @source                geometry
[[nodiscard]] inline shape stacked(const std::vector<shape>& from_the_bottom, std::string label = "vessel") {
  constexpr std::string_view here = "tankwright::vessel::stacked";
  if (from_the_bottom.empty()) detail::refuse_of(here, label, "number of shapes", 0.0, "", "makes no vessel");
  std::vector<detail::part> parts;
  double floor = 0.0, opening_below{};
  for (const shape& s : from_the_bottom) {
    const double opening = plan_area(s, length::from_value(0.0)).value();
    const bool lowest = parts.empty();
    if (!lowest && !(std::fmin(opening, opening_below) > 0.0)) {
      detail::refuse_of(here, label, "opening under '" + s.label() + "'", std::fmin(opening, opening_below), "m2",
                        "joins nothing: one of the two shapes is closed there");
    }
    bool first = true;
    for (detail::part p : detail::parts_of(s)) {
      // The ledge is counted once, with the first part that stands on the joint.
      if (!lowest && p.floor == 0.0) {
        p.floor_area = first ? std::fabs(opening - opening_below) : 0.0;
        first = false;
      }
      p.floor += floor;
      parts.push_back(p);
    }
    floor += s.height().value();
    opening_below = plan_area(s, s.height()).value();
  }
  return detail::shape_of(std::move(label), std::move(parts), floor);
}

}  // namespace tankwright::vessel
