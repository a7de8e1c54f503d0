// SPDX-License-Identifier: BSL-1.0
/// @file
/// What does the water push? Pressure at a depth, and the force on an upright wall or window with the place where it
/// acts. Only the height of the water above a point counts, not the volume or the length of the tank.
#pragma once

#include <cmath>
#include <string>

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/vessel/cautions.hpp>
#include <tankwright/vessel/detail/check.hpp>

namespace tankwright::vessel {

/// Pressure of still water above that of the air.
///
///   p = rho g h
///
/// @param depth         below the surface [m] >= 0
/// @param water_density [kg/m^3] > 0
/// @return              pressure [Pa]
/// @throws              invalid_input
/// @accuracy            exact with standard gravity; local gravity differs by up to 0.3 %
/// @source              hydrostatics
[[nodiscard]] inline pressure hydrostatic_pressure(length depth, mass_density water_density) {
  constexpr std::string_view here = "tankwright::vessel::hydrostatic_pressure";
  core::check(here, detail::length_from_zero("depth"), depth.value());
  core::check(here, detail::water_density_limits, water_density.value());
  return water_density * standard_gravity * depth;
}

/// An upright rectangle with water on one side: a wall, or a window set below the surface.
struct wetted_wall {
  required<length> width;
  required<length> height;
  required<length> level;  ///< of the water above the lower edge; above `height` for a window set below the surface
  required<mass_density> water_density;
  std::string label = "wall";
};

struct water_push {
  pressure at_bottom;
  pressure at_top;
  tankwright::force force;
  length centre;            ///< height of the centre of pressure above the lower edge; 0 without water
  moment about_lower_edge;  ///< what wants to turn the wall outwards
  tankwright::caution caution;
};

/// Force of the water on an upright rectangle, and where it acts.
///
///   level L below the top:  F = rho g L^2 W / 2  at  L/3
///   level above the top:    F = (p_b + p_t) H W / 2  at  H (p_b + 2 p_t) / (3 (p_b + p_t))
///
/// @param wall width and height [m] > 0; level above the lower edge [m] >= 0; water density [kg/m^3] > 0
/// @return     pressures [Pa], force [N], centre of pressure [m], moment about the lower edge [N m]
/// @throws     invalid_input (names the label and the dimension)
/// @accuracy   exact with standard gravity
/// @source     hydrostatics
[[nodiscard]] inline water_push push_on(const wetted_wall& wall) {
  constexpr std::string_view here = "tankwright::vessel::push_on";
  const double w = wall.width->value(), h = wall.height->value(), level = wall.level->value();
  core::check_element(here, wall.label, detail::positive_length("width"), w);
  core::check_element(here, wall.label, detail::positive_length("height"), h);
  core::check_element(here, wall.label, detail::length_from_zero("level"), level);
  core::check_element(here, wall.label, detail::water_density_limits, wall.water_density->value());
  const double weight = wall.water_density->value() * standard_gravity.value();
  const double wet = std::fmin(level, h);
  const double bottom = weight * level, top = weight * (level - wet);
  const double force = 0.5 * (bottom + top) * wet * w;
  const double turning = (bottom + 2.0 * top) * wet * wet * w / 6.0;
  return {pressure::from_value(bottom),         pressure::from_value(top),
          tankwright::force::from_value(force), length::from_value(force > 0.0 ? turning / force : 0.0),
          moment::from_value(turning),          structural_caution};
}

}  // namespace tankwright::vessel
