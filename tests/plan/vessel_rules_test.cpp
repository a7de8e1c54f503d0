// SPDX-License-Identifier: BSL-1.0
// Every rule of [vessel], and of the overflow and the sump in it, with a plan that breaks it and one at its edge.
#include <cmath>

#include "plan/mistakes.hpp"

using namespace tankwright;
using namespace tankwright::testing;

TEST_CASE("vessel rules: a sound plan passes, also round, bowed, or measured outside") {
  accepted(lagoon(), {});
  plan::build round;
  give(round, {{"vessel.shape", "cylinder"},
               {"vessel.diameter", "1.2 m"},
               {"vessel.height", "1 m"},
               {"vessel.water_level", "0.9 m"}});
  accepted(round, {});
  plan::build bowed;
  give(bowed, {{"vessel.shape", "bow front"},
               {"vessel.length", "1.2 m"},
               {"vessel.width", "0.6 m"},
               {"vessel.bow", "0.15 m"},
               {"vessel.height", "0.6 m"},
               {"vessel.water_level", "0.5 m"}});
  accepted(bowed, {});
  accepted(bowed, {{"vessel.bow", "0.6 m"}});
  refused(bowed, {{"vessel.bow", "0.61 m"}}, "vessel.bow", "is more than half of its front, 0.6 m", "vessel.length");
  plan::build outside = lagoon();
  give(outside, {{"vessel.measured", "outside"},
                 {"vessel.wall_thickness", "19 mm"},
                 {"vessel.floor_thickness", "19 mm"},
                 {"vessel.water_level", "0.78 m"},
                 {"vessel.stages", "0.78 m"},
                 {"vessel.panel[1].height", "0.6 m"},
                 {"vessel.panel[2].height", "0.6 m"}});
  accepted(outside, {});
}

TEST_CASE("vessel rules: the measures of the shape, and no others") {
  plan::build round;
  give(round, {{"vessel.shape", "cylinder"}, {"vessel.height", "1 m"}, {"vessel.water_level", "0.9 m"}});
  refused(round, {}, "vessel.diameter", "is missing: a cylinder needs it", "vessel.shape");
  refused(round, {{"vessel.diameter", "1 m"}, {"vessel.length", "1 m"}}, "vessel.length",
          "is not a measure of a cylinder", "vessel.shape");
  refused(lagoon(), {{"vessel.diameter", "1 m"}}, "vessel.diameter", "is not a measure of a box", "vessel.shape");
  refused(lagoon(), {{"vessel.bow", "0.1 m"}}, "vessel.bow", "is not a measure of a box", "vessel.shape");
  refused(lagoon(), {{"vessel.shape", "bow front"}}, "vessel.bow", "is missing: a bow front needs it", "vessel.shape");
  plan::build no_length = lagoon();
  plan::clear(no_length, "vessel.length");
  refused(no_length, {}, "vessel.length", "is missing: a box needs it", "vessel.shape");
}

TEST_CASE("vessel rules: walls count outside, and leave something inside") {
  refused(lagoon(), {{"vessel.measured", "outside"}}, "vessel.wall_thickness", "is missing", "vessel.measured");
  refused(lagoon(), {{"vessel.measured", "outside"}}, "vessel.floor_thickness", "is missing", "vessel.measured");
  refused(lagoon(), {{"vessel.wall_thickness", "19 mm"}}, "vessel.wall_thickness",
          "counts only where the display is "
          "measured outside",
          "vessel.measured");
  refused(lagoon(),
          {{"vessel.measured", "outside"}, {"vessel.wall_thickness", "0.5 m"}, {"vessel.floor_thickness", "1 cm"}},
          "vessel.width", "1 m leaves nothing inside walls of 0.5 m", "vessel.wall_thickness");
  refused(lagoon(),
          {{"vessel.measured", "outside"}, {"vessel.wall_thickness", "1 cm"}, {"vessel.floor_thickness", "0.85 m"}},
          "vessel.height", "0.85 m leaves nothing inside walls of 0.85 m", "vessel.floor_thickness");
}

