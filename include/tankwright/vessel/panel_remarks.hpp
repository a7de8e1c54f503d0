// SPDX-License-Identifier: BSL-1.0
/// @file
/// Is anything unusual about this panel? Values that can exist and yet look like a slip: 45 MPa for glass, a sheet of
/// 1.9 mm or of 19 cm, a thickness that is a name. They are said, not refused.
#pragma once

#include <cmath>
#include <string>
#include <string_view>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/vessel/detail/check.hpp>
#include <tankwright/vessel/glass_sizes.hpp>
#include <tankwright/vessel/materials.hpp>
#include <tankwright/vessel/panel.hpp>
#include <vector>

namespace tankwright::vessel {

/// What is usual for a material in a tank. Outside it a value is possible, and worth a second look.
struct usual_panel {
  std::string_view material;  ///< the name of a `panel_material`
  interval allowable;         ///< Pa, under a permanent load
  interval modulus;           ///< Pa, load of minutes
  interval poisson;
  interval density;    ///< kg/m^3
  interval thickness;  ///< m, of a single sheet
  std::string_view why_allowable;
  std::string_view why_thickness;
};

/// Ends from the sources of `materials.hpp` and common practice.
inline constexpr usual_panel usual_panels[]{
    {annealed_glass.name,
     {2e6, 7.3e6},
     {68e9, 75e9},
     {0.20, 0.25},
     {2400.0, 2600.0},
     {2.9e-3, 25.5e-3},
     "codes give annealed glass 5 to 7.25 MPa for a load that stays; 45 MPa is what it breaks at within seconds",
     "single sheets for tanks are sold from 3 to 25 mm; thicker panes are laminated, and weaker than one sheet of the "
     "sum"},
    {cast_acrylic.name,
     {2e6, 6.5e6},
     {2.6e9, 3.4e9},
     {0.35, 0.42},
     {1170.0, 1210.0},
     {4e-3, 200e-3},
     "5 to 6 MPa is usual for a load that stays; 70 MPa is what it breaks at within minutes",
     "cast sheet for tanks is sold from about 4 mm; blocks above 200 mm are made to order"},
};

/// Larger panes than these are hard to get and to carry: the jumbo sheet of float glass, and the height of a room.
inline constexpr length usual_largest_width = metres(6.0);
inline constexpr length usual_largest_height = metres(3.21);

enum class panel_remark {
  allowable_above_usual,
  allowable_below_usual,
  modulus_unusual,
  poisson_unusual,
  density_unusual,
  thinner_than_sold,
  thicker_than_sold,
  nominal_thickness,  ///< the thickness is the name of a size; the sheet may be thinner
  large_pane,
  thick_for_its_size,
};

/// One sentence about a panel, with the value that it is about.
struct remark {
  panel_remark about;
  std::string text;
  double value;  ///< [SI] in the unit of what it is about
};

namespace detail {

[[nodiscard]] inline std::string in_millimetres_text(double metres) { return core::number_text(metres * 1e3) + " mm"; }
[[nodiscard]] inline std::string in_megapascals_text(double pascals) {
  return core::number_text(pascals * 1e-6) + " MPa";
}

inline void remark_on_material(const panel& p, const usual_panel& usual, std::vector<remark>& all) {
  const panel_material& m = p.material;
  const double allowable = (p.allowable ? *p.allowable : m.allowable).value.value(), t = p.thickness->value();
  const std::string name{m.name};
  if (!usual.allowable.contains(allowable)) {
    const bool above = allowable > usual.allowable.high;
    all.push_back({above ? panel_remark::allowable_above_usual : panel_remark::allowable_below_usual,
                   in_megapascals_text(allowable) + " is an unusually " + (above ? "high" : "low") +
                       " allowable stress for " + name + ": " + std::string{usual.why_allowable},
                   allowable});
  }
  const auto odd = [&](panel_remark about, std::string_view what, const interval& range, double value, double unit,
                       std::string_view symbol) {
    if (range.contains(value)) return;
    all.push_back({about,
                   core::number_with_unit(value / unit, symbol) + " is an unusual " + std::string{what} + " for " +
                       name + "; usual is " + core::interval_text({range.low / unit, range.high / unit}, symbol),
                   value});
  };
  odd(panel_remark::modulus_unusual, "Young's modulus", usual.modulus, m.modulus.value(), 1e9, "GPa");
  odd(panel_remark::poisson_unusual, "Poisson ratio", usual.poisson, m.poisson, 1.0, "");
  odd(panel_remark::density_unusual, "density", usual.density, m.density.value(), 1.0, "kg/m3");
  if (!usual.thickness.contains(t)) {
    const bool thick = t > usual.thickness.high;
    all.push_back({thick ? panel_remark::thicker_than_sold : panel_remark::thinner_than_sold,
                   in_millimetres_text(t) + " is unusually " + (thick ? "thick" : "thin") + " for " + name + ": " +
                       std::string{usual.why_thickness},
                   t});
  }
}

}  // namespace detail

/// What is unusual about a panel: slips of a decimal or a unit, strengths for seconds given for a tank, nominal sizes.
///
///   each value against `usual_panels`, the sizes against `float_glass_sizes`
///
/// @param panel as for `water_on`; of a material that is not one of `materials.hpp` by name, only its size is looked at
/// @return      sentences with a code each; none where all is usual
/// @throws      invalid_input (as `water_on`)
/// @accuracy    a judgement: the ends of what is usual are those of the sources and of common practice
/// @source      the sources of `materials.hpp` and `glass_sizes.hpp`; common practice
[[nodiscard]] inline std::vector<remark> unusual_in(const panel& panel) {
  detail::check_panel("tankwright::vessel::unusual_in", panel, extrapolate);
  std::vector<remark> all;
  for (const usual_panel& usual : usual_panels) {
    if (usual.material == panel.material->name) detail::remark_on_material(panel, usual, all);
  }
  const double t = panel.thickness->value(), w = panel.width->value(), h = panel.height->value();
  const auto least = panel.material->name == annealed_glass.name ? least_thickness(panel.thickness) : std::nullopt;
  if (least) {
    all.push_back({panel_remark::nominal_thickness,
                   detail::in_millimetres_text(t) + " is the name of a size: the sheet may be as thin as " +
                       detail::in_millimetres_text(least->value()) + "; give the least thickness, or measure it",
                   t});
  }
  if (w > usual_largest_width.value() || h > usual_largest_height.value()) {
    all.push_back({panel_remark::large_pane,
                   core::number_text(w) + " m by " + core::number_text(h) +
                       " m is larger than panes are usually made (6 m by 3.21 m): check the unit",
                   std::fmax(w, h)});
  }
  if (t > 0.1 * std::fmin(w, h)) {
    all.push_back({panel_remark::thick_for_its_size,
                   detail::in_millimetres_text(t) + " is more than a tenth of the shorter side: check the unit", t});
  }
  return all;
}

}  // namespace tankwright::vessel
