// SPDX-License-Identifier: BSL-1.0
/// @file
/// How high should the lights hang? What width a lamp lights, and what part of its light at the water reaches a depth.
#pragma once

#include <cmath>
#include <numbers>
#include <string_view>

#include <tankwright/core/citation.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/core/validity.hpp>
#include <tankwright/water/refractive_index.hpp>

namespace tankwright::room {

inline constexpr citation kirk_1994{"Kirk J.T.O.", 1994, "Light and Photosynthesis in Aquatic Ecosystems, 2nd ed.",
                                    "Cambridge University Press", standing::from_memory};

/// What a metre of water lets through of the light that plants use: clear ocean water 95 %, a tank with yellowed water
/// 75 % (Kirk 1994, from memory).
inline constexpr proportion light_through_a_metre = fraction(0.88);

/// A lamp over the water, and where its light goes.
struct lamp_over_water {
  required<length> height;  ///< of the lamp over the water
  required<length> depth;   ///< below the surface
  proportion through_a_metre = light_through_a_metre;
  water::refractive_index index{1.34};  ///< of the water
};

inline constexpr limits lamp_height_limits{"height of the lamp", "m", {1e-3, 100.0}};
inline constexpr limits light_depth_limits{"depth", "m", {0.0, 100.0}};
inline constexpr limits through_a_metre_limits{"light through a metre of water", "", {1e-6, 1.0}};
inline constexpr limits light_index_limits{"refractive index", "", {1.0, 4.0}};
inline constexpr limits beam_limits{"beam", "rad", {1e-3, std::numbers::pi, edge::closed, edge::open}};

/// Light straight below a lamp at a depth, of that at the surface below it.
///
///   (h / (h + D/n))^2 T^D
///
/// @param lamp height h over the water, 1 mm to 100 m; depth D, 0 to 100 m; share T that a metre lets through, above 0
///             to 1; refractive index n of the water, 1 to 4
/// @return     share of the light behind the surface
/// @throws     invalid_input
/// @accuracy   one small lamp over still water, along its axis; of a long row or a panel the first factor is nearer to
///             1. Light from walls adds to it
/// @source     Snell's law for rays near the axis; Beer and Lambert; Kirk 1994 for T (from memory)
[[nodiscard]] inline proportion light_at_depth(const lamp_over_water& lamp) {
  constexpr std::string_view here = "tankwright::room::light_at_depth";
  const double h = lamp.height->value(), depth = lamp.depth->value();
  core::check(here, lamp_height_limits, h);
  core::check(here, light_depth_limits, depth);
  core::check(here, through_a_metre_limits, lamp.through_a_metre.value());
  core::check(here, light_index_limits, lamp.index.value());
  const double spread = h / (h + depth / lamp.index.value());
  return fraction(spread * spread * std::pow(lamp.through_a_metre.value(), depth));
}

/// Width that the beam of a lamp lights at the water.
///
///   w = 2 h tan(beam/2)
///
/// @param height h of the lamp over the water, 1 mm to 100 m
/// @param beam   full angle of its beam, 0.001 rad to below half a turn
/// @return       width [m]
/// @throws       invalid_input
/// @accuracy     as the angle on the data sheet, at which lamps give half of what they give on the axis
/// @source       geometry
[[nodiscard]] inline length lit_width(length height, angle beam) {
  constexpr std::string_view here = "tankwright::room::lit_width";
  core::check(here, lamp_height_limits, height.value());
  core::check(here, beam_limits, beam.value());
  return height * (2.0 * std::tan(0.5 * beam.value()));
}

}  // namespace tankwright::room