TEST_CASE("vessel rules: levels are below the rim, and a fill rises") {
  accepted(lagoon(), {{"vessel.water_level", "0.85 m"}});
  refused(lagoon(), {{"vessel.water_level", "0.86 m"}}, "vessel.water_level",
          "0.86 m is above the rim of the display, 0.85 m", "vessel.height");
  refused(lagoon(), {{"vessel.stages", "0.4 m, 0.9 m"}}, "vessel.stages[2]", "is above the rim", "vessel.height");
  refused(lagoon(), {{"vessel.stages", "0.8 m, 0.4 m"}}, "vessel.stages[2]",
          "0.4 m does not stand above the stage before it, 0.8 m; a fill rises", "vessel.stages[1]");
  refused(lagoon(), {{"vessel.stages", "0.4 m, 0.4 m"}}, "vessel.stages[2]", "a fill rises", "vessel.stages[1]");
}

TEST_CASE("vessel rules: sand") {
  plan::build level = lagoon();
  plan::clear(level, "vessel.sand[1]");
  give(level, {{"vessel.sand[1].depth", "0.1 m"}});
  accepted(level, {});
  refused(level, {{"vessel.sand[1].depth", "0.86 m"}}, "vessel.sand[1].depth", "of sand is above the rim",
          "vessel.height");
  refused(level, {{"vessel.sand[1].mass", "10 kg"}}, "vessel.sand[1].mass", "is given beside depth",
          "vessel.sand[1].depth");
  refused(level, {{"vessel.sand[1].repose", "30 deg"}}, "vessel.sand[1].repose", "means nothing without shallow_end",
          "vessel.sand[1].shallow_end");
  refused(level, {{"vessel.sand[1].area", "2.5 m²"}}, "vessel.sand[1].area",
          "is more than the floor of the display, 2.4 m²", "vessel.length");
  accepted(level, {{"vessel.sand[1].area", "2.472 m²"}});  // 3 % more passes
  refused(lagoon(), {{"vessel.sand[1].run", "2.7 m"}}, "vessel.sand[1].run", "is longer than the display inside, 2.6 m",
          "vessel.length");
  refused(lagoon(), {{"vessel.sand[1].shallow_end", "0.25 m"}}, "vessel.sand[1].deep_end",
          "0.24 m is less than the shallow end, 0.25 m", "vessel.sand[1].shallow_end");
  refused(lagoon(), {{"vessel.sand[1].deep_end", "2 m"}}, "vessel.sand[1].deep_end", "of sand is above the rim",
          "vessel.height");
  refused(lagoon(), {{"vessel.sand[1].deep_end", "1.6 m"}}, "vessel.sand[1].deep_end",
          "takes the room of 2016 L; the display "
          "holds 1920 L up to the water level",
          "vessel.water_level");
}

TEST_CASE("vessel rules: rock") {
  const std::string_view dry = "vessel.rock[arch].dry_mass";
  refused(lagoon(), {{"vessel.rock[2].submerged_mass", "14.2 kg"}}, "vessel.rock[arch].submerged_mass",
          "is not below the dry mass, 14.2 kg: water carries part of every rock", dry);
  refused(lagoon(), {{"vessel.rock[2].soaked_mass", "14 kg"}}, "vessel.rock[arch].soaked_mass", "is less than dry",
          dry);
  refused(lagoon(), {{"vessel.rock[1].soaked_mass", "50 kg"}}, "vessel.rock[outcrops].soaked_mass",
          "means nothing without submerged_mass", "vessel.rock[outcrops].submerged_mass");
  refused(lagoon(), {{"vessel.rock[1].salinity", "35"}}, "vessel.rock[outcrops].salinity",
          "means nothing without submerged_mass", "vessel.rock[outcrops].submerged_mass");
  refused(lagoon(), {{"vessel.rock[1].temperature", "20 °C"}}, "vessel.rock[outcrops].temperature",
          "means nothing without submerged_mass", "vessel.rock[outcrops].submerged_mass");
  refused(lagoon(), {{"vessel.rock[2].flooded_pores", "50 %"}}, "vessel.rock[arch].flooded_pores",
          "is in the weighing already", "vessel.rock[arch].submerged_mass");
  plan::build raised = lagoon();
  plan::clear(raised, "vessel.rock[2]");
  give(raised, {{"vessel.rock[2].level_before", "0.5 m"}, {"vessel.rock[2].level_after", "0.52 m"}});
  accepted(raised, {});
  refused(raised, {{"vessel.rock[2].level_after", "0.49 m"}}, "vessel.rock[2].level_after",
          "0.49 m is below the level before the rock went in, 0.5 m", "vessel.rock[2].level_before");
  refused(raised, {{"vessel.rock[2].level_after", "0.92 m"}}, "vessel.rock[2].level_after", "is above the rim",
          "vessel.height");
  refused(raised, {{"vessel.rock[2].level_before", "0.86 m"}, {"vessel.rock[2].level_after", "0.86 m"}},
          "vessel.rock[2].level_before", "is above the rim", "vessel.height");
  refused(raised, {{"vessel.rock[2].submerged_mass", "5 kg"}}, "vessel.rock[2].submerged_mass",
          "means nothing without dry_mass", "vessel.rock[2].dry_mass");
}

