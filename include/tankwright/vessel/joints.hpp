// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does the corner hold, and may the hole be there? What a wall puts on the joint along its upright edge, what wood
/// screws hold of it, what a seam of silicone carries, and how far a hole stands from the edge of its pane. Screening.
#pragma once

#include <cmath>
#include <string>
#include <tankwright/core/citation.hpp>
#include <tankwright/core/estimate.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/vessel/fixings.hpp>
#include <tankwright/vessel/plywood.hpp>

namespace tankwright::vessel {

inline constexpr citation nds_wood_screws{"American Wood Council", 2018,
                                          "National Design Specification for Wood Construction",
                                          "12.2.2: W = 2850 G^2 D in pounds per inch", standing::secondary};
inline constexpr citation astm_c1048{"ASTM", 2018, "C1048: heat-strengthened and fully tempered flat glass",
                                     "holes: rim two thicknesses from the edge", standing::from_memory};

/// What a seam of structural silicone may carry in tension for good. Facades allow 14 kPa for what stays (and 138 kPa
/// for gusts); builders of tanks go to a tenth of its strength, 210 kPa: fifteen times as much, so the middle is that
/// of the ratio.
inline constexpr estimate<stress> silicone_seam_tension{
    kilopascals(14.0), kilopascals(54.0), kilopascals(210.0),
    "facades allow 14 kPa for what stays, tank builders up to 210 kPa; from memory"};

/// A wall that leans on the joints along its two upright edges.
struct leaning_wall {
  required<length> width;  ///< from joint to joint
  required<length> depth;  ///< of the water over the place that is asked for
  required<mass_density> water_density;
  std::string label = "wall";
};

/// Pull on a metre of the joint along the upright edge of a wall.
///
///   q = rho g z W/2, as if the wall spanned from joint to joint
///
/// @param wall width W [m] > 0; depth z [m] >= 0; water density [kg/m^3] > 0
/// @return     pull [N/m] at that depth
/// @throws     invalid_input (names the label)
/// @accuracy   an upper limit: near the floor and under a rail a part goes there
/// @source     statics
[[nodiscard]] inline line_load pull_on_joint(const leaning_wall& wall) {
  constexpr std::string_view here = "tankwright::vessel::pull_on_joint";
  core::check_element(here, wall.label, detail::positive_length("width"), wall.width->value());
  core::check_element(here, wall.label, detail::length_from_zero("depth"), wall.depth->value());
  core::check_element(here, wall.label, detail::water_density_limits, wall.water_density->value());
  return line_load::from_value(hydrostatic_pressure(wall.depth, wall.water_density).value() * 0.5 *
                               wall.width->value());
}

/// A wood screw in side grain, pulled along its axis.
struct wood_screw {
  required<double> gravity;      ///< [1] specific gravity of the wood that holds its thread, oven dry
  required<length> diameter;     ///< of the shank
  required<length> penetration;  ///< of the thread, in that wood
  double duration_factor = wood_permanent_load_factor;  ///< [1]
  double wet_factor = 1.0;                              ///< [1] 0.7 where the wood is wet in service (NDS, from memory)
  std::string label = "screw";
};

inline constexpr limits screw_gravity_limits{"specific gravity", "", {0.05, 1.3}};
inline constexpr limits screw_diameter_limits{"diameter", "m", {1e-4, 0.1}};
inline constexpr limits screw_penetration_limits{"penetration", "m", {0.0, 1.0}};
inline constexpr limits screw_factor_limits{"factor", "", above_zero_to_one};

/// Pull that a wood screw in side grain may carry for good.
///
///   W = 2850 lb/in^2 G^2 D p;   times the factors for the duration of the load and for wet wood
///
/// @param screw specific gravity G 0.05 to 1.3; diameter D [m] 1e-4 to 0.1; penetration p [m] 0 to 1; factors above 0
///              to 1
/// @return      force [N]
/// @throws      invalid_input (names the label)
/// @accuracy    a design value, about a fifth of what tears out; nothing in end grain, less in the edge of plywood
/// @source      NDS 2018, 12.2.2
[[nodiscard]] inline force withdrawal_of(const wood_screw& screw) {
  constexpr std::string_view here = "tankwright::vessel::withdrawal_of";
  constexpr double per_square_inch = 2850.0 * 4.4482216152605 / (0.0254 * 0.0254);
  core::check_element(here, screw.label, screw_gravity_limits, screw.gravity.get());
  core::check_element(here, screw.label, screw_diameter_limits, screw.diameter->value());
  core::check_element(here, screw.label, screw_penetration_limits, screw.penetration->value());
  core::check_element(here, screw.label, screw_factor_limits, screw.duration_factor);
  core::check_element(here, screw.label, screw_factor_limits, screw.wet_factor);
  const double g = screw.gravity.get();
  return force::from_value(per_square_inch * g * g * screw.diameter->value() * screw.penetration->value() *
                           screw.duration_factor * screw.wet_factor);
}

/// A hole in a pane.
struct pane_hole {
  required<length> diameter;
  required<length> thickness;  ///< of the pane
  bool glass = true;
  std::string label = "hole";
};

/// How far the middle of a hole should be from the nearest edge of its pane.
///
///   glass: the larger of 2 D and D/2 + 2 t;   acrylic: 1.5 D
///
/// @param hole diameter D and thickness t [m] > 0
/// @return     distance [m]
/// @throws     invalid_input (names the label)
/// @accuracy   rules: two diameters in glass and a diameter of rim in acrylic are common practice, no source
/// @source     ASTM C1048 for two thicknesses (from memory)
[[nodiscard]] inline length hole_to_edge(const pane_hole& hole) {
  constexpr std::string_view here = "tankwright::vessel::hole_to_edge";
  const double d = hole.diameter->value(), t = hole.thickness->value();
  core::check_element(here, hole.label, detail::positive_length("diameter"), d);
  core::check_element(here, hole.label, detail::positive_length("thickness"), t);
  if (!hole.glass) return length::from_value(1.5 * d);
  return length::from_value(std::fmax(2.0 * d, 0.5 * d + 2.0 * t));
}

}  // namespace tankwright::vessel
