// SPDX-License-Identifier: BSL-1.0
/// @file
/// Is this panel in a sane range? Stress and deflection of a rectangular glass or acrylic panel under water at any
/// level, by thin-plate theory (Levy's series, not table interpolation) with the material's own Poisson ratio.
///
/// A free top edge is a different panel from one that a frame holds: where the panel is wide it twists near its sides,
/// and the printed tables, which list bending at mid-width, miss that. `governing` is the largest principal moment
/// anywhere.
#pragma once

#include <cmath>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <tankwright/core/citation.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/vessel/cautions.hpp>
#include <tankwright/vessel/detail/check.hpp>
#include <tankwright/vessel/detail/levy_peaks.hpp>
#include <tankwright/vessel/hydrostatic.hpp>
#include <tankwright/vessel/materials.hpp>
#include <tankwright/vessel/panel_edges.hpp>
#include <utility>
#include <vector>

namespace tankwright::vessel {

inline constexpr citation timoshenko_1959{"Timoshenko S., Woinowsky-Krieger S.", 1959, "Theory of Plates and Shells",
                                          "2nd ed., McGraw-Hill, ch. 5 (Levy's solution)", standing::secondary};

/// A rectangular panel between its supports.
struct panel {
  required<length> width;      ///< clear, between the upright edges
  required<length> height;     ///< clear, from the lower to the upper edge
  required<length> thickness;  ///< the least that the maker allows, not the nominal one: see `glass_sizes.hpp`
  required<panel_edges> edges;
  required<panel_material> material;
  std::optional<allowable_stress> allowable{};  ///< instead of the material's
  std::string label = "panel";
};

/// Water behind a panel.
struct water_behind {
  required<length> level;  ///< above the lower edge of the panel; above its height for a window set below the surface
  required<mass_density> water_density;
};

/// A moment per metre of width at a place of the panel; positive moments stretch the dry face.
struct moment_at {
  moment_per_width value;
  length from_side;   ///< from the nearer upright edge
  length from_below;  ///< from the lower edge
};

struct panel_result {
  pressure at_bottom;
  pressure at_top;
  tankwright::force force;
  length centre;  ///< of pressure, above the lower edge

  moment_at across;           ///< largest moment bending along the width, at mid-width
  moment_at up;               ///< largest moment bending along the height, at mid-width
  moment_at twist;            ///< largest twisting moment, at a corner
  moment_at governing;        ///< largest principal moment of the panel
  tankwright::stress stress;  ///< from the governing moment

  length deflection;  ///< the largest, short-term modulus
  length deflection_from_below;
  estimate<length> long_term_deflection;

  allowable_stress allowable;  ///< what the utilisation is held against
  double utilisation;          ///< [1] stress over allowable stress
  length thickness_needed;     ///< where the utilisation would be 1

  length deflection_limit;          ///< for the bulge after years, by the material and the span
  double deflection_utilisation;    ///< [1] high end of the bulge after years, over the limit
  length thickness_for_deflection;  ///< where that would be 1
  bool deflection_governs;          ///< the bulge uses more of its limit than the stress does