TEST_CASE("vessel rules: what lies in the water leaves room for water, alone and together") {
  refused(lagoon(), {{"vessel.rock[1].dry_mass", "9000 kg"}}, "vessel.rock[outcrops].dry_mass",
          "the display holds 1920 L up to the water level", "vessel.water_level");
  refused(lagoon(), {{"vessel.equipment[1].volume", "3 m3"}}, "vessel.equipment[wave pumps].volume",
          "takes the room of 3000 L", "vessel.water_level");
  refused(lagoon(), {{"vessel.equipment[1].volume", "1900 L"}}, "vessel",
          "sand, rock and equipment together take the room of", "vessel.water_level");
}

TEST_CASE("vessel rules: panels fit into their wall") {
  refused(lagoon(), {{"vessel.panel[1].width", "2.5 m"}}, "vessel.panel[front window].width",
          "is wider than the longest wall inside (give the clear width), 2.4 m", "vessel.length");
  accepted(lagoon(), {{"vessel.panel[1].width", "2.4 m"}});
  refused(lagoon(), {{"vessel.panel[1].lower_edge", "0.9 m"}}, "vessel.panel[front window].lower_edge",
          "is not below the rim of the display, 0.85 m", "vessel.height");
  refused(lagoon(), {{"vessel.panel[1].height", "0.66 m"}}, "vessel.panel[front window].height",
          "is higher than the display is above the lower edge of the panel, 0.65 m", "vessel.height");
  refused(lagoon(), {{"vessel.panel[1].thickness", "0.65 m"}}, "vessel.panel[front window].thickness",
          "is not less than the shorter side, 0.65 m: that is a block, not a panel",
          "vessel.panel[front window].height");
}

TEST_CASE("vessel rules: the floor and the sump that stands on it") {
  refused(lagoon(), {{"vessel.floor.bearing", "4 m²"}}, "vessel.floor.bearing",
          "touches the floor; the footprint is only 3.12 m²", "vessel.floor.footprint");
  refused(lagoon(), {{"vessel.floor.room", "living"}}, "vessel.floor.room", "is given beside built_for",
          "vessel.floor.built_for");
  plan::build with_sump = lagoon();
  give_overflow(with_sump);
  accepted(with_sump, {});
  accepted(with_sump, {{"vessel.floor.footprint", "0.54 m²"}});
  refused(with_sump, {{"vessel.floor.footprint", "0.53 m²"}}, "plumbing.sump.chamber",
          "0.54 m² of chambers does not fit under the display", "vessel.floor.footprint");
  accepted(with_sump, {{"vessel.floor.footprint", "0.53 m²"}, {"vessel.floor.sump_below", "false"}});
}

