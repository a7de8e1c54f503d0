// SPDX-License-Identifier: BSL-1.0
#include "plan_file.hpp"

#include <cmath>

#include <tankwright/vessel/rock.hpp>
#include <tankwright/vessel/sand.hpp>

namespace plan_file {

using namespace tankwright;
namespace twc = tankwright::commissioning;

namespace {

std::string label_of(section& in, const std::string& otherwise) { return in.text("label").value_or(otherwise); }

/// A dimension as the water sees it: outside measures lose the panels at their two ends.
vessel::inside inside_from(section& in, std::string_view key, bool measured_outside, length near_panel, length far_panel) {
  const auto given = in.need<length>(key);
  in.hold(key, {key, "m", positive}, given.value());
  if (!measured_outside) return vessel::inside{given};
  return in.attempt([&] {
    return vessel::inside_of(
        {.measured = vessel::outside{given}, .near_panel = near_panel, .far_panel = far_panel});
  });
}

vessel::shape shape_from(section& in) {
  const auto kind = in.word("shape", {"box", "cylinder", "bow front"}).value_or(0);
  const bool outside = in.word("measured", {"inside", "outside"}).value_or(0) == 1;
  const length wall = outside ? in.need<length>("wall_thickness") : length{};
  const length floor = outside ? in.need<length>("floor_thickness") : length{};
  const auto across = [&](std::string_view key) { return inside_from(in, key, outside, wall, wall); };
  const std::string label = label_of(in, "display");
  const vessel::inside height = inside_from(in, "height", outside, floor, length{});
  if (kind == 1) return vessel::upright_cylinder({.diameter = across("diameter"), .height = height, .label = label});
  if (kind == 2) {
    const vessel::bow_front_size size{.width = across("length"), .depth_at_ends = across("width"),
                                      .bow = vessel::inside{in.need<length>("bow")}, .height = height, .label = label};
    return in.attempt([&] { return vessel::bow_front(size); });
  }
  return vessel::box({.length = across("length"), .width = across("width"), .height = height, .label = label});
}

/// What an item displaces alone, held against the water that is to be in the display.
void refuse_what_does_not_fit(const section& in, std::string_view key, const vessel::item& made, volume water) {
  const volume takes = made.envelope.central.value();
  if (takes <= water) return;
  in.fail_key(key, "takes the room of " + text::in(takes, "L") + "; the display holds " + text::in(water, "L") +
                       " up to the water level");
}

/// By depth, by the two depths of a slope, or by mass.
vessel::item sand_from(section in, const vessel::shape& display, volume water,
                       std::optional<vessel::bed_slope>& slope) {
  const vessel::grains kind =
      in.word("kind", {"aragonite", "quartz"}).value_or(0) == 1 ? vessel::quartz_sand : vessel::aragonite_sand;
  const std::string label = label_of(in, "sand");
  const int given = in.has("depth") + in.has("shallow_end") + in.has("mass");
  if (given != 1) in.fail_here("needs one of depth, shallow_end (with deep_end and run) or mass");
  const area floor = in.value_or<area>("area", vessel::plan_area(display, length{}));
  const auto made = in.attempt([&] {
    if (const auto m = in.maybe<mass>("mass")) return vessel::sand_by_mass({.dry_mass = *m, .sand = kind, .label = label});
    if (const auto d = in.maybe<length>("depth")) {
      return vessel::sand_bed({.floor = floor, .depth = *d, .sand = kind, .label = label});
    }
    vessel::bed_slope bed{.shallow_end = in.need<length>("shallow_end"), .deep_end = in.need<length>("deep_end"),
                          .run = in.need<length>("run")};
    if (const auto repose = in.maybe<angle>("repose")) bed.repose = *repose;
    slope = bed;
    return vessel::sand_bed(
        {.floor = floor, .depth = vessel::sloped_bed(bed).mean_depth, .sand = kind, .label = label});
  });
  in.finish();
  refuse_what_does_not_fit(in, in.has("mass") ? "mass" : in.has("depth") ? "depth" : "deep_end", made, water);
  return made;
}

/// By its dry mass, by its weight under water too, or by how far it raised the water.
vessel::item rock_from(section in, const vessel::shape& display, volume water) {
  const std::string label = label_of(in, "rock");
  const vessel::grains kind =
      in.word("kind", {"reef rock", "branch tips"}).value_or(0) == 1 ? vessel::coral_branch_tips : vessel::reef_rock;
  if (in.has("dry_mass") == in.has("level_before")) in.fail_here("needs dry_mass, or level_before with level_after");
  const auto made = in.attempt([&] {
    if (const auto before = in.maybe<length>("level_before")) {
      for (const std::string_view key : {"level_before", "level_after"}) {
        in.hold(key, {"level", "m", {0.0, display.height().value()}}, in.need<length>(key).value());
      }
      return vessel::rock_by_level_rise(
          display, {.before = *before, .after = in.need<length>("level_after"), .rock = kind, .label = label});
    }
    const mass dry = in.need<mass>("dry_mass");
    if (const auto submerged = in.maybe<mass>("submerged_mass")) {
      const auto density = water::density(in.value_or<practical_salinity>("salinity", practical_salinity{35.0}),
                                          in.value_or<temperature>("temperature", celsius(25.0)));
      return vessel::rock_weighed_under_water({.dry_mass = dry, .submerged_mass = *submerged, .water_density = density,
                                               .soaked_mass = in.maybe<mass>("soaked_mass"), .rock = kind,
                                               .label = label});
    }
    return vessel::rock_by_mass({.dry_mass = dry, .rock = kind,
                                 .flooded_pores = in.value_or<proportion>("flooded_pores", fraction(1.0)),
                                 .label = label});
  });
  in.finish();
  refuse_what_does_not_fit(in, in.has("dry_mass") ? "dry_mass" : "level_after", made, water);
  return made;
}

vessel::item equipment_from(section in, volume water) {
  const vessel::equipment_size size{.outside = in.need<volume>("volume"), .mass = in.need<mass>("mass"),
                                    .label = label_of(in, "equipment")};
  in.finish();
  const auto made = in.attempt([&] { return vessel::equipment(size); });
  refuse_what_does_not_fit(in, "volume", made, water);
  return made;
}

/// A sheet material; `allowable` replaces its stress for a load that stays.
vessel::panel_material sheet_from(section& in) {
  const auto which = in.word("material", {"annealed glass", "cast acrylic"});
  if (!which) in.fail_here("needs material = \"annealed glass\" or \"cast acrylic\"");
  vessel::panel_material made = *which == 0 ? vessel::annealed_glass : vessel::cast_acrylic;
  if (const auto stress_given = in.maybe<stress>("allowable")) {
    in.hold("allowable", {"allowable stress", "Pa", positive}, stress_given->value());
    made.allowable = {"as given", *stress_given, vessel::load_basis::permanent, standing::common_practice, "the plan"};
  }
  return made;
}

/// A sheet material, or one of the plan's own by modulus, allowable stress and density.
vessel::panel_material bar_from(section& in) {
  if (in.has("material")) return sheet_from(in);
  const auto modulus = in.need<stress>("modulus");
  const auto allowable = in.need<stress>("allowable");
  const auto density = in.need<mass_density>("density");
  in.hold("modulus", {"modulus", "Pa", positive}, modulus.value());
  in.hold("allowable", {"allowable stress", "Pa", positive}, allowable.value());
  in.hold("density", {"density", "kg/m3", positive}, density.value());
  return {.name = "as given",
          .modulus = modulus,
          .long_term_modulus = {modulus, modulus, modulus, "as given"},
          .poisson = 0.3,
          .density = density,
          .allowable = {"as given", allowable, vessel::load_basis::permanent,
                        standing::common_practice, "the plan"},
          .read_as = standing::common_practice,
          .source = "the plan"};
}

twc::wall_panel panel_from(section in, const twc::vessel_plan& so_far) {
  const auto edges = in.word("edges", {"all supported", "top free", "bottom clamped", "bottom clamped, top free"});
  if (!edges) in.fail_here("needs edges = \"all supported\" where a frame holds the top too, or \"top free\"");
  constexpr vessel::panel_edges kinds[]{vessel::panel_edges::all_supported, vessel::panel_edges::top_free,
                                        vessel::panel_edges::bottom_clamped,
                                        vessel::panel_edges::bottom_clamped_top_free};
  twc::wall_panel wall{.panel = vessel::panel{.width = in.need<length>("width"), .height = in.need<length>("height"),
                                              .thickness = in.need<length>("thickness"), .edges = kinds[*edges],
                                              .material = sheet_from(in),
                                              .label = label_of(in, "panel " + std::to_string(so_far.panels.size() + 1))}};
  wall.lower_edge = in.value_or<length>("lower_edge", length{});
  in.hold("lower_edge", {"lower edge", "m", {0.0, so_far.display->height().value(), edge::closed, edge::open}},
          wall.lower_edge.value());
  in.hold("height", {"height", "m", {0.0, (so_far.display->height() - wall.lower_edge).value() * (1.0 + 1e-9), edge::open}},
          wall.panel->height->value());
  in.finish();
  twc::vessel_plan alone{.display = so_far.display, .water_level = so_far.water_level};
  alone.panels = {wall};
  in.attempt([&] { return twc::assess_first_fill(alone, {}); });
  return wall;
}

twc::floor_plan floor_from(section in, const vessel::shape& display) {
  twc::floor_plan floor{.tank_and_stand = in.need<mass>("tank_and_stand"), .footprint = in.need<area>("footprint")};
  floor.bearing = in.maybe<area>("bearing");
  if (in.has("built_for")) {
    const auto load = in.need<pressure>("built_for");
    in.hold("built_for", {"load", "Pa", positive}, load.value());
    floor.code = {"as built", load, standing::common_practice, "the building's papers, as given in the plan"};
    if (in.has("room")) in.fail_key("room", "says what a code asks; give it or built_for, not both");
  } else if (in.word("room", {"living", "sleeping"}).value_or(0) == 1) {
    floor.code = vessel::sleeping_rooms;
  }
  floor.sump_below = in.flag("sump_below", true);
  in.finish();
  in.attempt([&] {
    return vessel::load_on_floor({.total = floor.tank_and_stand, .footprint = floor.footprint,
                                  .bearing = floor.bearing, .code = floor.code, .label = display.label()});
  });
  return floor;
}

twc::brace_plan brace_from(section in, length rim) {
  const double count = in.value_or<double>("count", 1.0);
  in.hold("count", {"number of braces", "", {1.0, 20.0}}, count);
  if (count != std::floor(count)) in.fail_key("count", "must be a whole number");
  twc::brace_plan brace{.rail = in.need<length>("rail"), .rail_height = in.need<length>("rail_height"),
                        .braces = static_cast<int>(count), .span = in.need<length>("span"),
                        .breadth = in.need<length>("breadth"), .depth = in.need<length>("depth"),
                        .material = bar_from(in)};
  brace.label = label_of(in, brace.label);
  brace.joint = in.maybe<force>("joint");
  if (brace.joint) in.hold("joint", {"what the fixing holds", "N", positive}, brace.joint->value());
  for (section& one : in.sections("load")) {
    brace.on_it.push_back({.load = one.need<mass>("mass") * standard_gravity, .at = one.need<length>("at"),
                           .label = label_of(one, "load")});
    one.finish();
  }
  in.finish();
  in.attempt([&] { return twc::assess_closing({.water_to = rim, .brace = brace}, {}); });
  return brace;
}

vessel::lid lid_from(section in, std::size_t number) {
  vessel::lid lid{.span = in.need<length>("span"), .thickness = in.need<length>("thickness"), .material = sheet_from(in),
                  .label = label_of(in, "lid " + std::to_string(number))};
  lid.extra = in.value_or<pressure>("extra_load", lid.extra);
  lid.moisture_strain = in.value_or<double>("moisture_strain", lid.moisture_strain);
  in.finish();
  in.attempt([&] { return vessel::sag_of(lid); });
  return lid;
}

twc::view_plan view_from(section in) {
  const bool glass = in.word("panel", {"glass", "acrylic"}).value_or(0) == 0;
  twc::view_plan view{.rock = vessel::underwater_view{
                          .water = in.need<length>("nearest_rock"), .panel = in.value_or<length>("thickness", length{}),
                          .panel_index = glass ? vessel::glass_index : vessel::acrylic_index}};
  view.least_clearance = in.value_or<length>("least_clearance", view.least_clearance);
  in.finish();
  in.attempt([&] { return twc::assess_closing({.view = view}, {}); });
  return view;
}

}  // namespace

twc::vessel_plan read_vessel(section& in) {
  twc::vessel_plan plan{.display = shape_from(in), .water_level = in.need<length>("water_level")};
  const length rim = plan.display->height();
  const limits within_the_rim{"water level", "m", {0.0, rim.value(), edge::open}};
  in.hold("water_level", within_the_rim, plan.water_level->value());
  const volume water = vessel::filled_volume(plan.display, plan.water_level);
  for (section& one : in.sections("sand")) plan.sand.push_back(sand_from(one, plan.display, water, plan.sand_slope));
  for (section& one : in.sections("rock")) plan.rock.push_back(rock_from(one, plan.display, water));
  for (section& one : in.sections("equipment")) plan.equipment.push_back(equipment_from(one, water));
  for (section& one : in.sections("panel")) plan.panels.push_back(panel_from(one, plan));
  plan.stages = in.list<length>("stages");
  for (const length& level : plan.stages) in.hold("stages", within_the_rim, level.value());
  if (auto floor = in.sub("floor")) plan.floor = floor_from(*floor, plan.display);
  if (auto brace = in.sub("brace")) plan.brace = brace_from(*brace, rim);
  for (section& one : in.sections("lid")) plan.lids.push_back(lid_from(one, plan.lids.size() + 1));
  if (const auto allowed = in.maybe<double>("lid_span_over_sag")) {
    in.hold("lid_span_over_sag", {"span over sag", "", positive}, *allowed);
    plan.lid_span_over_sag = *allowed;
  }
  if (auto view = in.sub("view")) plan.view = view_from(*view);
  in.finish();
  in.attempt([&] {
    twc::system_state state;
    twc::describe(state, plan);
    return twc::assess_vessel(plan, state);
  });
  return plan;
}

}  // namespace plan_file
