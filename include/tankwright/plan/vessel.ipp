// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/sheets.hpp>
#include <tankwright/plan/usual.hpp>
#include <tankwright/plan/vessel.hpp>

// Keys read as a list: name, value and what is said of it.
// clang-format off

namespace tankwright::plan {

namespace detail {

inline const range_of<stress> strength{kilopascals(1.0), gigapascals(10.0)};    ///< from jelly to fibres
inline const range_of<stress> stiffness{kilopascals(1.0), gigapascals(1200.0)};  ///< from rubber foam to diamond

inline void describe_material(visitor& key, word<sheet_material>& m, const key_about& about) {
  key("material", m, {"annealed glass", "cast acrylic"}, about);
}

/// The sheets that are sold of what the key `material` says.
[[nodiscard]] inline std::span<const double> sold(const word<sheet_material>& m) noexcept {
  return sheets_of(m && m.index() == static_cast<int>(sheet_material::cast_acrylic));
}

}  // namespace detail

TANKWRIGHT_INLINE void describe(visitor& key, sand& s) {
  key("label", s.label, {.means = "what the report calls it"});
  key("kind", s.kind, {"aragonite", "quartz"}, {.means = "what the sand is made of"});
  key("depth", s.depth, {.means = "of a level bed", .limits = usual::building, .set_by = chosen,
                         .choose_between = {{metres(0.0), metres(0.4)}}, .step = millimetres(5.0),
                         .doubt = millimetres(10.0)});
  key("mass", s.mass, {.means = "of the dry sand, in place of its depth", .limits = usual::weight_or_none,
                       .set_by = chosen, .choose_between = {{kilograms(0.0), kilograms(5000.0)}},
                       .step = kilograms(5.0), .doubt = usual::weighed});
  key("shallow_end", s.shallow_end, {.means = "depth where a sloped bed is least, in place of depth",
                                     .limits = usual::building, .set_by = chosen,
                                     .choose_between = {{metres(0.0), metres(0.4)}}, .step = millimetres(5.0),
                                     .doubt = millimetres(10.0)});
  key("deep_end", s.deep_end, {.means = "depth where it is most", .limits = usual::building, .set_by = chosen,
                               .choose_between = {{metres(0.0), metres(0.6)}}, .step = millimetres(5.0),
                               .doubt = millimetres(10.0)});
  key("run", s.run, {.means = "horizontal distance between the two", .limits = usual::built, .set_by = chosen,
                     .choose_between = {{metres(0.1), metres(10.0)}}, .step = millimetres(50.0),
                     .doubt = usual::tape});
  key("repose", s.repose, {.means = "steepest slope that the sand lies at under water; 33 degrees where not given",
                           .limits = {degrees(1.0), degrees(89.0)}, .doubt = degrees(3.0)});
  key("area", s.area, {.means = "of the floor that the bed covers; all of it where not given",
                       .limits = usual::surface, .doubt = usual::surfaces});
  key("grain", s.grain, {.means = "size of the grain that half of it is finer than, for the jets over it",
                         .limits = {micrometres(10.0), millimetres(100.0)}, .set_by = chosen,
                         .choose_between = {{millimetres(0.1), millimetres(6.0)}}, .step = millimetres(0.1),
                         .doubt = known_within(percent(25.0))});
  key("bag", s.bag, {.means = "dry sand in one bag as it is sold", .limits = usual::weight});
  describe_note(key, s.note);
  key.alternatives({"depth", "mass", "shallow_end"}, true);
  key.together({"shallow_end", "deep_end", "run"});
}

TANKWRIGHT_INLINE void describe(visitor& key, rock& s) {
  key("label", s.label, {.means = "what the report calls it"});
  key("kind", s.kind, {"reef rock", "branch tips"},
      {.means = "what it is: blocks of old reef, or tips of branching coral"});
  key("dry_mass", s.dry_mass, {.means = "of the dry rock", .limits = usual::weight_or_none, .doubt = usual::weighed});
  key("submerged_mass", s.submerged_mass, {.means = "what a scale reads while it hangs in water, soaked through",
                                           .limits = usual::weight_or_none, .doubt = usual::weighed});
  key("soaked_mass", s.soaked_mass, {.means = "in air, soaked and wiped", .limits = usual::weight_or_none,
                                     .doubt = usual::weighed});
  key("salinity", s.salinity, {.means = "practical salinity of the water that it hung in; 35 where not given",
                               .limits = {practical_salinity{0.0}, practical_salinity{300.0}},
                               .doubt = practical_salinity{0.5}});
  key("temperature", s.temperature, {.means = "of the water that it hung in; 25 degrees Celsius where not given",
                                     .limits = usual::liquid_water, .doubt = usual::thermometer});
  key("flooded_pores", s.flooded_pores, {.means = "part of its pores that water has filled; all where not given",
                                         .limits = usual::part_of_whole, .doubt = known_within(percent(10.0))});
  key("level_before", s.level_before, {.means = "water in the display before it went in, in place of its mass",
                                       .limits = usual::building, .doubt = millimetres(1.0)});
  key("level_after", s.level_after, {.means = "water in the display after it went in", .limits = usual::building,
                                     .doubt = millimetres(1.0)});
  describe_note(key, s.note);
  key.alternatives({"dry_mass", "level_before"}, true);
  key.together({"level_before", "level_after"});
}

TANKWRIGHT_INLINE void describe(visitor& key, equipment& s) {
  key("label", s.label, {.means = "what the report calls it"});
  key("volume", s.volume, {.means = "that it keeps the water out of", .limits = usual::water_or_none, .needed = true,
                           .doubt = known_within(percent(10.0))});
  key("mass", s.mass, {.means = "in air", .limits = usual::weight_or_none, .needed = true, .doubt = usual::weighed});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, panel& s) {
  key("label", s.label, {.means = "what the report calls it"});
  key("width", s.width, {.means = "clear width between the upright edges", .limits = usual::part, .needed = true,
                         .doubt = usual::tape});
  key("height", s.height, {.means = "clear height between the lower and the upper edge", .limits = usual::part,
                           .needed = true, .doubt = usual::tape});
  key("lower_edge", s.lower_edge, {.means = "lower edge above the floor inside; more than 0 for a window in a wall",
                                   .limits = usual::building, .doubt = usual::tape});
  key("thickness", s.thickness, {.means = "least thickness that the maker allows, not the nominal one",
                                 .limits = usual::part, .needed = true, .set_by = chosen,
                                 .sizes = detail::sold(s.material), .doubt = millimetres(0.2)});
  key("edges", s.edges, {"all supported", "top free", "bottom clamped", "bottom clamped, top free"},
      {.means = "how it is held: all supported where a stiff frame holds the top too", .needed = true});
  detail::describe_material(key, s.material, {.means = "what it is made of", .needed = true, .set_by = chosen});
  key("allowable", s.allowable, {.means = "stress that it may carry for good, in place of that of its material",
                                 .limits = detail::strength, .doubt = known_within(percent(10.0))});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, floor_under& s) {
  key("tank_and_stand", s.tank_and_stand, {.means = "mass of the empty display with its stand",
                                           .limits = usual::weight_or_none, .needed = true,
                                           .doubt = known_within(percent(10.0))});
  key("footprint", s.footprint, {.means = "outline of the stand on the floor", .limits = usual::surface,
                                 .needed = true, .set_by = chosen,
                                 .choose_between = {{square_metres(0.1), square_metres(50.0)}},
                                 .step = square_metres(0.05), .doubt = usual::surfaces});
  key("bearing", s.bearing, {.means = "area that touches the floor, all feet together", .limits = usual::surface,
                             .set_by = chosen, .choose_between = {{square_metres(0.01), square_metres(50.0)}},
                             .step = square_metres(0.01), .doubt = usual::surfaces});
  key("built_for", s.built_for, {.means = "load that the floor is built for, from the building's papers",
                                 .limits = {pascals(1.0), megapascals(100.0)}, .doubt = known_within(percent(5.0))});
  key("room", s.room, {"living", "sleeping"}, {.means = "use of the room, for the load that a code asks for"});
  key("sump_below", s.sump_below, {.means = "whether the sump stands within the footprint", .set_by = chosen});
  describe_note(key, s.note);
  key.alternatives({"built_for", "room"}, false);
}

TANKWRIGHT_INLINE void describe(visitor& key, brace_load& s) {
  key("label", s.label, {.means = "what the report calls it"});
  key("mass", s.mass, {.means = "of what stands or hangs there", .limits = usual::weight_or_none, .needed = true,
                       .doubt = usual::weighed});
  key("at", s.at, {.means = "where along the brace, from one end", .limits = usual::building, .needed = true,
                   .set_by = chosen, .doubt = usual::tape});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, brace& s) {
  key("label", s.label, {.means = "what the report calls it"});
  key("count", s.count, {.means = "number of braces between the ends of the rail", .limits = {1.0, 20.0},
                         .whole = true, .set_by = chosen, .choose_between = {{1.0, 5.0}}, .step = 1.0});
  key("rail", s.rail, {.means = "length of the rail along the wall", .limits = usual::built, .needed = true,
                       .doubt = usual::tape});
  key("rail_height", s.rail_height, {.means = "of the rail above the floor inside", .limits = usual::built,
                                     .needed = true, .doubt = usual::tape});
  key("span", s.span, {.means = "of a brace, from rail to rail", .limits = usual::built, .needed = true,
                       .doubt = usual::tape});
  key("breadth", s.breadth, {.means = "of a brace, level", .limits = usual::part, .needed = true, .set_by = chosen,
                             .choose_between = {{millimetres(10.0), millimetres(300.0)}}, .step = millimetres(5.0),
                             .doubt = usual::rule});
  key("depth", s.depth, {.means = "of a brace, upright", .limits = usual::part, .needed = true, .set_by = chosen,
                         .choose_between = {{millimetres(10.0), millimetres(300.0)}}, .step = millimetres(5.0),
                         .doubt = usual::rule});
  detail::describe_material(
      key, s.material,
      {.means = "what it is made of; otherwise give modulus, allowable and density", .set_by = chosen});
  key("modulus", s.modulus, {.means = "Young's modulus along it, in place of a material", .limits = detail::stiffness,
                             .doubt = known_within(percent(15.0))});
  key("allowable", s.allowable, {.means = "stress that it may carry for good", .limits = detail::strength,
                                 .doubt = known_within(percent(10.0))});
  key("density", s.density, {.means = "of what it is made of",
                             .limits = {kilograms_per_cubic_metre(1.0), kilograms_per_cubic_metre(23000.0)},
                             .doubt = known_within(percent(10.0))});
  key("joint", s.joint, {.means = "pull that the fixing at each end holds for good",
                         .limits = {newtons(0.001), kilonewtons(1e6)}, .set_by = chosen,
                         .choose_between = {{newtons(100.0), kilonewtons(50.0)}}, .step = newtons(100.0),
                         .doubt = known_within(percent(20.0))});
  key("load", s.load, {.means = "what stands or hangs on one brace"});
  describe_note(key, s.note);
  key.alternatives({"material", "modulus"}, true);
  key.together({"modulus", "density"});
}

TANKWRIGHT_INLINE void describe(visitor& key, lid& s) {
  key("label", s.label, {.means = "what the report calls it"});
  key("span", s.span, {.means = "clear span between the two edges that it lies on", .limits = usual::part,
                       .needed = true, .set_by = chosen, .choose_between = {{metres(0.1), metres(2.0)}},
                       .step = millimetres(10.0), .doubt = usual::tape});
  key("thickness", s.thickness, {.means = "least thickness that the maker allows", .limits = usual::part,
                                 .needed = true, .set_by = chosen, .sizes = detail::sold(s.material),
                                 .doubt = millimetres(0.2)});
  detail::describe_material(key, s.material, {.means = "what it is made of", .needed = true, .set_by = chosen});
  key("allowable", s.allowable, {.means = "stress that it may carry for good, in place of that of its material",
                                 .limits = detail::strength, .doubt = known_within(percent(10.0))});
  key("extra_load", s.extra_load, {.means = "spread on it beside its own weight",
                                   .limits = {pascals(0.0), megapascals(1.0)}, .doubt = known_within(percent(20.0))});
  key("moisture_strain", s.moisture_strain,
      {.means = "how much longer its wet face grows than the dry one; about 0.001 for acrylic", .limits = {0.0, 0.05},
       .doubt = known_within_factor(2.0)});
  key("width", s.width, {.means = "of one lid, across its span; asks how it is lifted", .limits = usual::part,
                         .set_by = chosen, .choose_between = {{metres(0.1), metres(2.0)}},
                         .step = millimetres(50.0), .doubt = usual::tape});
  key("lifted_by", s.lifted_by, {.means = "number of people who lift it together", .limits = {1.0, 10.0},
                                 .whole = true, .set_by = chosen, .choose_between = {{1.0, 4.0}}, .step = 1.0});
  key("reach", s.reach, {.means = "from the ankles of who lifts it to its middle", .limits = usual::built,
                         .set_by = chosen, .choose_between = {{metres(0.25), metres(0.63)}},
                         .step = millimetres(50.0), .doubt = millimetres(50.0)});
  key("above_feet", s.above_feet, {.means = "of the lid above the floor or step that one stands on",
                                   .limits = usual::building, .set_by = chosen,
                                   .choose_between = {{metres(0.5), metres(1.7)}}, .step = millimetres(50.0),
                                   .doubt = millimetres(20.0)});
  describe_note(key, s.note);
  key.together({"width", "above_feet"});
}

TANKWRIGHT_INLINE void describe(visitor& key, plywood_wall& s) {
  key("label", s.label, {.means = "what the report calls it"});
  key("spacing", s.spacing, {.means = "of the frames behind it, centre to centre", .limits = usual::part,
                             .needed = true, .set_by = chosen,
                             .choose_between = {{millimetres(100.0), metres(1.2)}}, .step = millimetres(10.0),
                             .doubt = usual::tape});
  key("lower_edge", s.lower_edge, {.means = "lower edge of the sheet above the floor inside",
                                   .limits = usual::building, .doubt = usual::tape});
  key("thickness", s.thickness, {.means = "of the sheet", .limits = usual::part, .needed = true, .set_by = chosen,
                                 .choose_between = {{millimetres(9.0), millimetres(60.0)}}, .step = millimetres(3.0),
                                 .doubt = millimetres(0.5)});
  key("strength", s.strength, {.means = "bending stress that the standard or the maker allows, dry, along the span",
                               .limits = detail::strength, .needed = true, .doubt = known_within(percent(10.0))});
  key("modulus", s.modulus, {.means = "Young's modulus in bending, dry, along the span", .limits = detail::stiffness,
                             .needed = true, .doubt = known_within(percent(15.0))});
  key("spans", s.spans, {"one", "three or more"}, {.means = "whether the sheet ends at the next frame or runs on",
                                                   .set_by = chosen});
  key("span_over_sag", s.span_over_sag, {.means = "how flat it must stay: its span over its sag",
                                         .limits = {1.0, 1e6}, .set_by = wanted});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, top_rail& s) {
  key("label", s.label, {.means = "what the report calls it"});
  key("length", s.length, {.means = "between its ends; that of [vessel.brace] where not given", .limits = usual::built,
                           .doubt = usual::tape});
  key("height", s.height, {.means = "above the floor inside; that of [vessel.brace] where not given",
                           .limits = usual::built, .doubt = usual::tape});
  key("braces", s.braces, {.means = "number of braces that hold it between its ends; that of [vessel.brace] where not "
                                    "given",
                           .limits = {0.0, 20.0}, .whole = true, .set_by = chosen, .choose_between = {{0.0, 5.0}},
                           .step = 1.0});
  key("breadth", s.breadth, {.means = "of its section, upright", .limits = usual::part, .needed = true,
                             .set_by = chosen, .choose_between = {{millimetres(20.0), millimetres(300.0)}},
                             .step = millimetres(5.0), .doubt = usual::rule});
  key("depth", s.depth, {.means = "of its section, in the direction of the push", .limits = usual::part,
                         .needed = true, .set_by = chosen,
                         .choose_between = {{millimetres(20.0), millimetres(300.0)}}, .step = millimetres(5.0),
                         .doubt = usual::rule});
  key("modulus", s.modulus, {.means = "Young's modulus along it", .limits = detail::stiffness, .needed = true,
                             .doubt = known_within(percent(15.0))});
  key("allowable", s.allowable, {.means = "stress that it may carry for good", .limits = detail::strength,
                                 .needed = true, .doubt = known_within(percent(10.0))});
  key("span_over_sag", s.span_over_sag, {.means = "how straight it must stay between its supports: span over sag",
                                         .limits = {1.0, 1e6}, .set_by = wanted});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, corner_joint& s) {
  key("label", s.label, {.means = "what the report calls it"});
  key("wall_width", s.wall_width, {.means = "clear width of the wall that pulls on it, from corner to corner",
                                   .limits = usual::built, .needed = true, .doubt = usual::tape});
  key("lower_edge", s.lower_edge, {.means = "lower end of the joint above the floor inside",
                                   .limits = usual::building, .doubt = usual::tape});
  key("screw_diameter", s.screw_diameter, {.means = "shank of the wood screws", .limits = usual::part,
                                           .set_by = chosen,
                                           .choose_between = {{millimetres(3.0), millimetres(10.0)}},
                                           .step = millimetres(0.5), .doubt = millimetres(0.1)});
  key("penetration", s.penetration, {.means = "of the thread into the side grain of the part that holds the point",
                                     .limits = usual::part, .set_by = chosen,
                                     .choose_between = {{millimetres(10.0), millimetres(120.0)}},
                                     .step = millimetres(5.0), .doubt = millimetres(2.0)});
  key("spacing", s.spacing, {.means = "of the screws along the joint", .limits = usual::part, .set_by = chosen,
                             .choose_between = {{millimetres(20.0), millimetres(400.0)}}, .step = millimetres(10.0),
                             .doubt = millimetres(5.0)});
  key("gravity", s.gravity, {.means = "specific gravity of that wood, oven dry: spruce 0.42, Douglas fir 0.50",
                             .limits = {0.1, 1.2}, .doubt = known_within(percent(10.0))});
  key("glue_width", s.glue_width, {.means = "of the glue line, across the joint", .limits = usual::part,
                                   .set_by = chosen, .choose_between = {{millimetres(10.0), millimetres(100.0)}},
                                   .step = millimetres(5.0), .doubt = millimetres(2.0)});
  key("glue_shear", s.glue_shear, {.means = "shear that glue and wood may carry for good; in plywood the rolling shear "
                                            "of its plies",
                                   .limits = detail::strength, .doubt = known_within(percent(20.0))});
  describe_note(key, s.note);
  key.together({"screw_diameter", "penetration", "spacing", "gravity"});
  key.together({"glue_width", "glue_shear"});
}

TANKWRIGHT_INLINE void describe(visitor& key, silicone_seam& s) {
  key("label", s.label, {.means = "what the report calls it"});
  key("pane_width", s.pane_width, {.means = "clear width of the pane that pulls on it, from seam to seam",
                                   .limits = usual::built, .needed = true, .doubt = usual::tape});
  key("lower_edge", s.lower_edge, {.means = "lower end of the seam above the floor inside",
                                   .limits = usual::building, .doubt = usual::tape});
  key("bite", s.bite, {.means = "width of the silicone that the pull goes through", .limits = usual::part,
                       .needed = true, .set_by = chosen,
                       .choose_between = {{millimetres(4.0), millimetres(40.0)}}, .step = millimetres(1.0),
                       .doubt = millimetres(1.0)});
  key("gap", s.gap, {.means = "thickness of the silicone between the two faces", .limits = usual::part,
                     .set_by = chosen, .choose_between = {{millimetres(1.0), millimetres(15.0)}},
                     .step = millimetres(0.5), .doubt = millimetres(0.5)});
  key("movement", s.movement, {.means = "how far the two faces move against each other, by bending and warmth",
                               .limits = usual::building, .doubt = known_within(percent(30.0))});
  key("stretches", s.stretches, {.means = "of its thickness that the silicone may be stretched, by its class",
                                 .limits = {percent(1.0), percent(100.0)}});
  describe_note(key, s.note);
  key.together({"gap", "movement"});
}

TANKWRIGHT_INLINE void describe(visitor& key, bulkhead& s) {
  key("label", s.label, {.means = "what the report calls it"});
  key("hole", s.hole, {.means = "its diameter in the pane", .limits = usual::part, .needed = true, .set_by = chosen,
                       .choose_between = {{millimetres(15.0), millimetres(150.0)}}, .step = millimetres(1.0),
                       .doubt = millimetres(0.5)});
  key("height", s.height, {.means = "middle of the hole above the floor inside", .limits = usual::building,
                           .needed = true, .set_by = chosen, .choose_between = {{metres(0.05), metres(2.0)}},
                           .step = millimetres(10.0), .doubt = usual::tape});
  key("to_edge", s.to_edge, {.means = "middle of the hole to the nearest edge of the pane", .limits = usual::built,
                             .needed = true, .set_by = chosen, .choose_between = {{metres(0.03), metres(1.0)}},
                             .step = millimetres(5.0), .doubt = usual::tape});
  key("thickness", s.thickness, {.means = "of the pane", .limits = usual::part, .needed = true,
                                 .doubt = millimetres(0.2)});
  key("pane", s.pane, {"glass", "acrylic"}, {.means = "what the pane is made of"});
  key("toughened", s.toughened, {.means = "whether the glass is toughened, which cannot be drilled"});
  key("gasket", s.gasket, {.means = "thickness of its soft gasket before it is pressed",
                           .limits = {millimetres(0.1), millimetres(100.0)}, .set_by = chosen,
                           .choose_between = {{millimetres(1.0), millimetres(10.0)}}, .step = millimetres(0.5),
                           .doubt = millimetres(0.1)});
  key("unevenness", s.unevenness, {.means = "from the lowest to the highest place of the face under its gasket",
                                   .limits = {millimetres(0.0), millimetres(100.0)}, .doubt = millimetres(0.1)});
  describe_note(key, s.note);
  key.together({"gasket", "unevenness"});
}

TANKWRIGHT_INLINE void describe(visitor& key, view_through& s) {
  key("nearest_rock", s.nearest_rock,
      {.means = "nearest rock to the inner face of the front",
       .limits = usual::building,
       .needed = true,
       .set_by = chosen,
       .choose_between = {{metres(0.0), metres(3.0)}},
       .step = millimetres(10.0),
       .doubt = millimetres(10.0)});
  key("panel", s.panel, {"glass", "acrylic"}, {.means = "what the front is made of"});
  key("thickness", s.thickness, {.means = "of the front", .limits = usual::building, .doubt = usual::rule});
  key("least_clearance", s.least_clearance, {.means = "room in front of the rock that the animals need to turn",
                                             .limits = usual::building, .set_by = wanted});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, vessel_section& s) {
  key("label", s.label, {.means = "what the report calls the display"});
  key("shape", s.shape, {"box", "cylinder", "bow front"}, {.means = "shape of the display seen from above"});
  key("measured", s.measured, {"inside", "outside"},
      {.means = "where the tape lay: between the inner or the outer faces"});
  key("wall_thickness", s.wall_thickness, {.means = "of the walls, where the display is measured outside",
                                           .limits = usual::part, .doubt = usual::rule});
  key("floor_thickness", s.floor_thickness, {.means = "of the floor, where the display is measured outside",
                                             .limits = usual::part, .doubt = usual::rule});
  key("length", s.length, {.means = "of a box; of a bow front along its front", .limits = usual::built,
                           .doubt = usual::tape});
  key("width", s.width, {.means = "front to back; of a bow front at its ends", .limits = usual::built,
                         .doubt = usual::tape});
  key("diameter", s.diameter, {.means = "of a cylinder", .limits = usual::built, .doubt = usual::tape});
  key("bow", s.bow, {.means = "how far the middle of a bow front stands out", .limits = usual::building,
                     .doubt = usual::tape});
  key("height", s.height, {.means = "from the floor to the rim", .limits = usual::built, .needed = true,
                           .doubt = usual::tape});
  key("water_level", s.water_level, {.means = "water above the inside of the floor while the pump runs",
                                     .limits = usual::built, .needed = true, .doubt = usual::water_mark});
  key("stages", s.stages, {.means = "levels at which the first fill pauses, rising; the quarters of the water level "
                                    "where not given",
                           .limits = usual::built, .set_by = chosen});
  key("hose", s.hose, {.means = "what the filling hose gives, by a bucket and a watch",
                       .limits = {litres_per_hour(1.0), litres_per_hour(1e6)}, .set_by = set_by::measured,
                       .doubt = known_within(percent(10.0))});
  key("metered", s.metered, {.means = "what the water meter has counted from the empty display to the water level",
                             .limits = usual::water, .doubt = usual::metered});
  key("metered_within", s.metered_within, {.means = "how closely the meter and the dimensions must agree",
                                           .limits = usual::part_of_whole, .set_by = wanted});
  key("out_of_level", s.out_of_level, {.means = "how much higher the display stands at one end than at the other, by a "
                                                "spirit level or a water hose",
                                       .limits = usual::building, .doubt = millimetres(1.0)});
  key("lid_span_over_sag", s.lid_span_over_sag, {.means = "how flat a lid must stay: its span over its sag",
                                                 .limits = {1.0, 1e6}, .set_by = wanted});
  key("sand", s.sand, {.means = "each bed of sand"});
  key("rock", s.rock, {.means = "each lot of rock"});
  key("equipment", s.equipment, {.means = "what else stands in the water"});
  key("panel", s.panel, {.means = "each pane that the water leans on"});
  key("floor", s.floor, {.means = "what the display stands on"});
  key("brace", s.brace, {.means = "the cross-braces over the top"});
  key("lid", s.lid, {.means = "each cover"});
  key("plywood", s.plywood, {.means = "each wall of plywood between its frames"});
  key("top_rail", s.top_rail, {.means = "each rail along the top of a wall"});
  key("joint", s.joint, {.means = "each corner of wood with its screws or its glue"});
  key("seam", s.seam, {.means = "each seam of silicone that a pane hangs on"});
  key("bulkhead", s.bulkhead, {.means = "each hole with a fitting in it"});
  key("view", s.view, {.means = "how close the rock looks"});
  describe_note(key, s.note);
}

}  // namespace tankwright::plan