TEST_CASE("vessel rules: brace, lids and view fit over and into the display") {
  refused(lagoon(), {{"vessel.brace.rail", "24 m"}}, "vessel.brace.rail", "is longer than the longest wall, 2.4 m",
          "vessel.length");
  accepted(lagoon(), {{"vessel.brace.rail", "2.7 m"}});  // it may lie on walls of 15 cm
  refused(lagoon(), {{"vessel.brace.rail_height", "8.5 m"}}, "vessel.brace.rail_height", "is off the walls",
          "vessel.height");
  refused(lagoon(), {{"vessel.brace.span", "10 m"}}, "vessel.brace.span", "is longer than the display, 2.6 m",
          "vessel.length");
  refused(lagoon(), {{"vessel.brace.depth", "90 in"}}, "vessel.brace.depth",
          "upright is more than the brace is long, 39.37 in", "vessel.brace.span");
  refused(lagoon(), {{"vessel.brace.count", "20"}, {"vessel.brace.breadth", "450 mm"}}, "vessel.brace.breadth",
          "9 m of braces side by side is more than their rail, 2.4 m", "vessel.brace.rail");
  refused(lagoon(), {{"vessel.brace.load[1].at", "1.3 m"}}, "vessel.brace.load[front light].at",
          "1.3 m from its end is past the other end of the brace, which spans 1 m", "vessel.brace.span");
  refused(lagoon(), {{"vessel.brace.material", "annealed glass"}}, "vessel.brace.modulus", "is given beside material",
          "vessel.brace.material");
  plan::build unknown = lagoon();
  plan::clear(unknown, "vessel.brace.allowable");
  refused(unknown, {}, "vessel.brace.modulus", "means nothing without allowable", "vessel.brace.allowable");
  refused(lagoon(), {{"vessel.lid[1].span", "4.8 m"}}, "vessel.lid[acrylic lids].span", "is longer than the display",
          "vessel.length");
  refused(lagoon(), {{"vessel.lid[1].thickness", "0.48 m"}}, "vessel.lid[acrylic lids].thickness",
          "that is a block, not a lid", "vessel.lid[acrylic lids].span");
  refused(lagoon(), {{"vessel.view.nearest_rock", "3.2 m"}}, "vessel.view.nearest_rock",
          "is farther than the display reaches", "vessel.length");
  refused(lagoon(), {{"vessel.view.thickness", "18 ft"}}, "vessel.view.thickness", "of pane is more than the display",
          "vessel.length");
}

TEST_CASE("vessel rules: the overflow in its display") {
  plan::build build = lagoon();
  give_overflow(build);
  refused(build, {{"plumbing.overflow.crest_height", "0.90 m"}}, "plumbing.overflow.crest_height",
          "0.9 m is above the rim of the display, 0.85 m", "vessel.height");
  refused(build, {{"plumbing.overflow.crest_height", "0.82 m"}}, "plumbing.overflow.crest_height",
          "is above the water, which runs over it; that is at 0.8 m", "vessel.water_level");
  accepted(build,
           {{"plumbing.overflow.crest_height", "0.803 m"}, {"plumbing.edge_to_rim", "47 mm"}});  // within the doubt
  refused(build, {{"plumbing.edge_to_rim", "50 cm"}}, "plumbing.edge_to_rim",
          "50 cm is more than the display has above its overflow edge, 5 cm", "vessel.height");
  refused(build, {{"plumbing.overflow.width", "7 m"}}, "plumbing.overflow.width",
          "is wider than all walls of the display, 6.8 m", "vessel.length");
  refused(build, {{"plumbing.overflow.thickness", "3 m"}}, "plumbing.overflow.thickness",
          "is more than the display, 2.6 m", "vessel.length");
  refused(build, {{"plumbing.overflow.surface", "2.5 m²"}}, "plumbing.overflow.surface",
          "is more than the display has at its overflow edge, 2.4 m²", "vessel.length");
  plan::build comb = build;
  plan::clear(comb, "plumbing.overflow.width");
  give(comb, {{"plumbing.overflow.gaps", "200"},
              {"plumbing.overflow.gap_width", "30 mm"},
              {"plumbing.overflow.tooth_width", "10 mm"},
              {"plumbing.overflow.gap_height", "50 mm"}});
  refused(comb, {}, "plumbing.overflow.gaps", "7.99 m of comb is more than all walls of the display", "vessel.length");
}

TEST_CASE("vessel rules: bad numbers are named, and nothing else breaks on them") {
  for (const double bad : {0.0, -1.0, std::nan(""), HUGE_VAL, 1e100}) {
    for (const std::string_view path :
         {"vessel.length", "vessel.width", "vessel.height", "vessel.water_level", "vessel.panel[1].width",
          "vessel.panel[1].thickness", "vessel.brace.rail", "vessel.lid[1].span", "vessel.floor.footprint"}) {
      plan::build build = lagoon();
      give_overflow(build);
      plan::at_path(build, path, false, [&](const plan::leaf& here) { here.number->move_to(bad); });
      CHECK_MESSAGE(!plan::validate(build).empty(), path, " = ", bad);
    }
  }
}
