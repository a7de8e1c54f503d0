// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/inputs/vessel_inputs.hpp>
#include <tankwright/vessel/rock.hpp>
#include <tankwright/water/density.hpp>

namespace tankwright::plan {

namespace detail {

namespace tv = tankwright::vessel;

[[nodiscard]] inline std::string label_or(const std::string& label, const std::string& otherwise) {
  return label.empty() ? otherwise : label;
}

/// "panel", or "panel 2" where there are several.
[[nodiscard]] inline std::string numbered(const std::string& label, const std::string& what, std::size_t at,
                                          std::size_t of) {
  return label_or(label, of > 1 ? what + " " + std::to_string(at + 1) : what);
}

/// A dimension as the water sees it: outside measures lose the panels at their two ends.
[[nodiscard]] inline tv::inside inside_measure(const vessel_section& s, const value<length>& measured,
                                               length near_panel, length far_panel) {
  if (*s.measured == measured_at::inside) return tv::inside{*measured};
  return tv::inside_of({.measured = tv::outside{*measured}, .near_panel = near_panel, .far_panel = far_panel});
}

/// A sheet material; a stress of the plan replaces its own.
[[nodiscard]] inline tv::panel_material material_of(sheet_material which, const value<stress>& allowable) {
  tv::panel_material made = which == sheet_material::annealed_glass ? tv::annealed_glass : tv::cast_acrylic;
  if (allowable) {
    made.allowable = {"as given", *allowable, tv::load_basis::permanent, standing::common_practice, "the plan"};
  }
  return made;
}

/// The material of a bar: a sheet, or one of the plan's own by modulus, allowable stress and density.
[[nodiscard]] inline tv::panel_material material_of(const brace& b) {
  if (b.material) return material_of(*b.material, b.allowable);
  const stress modulus = *b.modulus;
  return {.name = "as given",
          .modulus = modulus,
          .long_term_modulus = {modulus, modulus, modulus, "as given"},
          .poisson = 0.3,
          .density = *b.density,
          .allowable = {"as given", *b.allowable, tv::load_basis::permanent, standing::common_practice, "the plan"},
          .read_as = standing::common_practice,
          .source = "the plan"};
}

[[nodiscard]] inline floor_inputs inputs_of(const floor_under& s) {
  floor_inputs floor{.tank_and_stand = *s.tank_and_stand,
                     .footprint = *s.footprint,
                     .bearing = s.bearing.maybe(),
                     .sump_below = s.sump_below};
  if (s.built_for) {
    floor.code = {"as built", *s.built_for, standing::common_practice, "the building's papers, as given in the plan"};
  } else if (s.room && *s.room == room_use::sleeping) {
    floor.code = tv::sleeping_rooms;
  }
  return floor;
}

[[nodiscard]] inline brace_inputs inputs_of(const brace& s) {
  brace_inputs made{.rail = *s.rail,
                    .rail_height = *s.rail_height,
                    .braces = static_cast<int>(*s.count),
                    .span = *s.span,
                    .breadth = *s.breadth,
                    .depth = *s.depth,
                    .material = material_of(s),
                    .joint = s.joint.maybe(),
                    .label = label_or(s.label, "brace")};
  for (std::size_t i = 0; i < s.load.size(); ++i) {
    const brace_load& one = s.load[i];
    made.on_it.push_back(
        {.load = *one.mass * standard_gravity, .at = *one.at, .label = numbered(one.label, "load", i, s.load.size())});
  }
  return made;
}

[[nodiscard]] inline tv::lid lid_of(const lid& s, std::string label) {
  tv::lid made{.span = *s.span,
               .thickness = *s.thickness,
               .material = material_of(*s.material, s.allowable),
               .label = std::move(label)};
  made.extra = *s.extra_load;
  made.moisture_strain = *s.moisture_strain;
  return made;
}

}  // namespace detail

TANKWRIGHT_INLINE std::optional<tankwright::vessel::bed_slope> slope_of(const sand& s) {
  if (!s.shallow_end) return std::nullopt;
  tankwright::vessel::bed_slope bed{.shallow_end = *s.shallow_end, .deep_end = *s.deep_end, .run = *s.run};
  if (s.repose) bed.repose = *s.repose;
  return bed;
}

TANKWRIGHT_INLINE tankwright::vessel::item item_of(const sand& s, const tankwright::vessel::shape& display,
                                                   std::string label) {
  namespace tv = tankwright::vessel;
  const tv::grains kind = *s.kind == sand_kind::quartz ? tv::quartz_sand : tv::aragonite_sand;
  if (s.mass) return tv::sand_by_mass({.dry_mass = *s.mass, .sand = kind, .label = std::move(label)});
  const auto slope = slope_of(s);
  return tv::sand_bed({.floor = s.area ? *s.area : tv::plan_area(display, length{}),
                       .depth = slope ? tv::sloped_bed(*slope).mean_depth : *s.depth,
                       .sand = kind,
                       .label = std::move(label)});
}

TANKWRIGHT_INLINE tankwright::vessel::item item_of(const rock& s, const tankwright::vessel::shape& display,
                                                   std::string label) {
  namespace tv = tankwright::vessel;
  const tv::grains kind = *s.kind == rock_kind::branch_tips ? tv::coral_branch_tips : tv::reef_rock;
  if (s.level_before) {
    return tv::rock_by_level_rise(
        display, {.before = *s.level_before, .after = *s.level_after, .rock = kind, .label = std::move(label)});
  }
  if (!s.submerged_mass) {
    return tv::rock_by_mass({.dry_mass = *s.dry_mass,
                             .rock = kind,
                             .flooded_pores = s.flooded_pores.value_or(fraction(1.0)),
                             .label = std::move(label)});
  }
  const auto density =
      water::density(s.salinity.value_or(practical_salinity{35.0}), s.temperature.value_or(celsius(25.0)));
  return tv::rock_weighed_under_water({.dry_mass = *s.dry_mass,
                                       .submerged_mass = *s.submerged_mass,
                                       .water_density = density,
                                       .soaked_mass = s.soaked_mass.maybe(),
                                       .rock = kind,
                                       .label = std::move(label)});
}

TANKWRIGHT_INLINE tankwright::vessel::item item_of(const equipment& s, std::string label) {
  return tankwright::vessel::equipment({.outside = *s.volume, .mass = *s.mass, .label = std::move(label)});
}

TANKWRIGHT_INLINE std::vector<tankwright::vessel::item> vessel_inputs::items() const {
  std::vector<tankwright::vessel::item> all;
  all.reserve(sand.size() + rock.size() + equipment.size());
  for (const auto* some : {&sand, &rock, &equipment}) all.insert(all.end(), some->begin(), some->end());
  return all;
}

TANKWRIGHT_INLINE tankwright::vessel::shape shape_of(const vessel_section& s) {
  namespace tv = tankwright::vessel;
  const bool outside = *s.measured == measured_at::outside;
  const length wall = outside ? *s.wall_thickness : length{};
  const auto across = [&](const value<length>& key) { return detail::inside_measure(s, key, wall, wall); };
  const std::string label = detail::label_or(s.label, "display");
  const tv::inside height = detail::inside_measure(s, s.height, outside ? s.floor_thickness.get() : length{}, length{});
  switch (*s.shape) {
    case display_shape::cylinder:
      return tv::upright_cylinder({.diameter = across(s.diameter), .height = height, .label = label});
    case display_shape::bow_front:
      return tv::bow_front({.width = across(s.length),
                            .depth_at_ends = across(s.width),
                            .bow = tv::inside{*s.bow},
                            .height = height,
                            .label = label});
    case display_shape::box:
      break;
  }
  return tv::box({.length = across(s.length), .width = across(s.width), .height = height, .label = label});
}

TANKWRIGHT_INLINE vessel_inputs inputs_of(const vessel_section& s) {
  namespace tv = tankwright::vessel;
  vessel_inputs in{.display = shape_of(s), .water_level = *s.water_level};
  for (std::size_t i = 0; i < s.sand.size(); ++i) {
    const std::string label = detail::numbered(s.sand[i].label, "sand", i, s.sand.size());
    in.sand.push_back(item_of(s.sand[i], in.display, label));
    if (const auto slope = slope_of(s.sand[i])) in.slopes.push_back({label, *slope});
  }
  for (std::size_t i = 0; i < s.rock.size(); ++i) {
    in.rock.push_back(item_of(s.rock[i], in.display, detail::numbered(s.rock[i].label, "rock", i, s.rock.size())));
  }
  for (std::size_t i = 0; i < s.equipment.size(); ++i) {
    in.equipment.push_back(
        item_of(s.equipment[i], detail::numbered(s.equipment[i].label, "equipment", i, s.equipment.size())));
  }
  for (std::size_t i = 0; i < s.panel.size(); ++i) {
    const panel& one = s.panel[i];
    in.panels.push_back({.panel = {.width = *one.width,
                                   .height = *one.height,
                                   .thickness = *one.thickness,
                                   .edges = *one.edges,
                                   .material = detail::material_of(*one.material, one.allowable),
                                   .label = detail::numbered(one.label, "panel", i, s.panel.size())},
                         .lower_edge = *one.lower_edge});
  }
  in.stages = s.stages.get();
  if (in.stages.empty()) {
    for (const double part : {0.25, 0.5, 0.75, 1.0}) in.stages.push_back(in.water_level * part);
  }
  if (s.floor) in.floor = detail::inputs_of(*s.floor);
  if (s.brace) in.brace = detail::inputs_of(*s.brace);
  for (std::size_t i = 0; i < s.lid.size(); ++i) {
    in.lids.push_back(detail::lid_of(s.lid[i], detail::numbered(s.lid[i].label, "lid", i, s.lid.size())));
  }
  in.lid_span_over_sag = *s.lid_span_over_sag;
  if (s.view) {
    const bool glass = *s.view->panel == pane_material::glass;
    in.view = view_inputs{.rock = {.water = *s.view->nearest_rock,
                                   .panel = *s.view->thickness,
                                   .panel_index = glass ? tv::glass_index : tv::acrylic_index},
                          .least_clearance = *s.view->least_clearance};
  }
  return in;
}

}  // namespace tankwright::plan
