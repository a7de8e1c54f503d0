// SPDX-License-Identifier: BSL-1.0
/// @file
/// Will the rock look close to the glass? How near and how large things in the water seem through a flat panel, how far
/// round a corner one sees, and how much light the panel reflects. Curved panels magnify and are not covered.
#pragma once

#include <cmath>
#include <numbers>
#include <string_view>

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/vessel/detail/check.hpp>
#include <tankwright/water/refractive_index.hpp>

namespace tankwright::vessel {

/// Of water by salinity, temperature and colour: `water::refractive_index_quan_fry`.
using water::refractive_index;

inline constexpr refractive_index seawater_index{1.34};  ///< 1.339 in yellow light at 25 degC, 1.343 in blue
inline constexpr refractive_index fresh_water_index{1.333};
inline constexpr refractive_index acrylic_index{1.49};  ///< from memory: 1.489 to 1.492
inline constexpr refractive_index glass_index{1.52};    ///< soda-lime, from memory
inline constexpr refractive_index air_index{1.0};

/// What is usual between rock and front glass where large fish must turn; no source. Seen from the front it looks like
/// three quarters of that.
inline constexpr length usual_clearance = inches(18.0);

namespace detail {

inline constexpr limits index_limits{"refractive index", "", {1.0, 4.0}};
inline constexpr limits angle_limits{
    "angle from the normal", "rad", {0.0, std::numbers::pi / 2.0, edge::closed, edge::open}};
}  // namespace detail

/// A surface between two materials, in the order in which the light goes.
struct surface {
  required<refractive_index> from;
  required<refractive_index> into;
};

namespace detail {

inline void check_surface(std::string_view here, const surface& s) {
  core::check(here, index_limits, s.from->value());
  core::check(here, index_limits, s.into->value());
}

}  // namespace detail

/// Direction of a ray behind a surface.
///
///   n1 sin a1 = n2 sin a2
///
/// @param between  the two refractive indices, 1 to 4
/// @param incoming angle from the normal [rad], 0 to below a right angle
/// @return         angle from the normal behind the surface [rad]
/// @throws         invalid_input, also when the ray does not get through (total reflection)
/// @accuracy       exact
/// @source         Snell's law
[[nodiscard]] inline angle refracted(const surface& between, angle incoming) {
  constexpr std::string_view here = "tankwright::vessel::refracted";
  detail::check_surface(here, between);
  core::check(here, detail::angle_limits, incoming.value());
  const double sine = between.from->value() / between.into->value() * std::sin(incoming.value());
  if (sine > 1.0) {
    core::fail<invalid_input>(
        here, "angle from the normal", in_degrees(incoming), "deg",
        "is reflected totally: it is above the critical angle of " +
            core::number_text(in_degrees(angle::from_value(std::asin(between.into->value() / between.from->value())))) +
            " deg");
  }
  return angle::from_value(std::asin(sine));
}

/// The steepest angle in the denser material at which light still gets out. From water into air, with any flat panel
/// between: no ray in the water that is flatter to the panel can leave, so that an end wall looks like a mirror.
///
///   sin a_c = n_thin / n_dense
///
/// @param between from the denser material into the thinner one
/// @return        critical angle from the normal [rad]
/// @throws        invalid_input, also when the light goes into the denser material, where there is none
/// @accuracy      exact
/// @source        Snell's law
[[nodiscard]] inline angle critical_angle(const surface& between) {
  constexpr std::string_view here = "tankwright::vessel::critical_angle";
  detail::check_surface(here, between);
  const double from = between.from->value(), into = between.into->value();
  if (!(from > into)) {
    core::fail<invalid_input>(here, "refractive index", from, "",
                              "is not above that behind the surface, " + core::number_text(into) +
                                  ": into a denser material all light gets through");
  }
  return angle::from_value(std::asin(into / from));
}

/// Part of the light that a surface throws back, looked at straight on.
///
///   R = ((n1 - n2)/(n1 + n2))^2
///
/// @param between the two refractive indices; the order does not matter
/// @return        reflected part
/// @throws        invalid_input
/// @accuracy      exact for unpolarised light at normal incidence
/// @source        Fresnel's equations
[[nodiscard]] inline proportion reflectance(const surface& between) {
  detail::check_surface("tankwright::vessel::reflectance", between);
  const double a = between.from->value(), b = between.into->value();
  const double r = (a - b) / (a + b);
  return fraction(r * r);
}

/// Something in the water behind a flat panel.
struct underwater_view {
  required<length> water;                  ///< from the inner face of the panel to the thing
  length panel = length::from_value(0.0);  ///< thickness
  refractive_index water_index = seawater_index;
  refractive_index panel_index = acrylic_index;
};

namespace detail {

inline void check_view(std::string_view here, const underwater_view& v) {
  core::check(here, length_from_zero("distance in the water"), v.water->value());
  core::check(here, length_from_zero("panel thickness"), v.panel.value());
  core::check(here, index_limits, v.water_index.value());
  core::check(here, index_limits, v.panel_index.value());
}

/// tan in the material over tan in the air; 1/n straight on.
[[nodiscard]] inline double foreshortening(double n, double angle_in_air) noexcept {
  const double c = std::cos(angle_in_air);
  return c / std::sqrt((n - 1.0) * (n + 1.0) + c * c);  // n^2 - sin^2, which keeps its digits where n is 1
}

}  // namespace detail

/// How far behind the outer face of the panel a thing seems to be, looked at straight on.
///
///   d' = d/n_w + t/n_p
///
/// @param view distance in the water and thickness of the panel [m] >= 0; their refractive indices, 1 to 4
/// @return     apparent distance from the outer face [m]
/// @throws     invalid_input
/// @accuracy   exact for rays near the normal
/// @source     Snell's law
[[nodiscard]] inline length apparent_distance(const underwater_view& view) {
  detail::check_view("tankwright::vessel::apparent_distance", view);
  return view.water.get() / view.water_index.value() + view.panel / view.panel_index.value();
}

/// The same seen at an angle: the flatter one looks, the shallower the tank seems.
///
///   d' = (d tan a_w + t tan a_p) / tan a,   sin a = n sin a_n
///
/// @param view         distance in the water and thickness of the panel [m] >= 0; their refractive indices, 1 to 4
/// @param angle_in_air from the normal of the panel [rad], 0 to below a right angle
/// @return             apparent distance from the outer face [m], along the normal under the point where the ray enters
/// @throws             invalid_input
/// @accuracy           exact for one ray; two eyes side by side see a little farther
/// @source             Snell's law
[[nodiscard]] inline length apparent_distance(const underwater_view& view, angle angle_in_air) {
  constexpr std::string_view here = "tankwright::vessel::apparent_distance";
  detail::check_view(here, view);
  core::check(here, detail::angle_limits, angle_in_air.value());
  return view.water.get() * detail::foreshortening(view.water_index.value(), angle_in_air.value()) +
         view.panel * detail::foreshortening(view.panel_index.value(), angle_in_air.value());
}

/// A distance that something should seem to have.
struct wanted_view {
  required<length> apparent;               ///< from the outer face of the panel
  length panel = length::from_value(0.0);  ///< thickness
  refractive_index water_index = seawater_index;
  refractive_index panel_index = acrylic_index;
};

/// How far from the inner face a thing must stand to seem as far away as wanted: the least clearance of rock to glass.
///
///   d = n_w (d' - t/n_p)
///
/// @param wanted apparent distance from the outer face and thickness of the panel [m] >= 0; refractive indices
/// @return       distance in the water [m]
/// @throws       invalid_input, also when the panel alone looks thicker than that
/// @accuracy     exact for rays near the normal
/// @source       Snell's law
[[nodiscard]] inline length clearance_for(const wanted_view& wanted) {
  constexpr std::string_view here = "tankwright::vessel::clearance_for";
  detail::check_view(here, {.water = wanted.apparent,
                            .panel = wanted.panel,
                            .water_index = wanted.water_index,
                            .panel_index = wanted.panel_index});
  const length through_panel = wanted.panel / wanted.panel_index.value();
  if (wanted.apparent.get() < through_panel) {
    core::fail<invalid_input>(
        here, "apparent distance", wanted.apparent->value(), "m",
        "is less than the panel alone seems to have, " + core::number_text(through_panel.value()) + " m");
  }
  return (wanted.apparent.get() - through_panel) * wanted.water_index.value();
}

/// How much larger a thing in the water looks than it would at the same place in air.
///
///   M = (e + t + d) / (e + t/n_p + d/n_w)
///
/// @param view distance in the water and thickness of the panel [m] >= 0; their refractive indices, 1 to 4
/// @param eye  distance of the eye from the outer face [m] > 0
/// @return     [1] magnification across the line of sight, 1 to n
/// @throws     invalid_input
/// @accuracy   exact for rays near the normal
/// @source     Snell's law
[[nodiscard]] inline double lateral_magnification(const underwater_view& view, length eye) {
  constexpr std::string_view here = "tankwright::vessel::lateral_magnification";
  detail::check_view(here, view);
  core::check(here, detail::positive_length("distance of the eye"), eye.value());
  const double e = eye.value(), d = view.water->value(), t = view.panel.value();
  return (e + t + d) / (e + t / view.panel_index.value() + d / view.water_index.value());
}

/// A flat panel with the same material on both sides as far as the ray is concerned.
struct ray_panel {
  required<length> thickness;
  refractive_index panel_index = acrylic_index;
};

/// How far a ray is shifted sideways by a flat panel in air; its direction does not change.
///
///   s = t sin a (1 - cos a / sqrt(n^2 - sin^2 a))
///
/// @param panel        thickness [m] >= 0, refractive index, 1 to 4
/// @param angle_in_air from the normal [rad], 0 to below a right angle
/// @return             shift across the ray [m]
/// @throws             invalid_input
/// @accuracy           exact
/// @source             Snell's law
[[nodiscard]] inline length ray_shift(const ray_panel& panel, angle angle_in_air) {
  constexpr std::string_view here = "tankwright::vessel::ray_shift";
  core::check(here, detail::length_from_zero("panel thickness"), panel.thickness->value());
  core::check(here, detail::index_limits, panel.panel_index.value());
  core::check(here, detail::angle_limits, angle_in_air.value());
  return panel.thickness.get() * std::sin(angle_in_air.value()) *
         (1.0 - detail::foreshortening(panel.panel_index.value(), angle_in_air.value()));
}

}  // namespace tankwright::vessel
