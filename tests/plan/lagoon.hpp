// SPDX-License-Identifier: BSL-1.0
/// @file
/// The lagoon of the demo plan, as far as [vessel] and [hold] go, filled by path as a form would.
#pragma once

#include <initializer_list>
#include <string_view>
#include <tankwright/plan/path.hpp>
#include <utility>

namespace tankwright::testing {

using key_texts = std::initializer_list<std::pair<std::string_view, std::string_view>>;

inline void give(plan::build& build, key_texts keys) {
  for (const auto& [path, text] : keys) plan::set(build, path, text);
}

/// A display with everything in it and on it.
[[nodiscard]] inline plan::build lagoon() {
  plan::build build;
  give(build, {{"vessel.label", "lagoon"},
               {"vessel.length", "2.40 m"},
               {"vessel.width", "1.00 m"},
               {"vessel.height", "0.85 m"},
               {"vessel.water_level", "0.80 m"},
               {"vessel.stages", "0.20 m, 0.40 m, 0.60 m, 0.80 m"},
               {"vessel.sand[1].shallow_end", "0.08 m"},
               {"vessel.sand[1].deep_end", "0.24 m"},
               {"vessel.sand[1].run", "1.00 m"},
               {"vessel.rock[1].label", "outcrops"},
               {"vessel.rock[1].dry_mass", "46 kg"},
               {"vessel.rock[2].label", "arch"},
               {"vessel.rock[2].dry_mass", "14.2 kg"},
               {"vessel.rock[2].submerged_mass", "9.1 kg"},
               {"vessel.equipment[1].label", "wave pumps"},
               {"vessel.equipment[1].volume", "3.0 L"},
               {"vessel.equipment[1].mass", "4.2 kg"},
               {"vessel.panel[1].label", "front window"},
               {"vessel.panel[1].width", "2.20 m"},
               {"vessel.panel[1].height", "0.65 m"},
               {"vessel.panel[1].lower_edge", "0.20 m"},
               {"vessel.panel[1].thickness", "18.2 mm"},
               {"vessel.panel[1].edges", "all supported"},
               {"vessel.panel[1].material", "annealed glass"},
               {"vessel.panel[2].label", "end window"},
               {"vessel.panel[2].width", "0.80 m"},
               {"vessel.panel[2].height", "0.65 m"},
               {"vessel.panel[2].lower_edge", "0.20 m"},
               {"vessel.panel[2].thickness", "25 mm"},
               {"vessel.panel[2].edges", "all supported"},
               {"vessel.panel[2].material", "cast acrylic"},
               {"vessel.floor.tank_and_stand", "430 kg"},
               {"vessel.floor.footprint", "3.12 m²"},
               {"vessel.floor.bearing", "0.24 m²"},
               {"vessel.floor.built_for", "10 kPa"}});
  give(build, {{"vessel.brace.rail", "2.40 m"},
               {"vessel.brace.rail_height", "0.85 m"},
               {"vessel.brace.span", "1.00 m"},
               {"vessel.brace.breadth", "45 mm"},
               {"vessel.brace.depth", "90 mm"},
               {"vessel.brace.modulus", "10 GPa"},
               {"vessel.brace.allowable", "6 MPa"},
               {"vessel.brace.density", "600 kg/m³"},
               {"vessel.brace.joint", "2.0 kN"},
               {"vessel.brace.load[1].label", "front light"},
               {"vessel.brace.load[1].mass", "12 kg"},
               {"vessel.brace.load[1].at", "0.30 m"},
               {"vessel.brace.load[2].label", "back light"},
               {"vessel.brace.load[2].mass", "12 kg"},
               {"vessel.brace.load[2].at", "0.70 m"},
               {"vessel.lid[1].label", "acrylic lids"},
               {"vessel.lid[1].span", "0.48 m"},
               {"vessel.lid[1].thickness", "8 mm"},
               {"vessel.lid[1].material", "cast acrylic"},
               {"vessel.lid[1].moisture_strain", "0.001"},
               {"vessel.lid[2].label", "glass lid"},
               {"vessel.lid[2].span", "0.48 m"},
               {"vessel.lid[2].thickness", "6 mm"},
               {"vessel.lid[2].material", "annealed glass"},
               {"vessel.view.nearest_rock", "0.32 m"},
               {"vessel.view.thickness", "18.2 mm"},
               {"vessel.view.least_clearance", "0.30 m"}});
  return build;
}

/// Its leak test: four days with a pan, and one that is planned.
inline void test_for_leaks(plan::build& build) {
  give(build, {{"hold.surface", "2.40 m²"},
               {"hold.depth", "0.80 m"},
               {"hold.resolution", "0.5 mm"},
               {"hold.times", "0 h, 12 h, 24 h, 36 h, 48 h, 60 h, 72 h, 84 h, 96 h"},
               {"hold.levels", "800 mm, 798 mm, 796.5 mm, 795 mm, 793 mm, 791.5 mm, 789.5 mm, 788 mm, 786.5 mm"},
               {"hold.pan", "60 mm, 58.5 mm, 56.5 mm, 55 mm, 53.5 mm, 52 mm, 50 mm, 48.5 mm, 47 mm"},
               {"hold.water", "19 °C, 19.4 °C, 19.2 °C, 19.6 °C, 19.3 °C, 19.7 °C, 19.4 °C, 19.6 °C, 19.5 °C"},
               {"hold.planned.leak", "0.5 L/d"},
               {"hold.planned.resolution", "0.5 mm"},
               {"hold.planned.readings_per_day", "2"},
               {"hold.planned.pan", "true"}});
}

/// Overflow and sump of the lagoon, as far as the display sets bounds to them.
inline void give_overflow(plan::build& build) {
  give(build, {{"plumbing.lift", "1.45 m"},
               {"plumbing.edge_to_rim", "50 mm"},
               {"plumbing.overflow.surface", "2.40 m²"},
               {"plumbing.overflow.width", "0.80 m"},
               {"plumbing.overflow.crest_height", "0.80 m"},
               {"plumbing.overflow.thickness", "12 mm"},
               {"plumbing.pump.flows", "0 L/h, 15000 L/h"},
               {"plumbing.pump.heads", "4.6 m, 0.6 m"},
               {"plumbing.sump.rim", "450 mm"},
               {"plumbing.sump.running_level", "250 mm"},
               {"plumbing.sump.chamber[1].label", "drains"},
               {"plumbing.sump.chamber[1].area", "0.24 m²"},
               {"plumbing.sump.chamber[2].label", "pump"},
               {"plumbing.sump.chamber[2].area", "0.30 m²"},
               {"plumbing.sump.baffle[1].crest", "320 mm"},
               {"plumbing.sump.baffle[1].width", "580 mm"}});
}

}  // namespace tankwright::testing
