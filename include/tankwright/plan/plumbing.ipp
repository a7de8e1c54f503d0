// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/plumbing.hpp>
#include <tankwright/plan/usual.hpp>

// Keys read as a list: name, value and what is said of it.
// clang-format off

namespace tankwright::plan {

TANKWRIGHT_INLINE void describe(visitor& key, overflow& s) {
  key("surface", s.surface, {.means = "free surface of the display at its overflow edge", .limits = usual::surface,
                             .needed = true, .doubt = usual::surfaces});
  key("crest_height", s.crest_height, {.means = "overflow edge above the floor of the display", .limits = usual::built,
                                       .needed = true, .doubt = usual::tape});
  key("width", s.width, {.means = "length of a full edge, along the water", .limits = usual::built, .set_by = chosen,
                         .choose_between = {{millimetres(50), metres(5)}}, .step = millimetres(10),
                         .doubt = usual::tape});
  key("thickness", s.thickness, {.means = "of the edge in the direction of the flow; 0 for a sharp one",
                                 .limits = usual::building, .doubt = usual::rule});
  key("gaps", s.gaps, {.means = "number of gaps of a comb, in place of a full edge", .limits = {1.0, 10000.0},
                       .whole = true, .set_by = chosen});
  key("gap_width", s.gap_width, {.means = "of one gap of the comb", .limits = usual::part, .set_by = chosen,
                                 .doubt = usual::rule});
  key("tooth_width", s.tooth_width, {.means = "of one tooth between two gaps", .limits = usual::part, .set_by = chosen,
                                     .doubt = usual::rule});
  key("gap_height", s.gap_height, {.means = "of the gaps, from the edge to their upper end", .limits = usual::part,
                                   .doubt = usual::rule});
  describe_note(key, s.note);
  key.alternatives({"width", "gaps"}, true);
  key.together({"gaps", "gap_width", "tooth_width", "gap_height"});
}

TANKWRIGHT_INLINE void describe(visitor& key, overflow_box& s) {
  key("area", s.area, {.means = "horizontal area of the water in the box", .limits = usual::surface, .needed = true,
                       .set_by = chosen, .choose_between = {{square_metres(0.01), square_metres(0.5)}},
                       .step = square_metres(0.01), .doubt = usual::surfaces});
  key("falls_by", s.falls_by, {.means = "how far the water in the box falls when the pump stops",
                               .limits = usual::building, .needed = true, .doubt = usual::tape});
  describe_note(key, s.note);
  key.renamed("plan", "area");
}

namespace detail {

inline void describe_curve(visitor& key, values<flow_rate>& flows, values<length>& heads, value<double>& speed) {
  key("flows", flows, {.means = "flows of points of its curve, from zero on",
                       .limits = {litres_per_hour(0.0), cubic_metres_per_hour(1000.0)}, .needed = true,
                       .doubt = usual::label_flow});
  key("heads", heads, {.means = "heads at those flows, falling", .limits = {metres(0.0), metres(100.0)},
                       .needed = true});
  key("speed", speed, {.means = "of the speed that the curve was measured at", .limits = {0.1, 1.5},
                       .set_by = chosen, .choose_between = {{0.3, 1.0}}, .step = 0.05});
}

}  // namespace detail

TANKWRIGHT_INLINE void describe(visitor& key, pump& s) {
  key("label", s.label, {.means = "what the report calls it"});
  detail::describe_curve(key, s.flows, s.heads, s.speed);
  key("power", s.power, {.means = "electricity that it draws, for the running cost; an appliance of the room with its "
                                  "label counts in place of it",
                         .limits = usual::electricity, .doubt = usual::label_power});
  key("check_valve", s.check_valve, {.means = "whether a check valve at it lets no water back while another pump runs",
                                     .set_by = chosen});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, candidate_pump& s) {
  key("label", s.label, {.means = "what the report calls it", .needed = true});
  detail::describe_curve(key, s.flows, s.heads, s.speed);
  key("power", s.power, {.means = "electricity that it draws, by its label or at the socket",
                         .limits = usual::electricity, .doubt = usual::label_power});
  key("price", s.price, {.means = "what it costs to buy, in your currency", .limits = {0.0, 1e9}});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, trunk& s) {
  describe_pipe(key, s.pipe);
  key("side_by_side", s.side_by_side, {.means = "how many such pipes lie side by side", .limits = {1.0, 10.0},
                                       .whole = true, .set_by = chosen, .choose_between = {{1.0, 3.0}}, .step = 1.0});
  key("check_valve", s.check_valve, {.means = "whether a check valve is in it, or at the pump", .set_by = chosen});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, return_pipe& s) {
  key("label", s.label, {.means = "what the report calls it", .needed = true});
  key("fed_by", s.fed_by, {.means = "label of the further pump that feeds it; the return pump, where none is named"});
  describe_pipe(key, s.pipe);
  key("kind", s.kind, {"open", "submerged"}, {.means = "where it ends: in the air above the water, or under it"});
  key("below_edge", s.below_edge, {.means = "top of its opening below the overflow edge; negative above it",
                                   .limits = {metres(-10.0), metres(10.0)}, .needed = true, .set_by = chosen,
                                   .choose_between = {{millimetres(-50), millimetres(500)}}, .step = millimetres(1),
                                   .doubt = usual::water_mark});
  key("siphon_break", s.siphon_break, {.means = "a hole below the overflow edge that lets air in",
                                       .limits = {metres(-10.0), metres(10.0)}, .set_by = chosen,
                                       .choose_between = {{millimetres(3), millimetres(50)}}, .step = millimetres(1),
                                       .doubt = usual::water_mark});
  key("check_valve", s.check_valve, {.means = "whether a check valve is in its pipe", .set_by = chosen});
  key("nozzle", s.nozzle, {.means = "bore of its opening, where that differs from its pipe", .limits = usual::part,
                           .set_by = chosen, .choose_between = {{millimetres(6.0), millimetres(100.0)}},
                           .step = millimetres(1.0), .doubt = usual::rule});
  key("to_sand", s.to_sand, {.means = "along the jet, from its opening to the sand that it is aimed at or meets first",
                             .limits = usual::built, .set_by = chosen,
                             .choose_between = {{millimetres(50.0), metres(3.0)}}, .step = millimetres(50.0),
                             .doubt = usual::tape});
  key("to_wall", s.to_wall, {.means = "along the jet, from its opening to the opposite wall", .limits = usual::built,
                             .doubt = usual::tape});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, drain_pipe& s) {
  key("label", s.label, {.means = "what the report calls it"});
  describe_pipe(key, s.pipe);
  key("drop", s.drop, {.means = "from its inlet down to its end", .limits = {millimetres(1.0), metres(50.0)},
                       .needed = true, .doubt = millimetres(20.0)});
  key("inlet_head", s.inlet_head, {.means = "how high the water may stand over its inlet", .limits = usual::built,
                                   .needed = true, .doubt = usual::water_mark});
  key("strainer", s.strainer, {.means = "whether a strainer stands before it"});
  key("runs_full", s.runs_full, {.means = "whether it is set up to run full of water, as a siphon", .set_by = chosen});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, chamber& s) {
  key("label", s.label, {.means = "what the report calls it"});
  key("area", s.area, {.means = "horizontal area of the chamber", .limits = usual::surface, .needed = true,
                       .doubt = usual::surfaces});
  key("gear", s.gear, {.means = "of it, taken up by what stands in the water", .limits = usual::surface_or_none,
                       .doubt = known_within(percent(20.0))});
  describe_note(key, s.note);
  key.renamed("plan", "area");
}

TANKWRIGHT_INLINE void describe(visitor& key, baffle& s) {
  key("crest", s.crest, {.means = "upper edge above the floor of the sump", .limits = usual::building, .needed = true,
                         .doubt = usual::tape});
  key("width", s.width, {.means = "length of that edge across the sump", .limits = usual::built, .needed = true,
                         .doubt = usual::tape});
  key("gap", s.gap, {.means = "height of a slot below it; 0 where it stands on the floor", .limits = usual::building,
                     .doubt = usual::tape});
  key("thickness", s.thickness, {.means = "of its edge in the direction of the flow", .limits = usual::building,
                                 .doubt = usual::rule});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, sump& s) {
  key("rim", s.rim, {.means = "top of the walls above the floor of the sump", .limits = usual::built, .needed = true,
                     .doubt = usual::tape});
  key("running_level", s.running_level, {.means = "water in the pump's chamber while the pump runs",
                                         .limits = usual::built, .needed = true, .set_by = chosen,
                                         .choose_between = {{millimetres(80), metres(0.6)}}, .step = millimetres(5),
                                         .doubt = usual::water_mark});
  key("chamber", s.chamber, {.means = "the chambers in the order of the flow; the pump stands in the last",
                             .needed = true});
  key("baffle", s.baffle, {.means = "the walls between them, in the same order"});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, pump_inlet& s) {
  key("above_floor", s.above_floor, {.means = "middle of the pump's inlet above the floor of the sump",
                                     .limits = usual::building, .needed = true, .doubt = usual::tape});
  describe_bore(key, s.bore);
  key("npsh_required", s.npsh_required, {.means = "suction head that the pump requires, by its maker",
                                         .limits = {metres(0.0), metres(50.0)}, .doubt = known_within(percent(10.0))});
  describe_note(key, s.note);
}

TANKWRIGHT_INLINE void describe(visitor& key, plumbing_section& s) {
  key("lift", s.lift, {.means = "overflow edge of the display above the floor of the sump",
                       .limits = {millimetres(1.0), metres(50.0)}, .needed = true, .doubt = millimetres(10.0)});
  key("wanted_turnover", s.wanted_turnover, {.means = "how often the display's water should pass the sump",
                                             .limits = {per_hour(0.0), per_hour(1000.0)}, .set_by = wanted});
  key("edge_to_rim", s.edge_to_rim, {.means = "room between the overflow edge and the rim of the display",
                                     .limits = usual::built, .doubt = usual::tape});
  key("reserve", s.reserve, {.means = "height to keep free below the rims of sump and display",
                             .limits = usual::building, .set_by = wanted});
  key("surge", s.surge, {.means = "how far the box rises when the pump starts, until the drains run; as it was seen",
                         .limits = usual::building, .doubt = usual::tape});
  key.replaced("area_uncertainty", "write it with each area: surface = \"2.4 m2 +/- 2 %\"");
  key.replaced("level_uncertainty", "write it with each level and depth: running_level = \"250 mm +/- 4 mm\"");
  key("drains_into", s.drains_into, {.means = "number of the chamber that the drains end in, from 1",
                                     .limits = {1.0, 100.0}, .whole = true, .set_by = chosen});
  key("overflow", s.overflow, {.means = "where the display runs over", .needed = true});
  key("box", s.box, {.means = "a box behind the overflow that falls when the pump stops"});
  key("pump", s.pump, {.means = "the return pump"});
  key("further_pump", s.further_pump, {.means = "each pump that runs beside the return pump: into the returns that "
                                                "name it, or where none does into the same pipe"});
  key("candidate", s.candidate, {.means = "each pump that may be bought in its place"});
  key("trunk", s.trunk, {.means = "the pipe that all returns of the return pump share"});
  key("return", s.returns, {.means = "each return into the display"});
  key("drain", s.drain, {.means = "each drain from the overflow to the sump"});
  key("sump", s.sump, {.means = "the sump", .needed = true});
  key("pump_inlet", s.pump_inlet, {.means = "where the pump draws its water"});
  describe_note(key, s.note);
}

}  // namespace tankwright::plan