  bool beyond_small_deflection;  ///< deflection, short- or long-term, above half the thickness
  bool too_thick_for_theory;     ///< thicker than a tenth of the shorter side: shear counts
  std::string_view note;
  tankwright::caution caution;
};

namespace detail {

inline constexpr limits aspect_limits{
    "width over height", "", {0.02, 20.0}, {0.1, 10.0}, "the series as tested; a longer panel is a strip"};

inline void check_panel(std::string_view here, const panel& p, range_policy policy) {
  core::check_element(here, p.label, positive_length("width"), p.width->value());
  core::check_element(here, p.label, positive_length("height"), p.height->value());
  core::check_element(here, p.label, positive_length("thickness"), p.thickness->value());
  const double shorter_side = std::fmin(p.width->value(), p.height->value());
  if (p.thickness->value() >= shorter_side) {
    refuse_of(
        here, p.label, "thickness", p.thickness->value(), "m",
        "is not less than the shorter side, " + core::number_text(shorter_side) + " m: that is a block, not a panel");
  }
  const panel_material& m = p.material;
  check_material(here, p.label, m);
  const allowable_stress& a = p.allowable ? *p.allowable : m.allowable;
  core::check_element(here, p.label, allowable_limits, a.value.value());
  if (a.basis != load_basis::permanent) {
    refuse_of(here, p.label, "allowable stress", a.value.value(), "Pa",
              "is for a load of seconds; a tank is a permanent load: see for_permanent_load");
  }
  core::check_element(here, p.label, aspect_limits, p.width->value() / p.height->value(), policy);
}

[[nodiscard]] inline std::pair<edge_kind, edge_kind> edges_of(panel_edges edges) noexcept {
  const bool clamped = edges == panel_edges::bottom_clamped || edges == panel_edges::bottom_clamped_top_free;
  const bool free = edges == panel_edges::top_free || edges == panel_edges::bottom_clamped_top_free;
  return {clamped ? edge_kind::clamped : edge_kind::supported, free ? edge_kind::free : edge_kind::supported};
}

[[nodiscard]] inline panel_result describe(const panel& p, const plate_peaks<double>& peaks, double q,
                                           const water_push& push) {
  const double h = p.height->value(), w = p.width->value(), t = p.thickness->value();
  const panel_material& m = p.material;
  const allowable_stress& allowable = p.allowable ? *p.allowable : m.allowable;
  const auto place = [&](const plate_peak<double>& peak) {
    return moment_at{moment_per_width::from_value(peak.value * q * h * h), length::from_value(peak.x * h),
                     length::from_value(peak.y * h)};
  };
  const double largest_moment = std::fabs(peaks.principal.value) * q * h * h;
  const double stress = 6.0 * largest_moment / (t * t);
  const double utilisation = stress / allowable.value.value();
  // w q H^4 / D,  D = E t^3 / (12 (1 - nu^2))
  const double times_modulus =
      std::fabs(peaks.deflection.value) * q * h * h * h * h * 12.0 * (1.0 - m.poisson * m.poisson) / (t * t * t);
  const auto sag = [&](tankwright::stress modulus) { return length::from_value(times_modulus / modulus.value()); };
  const auto long_term = map_falling(m.long_term_modulus, sag);
  const bool free_top = edges_of(p.edges).second == edge_kind::free;
  // A free edge bends like a beam that is held at the corners, a panel that stands on its bottom alone like a
  // cantilever, whose span counts twice.
  const double span = free_top ? std::fmin(w, 2.0 * h) : std::fmin(w, h);
  const double by_span = span / m.bulge.span_over_deflection;
  const double most = m.bulge.at_most ? std::fmin(by_span, m.bulge.at_most->value()) : by_span;
  const double bulge_used = std::fmax(sag(m.modulus).value(), long_term.high.value()) / most;
  const bool beyond = std::fmax(sag(m.modulus).value(), long_term.high.value()) > 0.5 * t;
  const bool thick = t > 0.1 * std::fmin(w, h);
  constexpr std::string_view free_note =
      "the deflection, now or after years, is above half the thickness: outside the theory, and a free edge gets no "
      "help from membrane action";
  constexpr std::string_view held_note =
      "the deflection, now or after years, is above half the thickness: outside the theory; membrane action helps a "
      "panel held on four edges, by how much is not computed";
  constexpr std::string_view thick_note = "the panel is thick for its size: shear adds to the deflection";
  return {push.at_bottom,
          push.at_top,
          push.force,
          push.centre,
          place(peaks.across),
          place(peaks.up),
          place(peaks.twist),
          place(peaks.principal),
          tankwright::stress::from_value(stress),
          sag(m.modulus),
          length::from_value(peaks.deflection.y * h),
          long_term,
          allowable,
          utilisation,
          length::from_value(t * std::sqrt(utilisation)),
          length::from_value(most),
          bulge_used,
          length::from_value(t * std::cbrt(bulge_used)),
          bulge_used > utilisation,
          beyond,
          thick,
          beyond  ? (free_top ? free_note : held_note)
          : thick ? thick_note
                  : std::string_view{},
          panel_caution};
}

}  // namespace detail

/// A panel with water behind it, up to any level: below its top while filling, above it for a window set low in a wall.
///
///   D del^4 w = q,  q = rho g (level - y) where there is water;  sigma = 6 M / t^2,  D = E t^3 / (12 (1 - nu^2))
///
/// @param panel  width, height, thickness [m] > 0, thickness below both; edges; material. Width over height 0.1 to 10
/// @param water  level above the lower edge [m] >= 0; density [kg/m^3] > 0
/// @param policy `extrapolate` to go past the range of width over height, to 0.02 and 20
/// @return       push, moments, stress, deflection, utilisation, and what is outside the theory
/// @throws       invalid_input (also: water above a free top edge, a Poisson ratio outside 0 to 0.5, an allowable
///               stress for seconds), out_of_range
/// @accuracy     of thin-plate theory: moments and deflection at mid-width 1e-10 to width/height 5, 1e-8 to 10; where
///               the water stands below a fifth of the height, moments 1e-9, below a tenth 1e-7, a thirtieth 1e-6, a
///               hundredth 1e-2, and the deflection, next to nothing then, 1e-12 rho g height^5/D; the governing
///               moment 2e-3 in 97 plates of 100, the worst of 48 000 1.2 % low and 0.3 % high; under water shallower
///               than a 140th of the width up to a third low. Real edges are neither quite free nor quite held
/// @source       Timoshenko & Woinowsky-Krieger 1959, ch. 5 (Levy's solution); published tables in the theory page
[[nodiscard]] inline panel_result water_on(const panel& panel, const water_behind& water,
                                           range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::vessel::water_on";
  detail::check_panel(here, panel, policy);
  const double level = water.level->value(), h = panel.height->value();
  core::check_element(here, panel.label, detail::length_from_zero("level"), level);
  core::check_element(here, panel.label, detail::water_density_limits, water.water_density->value());
  const auto [bottom, top] = detail::edges_of(panel.edges);
  if (top == detail::edge_kind::free && level > h) {
    detail::refuse_of(here, panel.label, "level", level, "m",
                      "is above a free top edge at " + core::number_text(h) +
                          " m, where the water would run over; a window below the surface has all edges supported");
  }
  detail::plate<double> plate{panel.width->value() / h, panel.material->poisson, bottom, top, {}};
  if (level < h) {
    plate.load = {.partly_filled = true, .level = level / h};
  } else {
    plate.load = {.constant = level / h, .slope = -1.0};
  }
  const water_push push = push_on({.width = panel.width,
                                   .height = panel.height,
                                   .level = water.level,
                                   .water_density = water.water_density,
                                   .label = panel.label});
  const double per_height = water.water_density->value() * standard_gravity.value() * h;
  return detail::describe(panel, level > 0.0 ? detail::solve_plate(plate) : detail::plate_peaks<double>{}, per_height,
                          push);
}

/// A panel under an even pressure: a lid with something spread on it, a bottom pane, a gust.
///
///   D del^4 w = q;  sigma = 6 M / t^2,  D = E t^3 / (12 (1 - nu^2))
///
/// @param panel  width, height, thickness [m] > 0, thickness below both; edges; material. Width over height 0.1 to 10
/// @param load   pressure [Pa] >= 0
/// @param policy `extrapolate` to go past the range of width over height, to 0.02 and 20
/// @return       push, moments, stress, deflection, utilisation, and what is outside the theory
/// @throws       invalid_input, out_of_range
/// @accuracy     as for water
/// @source       Timoshenko & Woinowsky-Krieger 1959, ch. 5 (Levy's solution); published tables in the theory page
[[nodiscard]] inline panel_result uniform_on(const panel& panel, pressure load,
                                             range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::vessel::uniform_on";
  detail::check_panel(here, panel, policy);
  core::check_element(here, panel.label, {"load", "Pa", detail::possible_pressure}, load.value());
  const auto [bottom, top] = detail::edges_of(panel.edges);
  const double h = panel.height->value();
  const detail::plate<double> plate{panel.width->value() / h, panel.material->poisson, bottom, top, {.constant = 1.0}};
  // No result tells the moment of the push about the lower edge.
  const water_push push{
      load, load, force::from_value(load.value() * panel.width->value() * h), 0.5 * panel.height.get(), {}, {}};
  return detail::describe(panel, detail::solve_plate(plate), load.value(), push);
}

/// One stage of the first fill.
struct fill_stage {
  length level;  ///< above the lower edge of the panel
  panel_result panel;
};

/// What each stage of the first fill puts on a panel.
///
///   `water_on` at each level
///
/// @param panel         the panel
/// @param levels        of the water above its lower edge [m] >= 0, in any order; up to 10 000
/// @param water_density [kg/m^3] > 0; while testing with fresh water the load is 2 to 3 % less than with seawater
/// @param policy        `extrapolate` to go past the range of width over height
/// @return              one result for each level, in the same order
/// @throws              as `water_on`
/// @accuracy            as `water_on`
/// @source              as `water_on`
[[nodiscard]] inline std::vector<fill_stage> first_fill(const panel& panel, std::span<const length> levels,
                                                        mass_density water_density,
                                                        range_policy policy = range_policy::published) {
  std::vector<fill_stage> stages;
  core::check("tankwright::vessel::first_fill", {"number of stages", "", {0.0, 1e4}},
              static_cast<double>(levels.size()));
  detail::check_panel("tankwright::vessel::first_fill", panel, policy);
  core::check("tankwright::vessel::first_fill", detail::water_density_limits, water_density.value());
  stages.reserve(levels.size());
  for (const length& level : levels) {
    stages.push_back({level, water_on(panel, {.level = level, .water_density = water_density}, policy)});
  }
  return stages;
}

}  // namespace tankwright::vessel
