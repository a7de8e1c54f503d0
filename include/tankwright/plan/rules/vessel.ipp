// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/inputs/plumbing_inputs.hpp>
#include <tankwright/plan/inputs/vessel_inputs.hpp>
#include <tankwright/plan/rules/book.hpp>
#include <tankwright/plan/rules/display_bounds.hpp>
#include <tankwright/plan/rules/reading_rules.hpp>

namespace tankwright::plan::rules {

namespace detail {

/// A rail lies on the rim or below it, so its middle is never this far above.
inline const length thickest_rail = metres(0.15);

/// The measures of a shape are given, and no others.
inline void hold_measures(const vessel_section& v, book& all) {
  if (!v.shape) return;
  constexpr std::string_view names[]{"box", "cylinder", "bow front"};
  const display_shape shape = *v.shape;
  const std::string_view name = names[static_cast<std::size_t>(shape)];
  const auto measure = [&](const std::string& key, const value<length>& given, bool belongs) {
    if (belongs && !given) {
      all.refuse("vessel." + key, "is missing: a " + std::string{name} + " needs it", "vessel.shape");
    } else if (!belongs && given) {
      all.refuse("vessel." + key, "is not a measure of a " + std::string{name}, "vessel.shape");
    }
  };
  const bool round = shape == display_shape::cylinder;
  measure("length", v.length, !round);
  measure("width", v.width, !round);
  measure("diameter", v.diameter, round);
  measure("bow", v.bow, shape == display_shape::bow_front);
  if (shape == display_shape::bow_front && v.length) {
    all.at_most("vessel.bow", v.bow, {0.5 * *v.length, "vessel.length"}, "is more than half of its front,");
  }
}

/// Walls count where the tape lay outside, and leave something between them.
inline void hold_walls(const vessel_section& v, book& all) {
  const bool outside = v.measured && *v.measured == measured_at::outside;
  const auto panel = [&](const std::string& key, const value<length>& given) {
    if (outside && !given) {
      all.refuse("vessel." + key, "is missing: a display that is measured outside needs it", "vessel.measured");
    } else if (!outside && given) {
      all.refuse("vessel." + key,
                 "counts only where the display is measured outside (measured = \"outside\"); leave it out otherwise",
                 "vessel.measured");
    }
  };
  panel("wall_thickness", v.wall_thickness);
  panel("floor_thickness", v.floor_thickness);
  if (!outside) return;
  const auto between = [&](const std::string& key, const value<length>& measure, const value<length>& wall,
                           const std::string& wall_key, double walls) {
    if (!measure || !wall || !(walls * *wall >= *measure)) return;
    all.refuse("vessel." + key, all.said(measure) + " leaves nothing inside walls of " + all.said(wall),
               "vessel." + wall_key);
  };
  between("length", v.length, v.wall_thickness, "wall_thickness", 2.0);
  between("width", v.width, v.wall_thickness, "wall_thickness", 2.0);
  between("diameter", v.diameter, v.wall_thickness, "wall_thickness", 2.0);
  between("height", v.height, v.floor_thickness, "floor_thickness", 1.0);
}

/// A key that means nothing without another.
inline void needs_beside(const std::string& table, std::string_view key, bool given, std::string_view other,
                         bool other_given, book& all) {
  if (!given || other_given) return;
  all.refuse(table + "." + std::string{key}, "means nothing without " + std::string{other} + " beside it",
             table + "." + std::string{other});
}

inline void hold_sand(const vessel_section& v, const display_bounds* d, book& all) {
  for (std::size_t i = 0; i < v.sand.size(); ++i) {
    const sand& one = v.sand[i];
    const std::string path = element("vessel.sand", v.sand, i);
    needs_beside(path, "repose", one.repose.given(), "shallow_end", one.shallow_end.given(), all);
    if (one.shallow_end && one.deep_end && *one.deep_end < *one.shallow_end) {
      all.refuse(path + ".deep_end",
                 all.said(one.deep_end) + " is less than the shallow end, " + all.said(one.shallow_end),
                 path + ".shallow_end");
    }
    if (!d) continue;
    constexpr std::string_view above = "of sand is above the rim of the display,";
    all.at_most(path + ".depth", one.depth, d->rim, above);
    all.at_most(path + ".shallow_end", one.shallow_end, d->rim, above);
    all.at_most(path + ".deep_end", one.deep_end, d->rim, above);
    all.at_most(path + ".run", one.run, d->line, "is longer than the display inside,");
    all.at_most(path + ".area", one.area, d->floor(), "is more than the floor of the display,");
  }
}

inline void hold_rock(const vessel_section& v, const display_bounds* d, book& all) {
  for (std::size_t i = 0; i < v.rock.size(); ++i) {
    const rock& one = v.rock[i];
    const std::string path = element("vessel.rock", v.rock, i);
    const bool weighed = one.submerged_mass.given();
    needs_beside(path, "submerged_mass", weighed, "dry_mass", one.dry_mass.given(), all);
    needs_beside(path, "soaked_mass", one.soaked_mass.given(), "submerged_mass", weighed, all);
    needs_beside(path, "salinity", one.salinity.given(), "submerged_mass", weighed, all);
    needs_beside(path, "temperature", one.temperature.given(), "submerged_mass", weighed, all);
    hold_salinity(path + ".salinity", one.salinity, all);
    if (one.flooded_pores && (weighed || one.level_before)) {
      all.refuse(path + ".flooded_pores", "is in the weighing already; it counts with dry_mass alone",
                 path + (weighed ? ".submerged_mass" : ".level_before"));
    }
    if (one.dry_mass && weighed && !(*one.submerged_mass < *one.dry_mass)) {
      all.refuse(path + ".submerged_mass",
                 all.said(one.submerged_mass) + " is not below the dry mass, " + all.said(one.dry_mass) +
                     ": water carries part of every rock",
                 path + ".dry_mass");
    }
    if (one.dry_mass && one.soaked_mass && *one.soaked_mass < *one.dry_mass) {
      all.refuse(path + ".soaked_mass", all.said(one.soaked_mass) + " is less than dry, " + all.said(one.dry_mass),
                 path + ".dry_mass");
    }
    if (one.level_before && one.level_after && *one.level_after < *one.level_before) {
      all.refuse(
          path + ".level_after",
          all.said(one.level_after) + " is below the level before the rock went in, " + all.said(one.level_before),
          path + ".level_before");
    }
    if (!d) continue;
    all.at_most(path + ".level_before", one.level_before, d->rim, "is above the rim of the display,");
    all.at_most(path + ".level_after", one.level_after, d->rim, "is above the rim of the display,");
  }
}

/// What lies in the water leaves room for water, each by itself and all together.
inline void hold_contents(const vessel_section& v, const display_bounds& d, book& all) {
  if (!v.water_level || !(*v.water_level <= d.rim.most) || !((*v.water_level).value() > 0.0)) return;
  const volume water = tankwright::vessel::filled_volume(d.shape, *v.water_level);
  volume together{};
  const auto within = [&](const std::string& path, const auto& make) {
    try {
      const volume takes = make().envelope.central.value();
      if (takes > water) {
        all.refuse(path,
                   "takes the room of " + all.said(takes) + "; the display holds " + all.said(water) +
                       " up to the water level",
                   "vessel.water_level");
      } else {
        together += takes;
      }
    } catch (const error&) {
      // its own keys say what is wrong
    }
  };
  for (std::size_t i = 0; i < v.sand.size(); ++i) {
    const sand& one = v.sand[i];
    const std::string_view key = one.mass ? ".mass" : one.depth ? ".depth" : ".deep_end";
    within(element("vessel.sand", v.sand, i) + std::string{key}, [&] { return item_of(one, d.shape, "sand"); });
  }
  for (std::size_t i = 0; i < v.rock.size(); ++i) {
    const rock& one = v.rock[i];
    within(element("vessel.rock", v.rock, i) + (one.level_before ? ".level_after" : ".dry_mass"),
           [&] { return item_of(one, d.shape, "rock"); });
  }
  for (std::size_t i = 0; i < v.equipment.size(); ++i) {
    const equipment& one = v.equipment[i];
    within(element("vessel.equipment", v.equipment, i) + ".volume", [&] { return item_of(one, "equipment"); });
  }
  if (together > water) {
    all.refuse("vessel",
               "sand, rock and equipment together take the room of " + all.said(together) + "; the display holds " +
                   all.said(water) + " up to the water level",
               "vessel.water_level");
  }
}

inline void hold_panels(const vessel_section& v, const display_bounds* d, book& all) {
  for (std::size_t i = 0; i < v.panel.size(); ++i) {
    const panel& one = v.panel[i];
    const std::string path = element("vessel.panel", v.panel, i);
    if (one.thickness && one.width && one.height) {
      const bool upright = *one.width < *one.height;
      const length shorter = upright ? *one.width : *one.height;
      if (*one.thickness >= shorter) {
        all.refuse(path + ".thickness",
                   all.said(one.thickness) + " is not less than the shorter side, " + all.said(shorter, one.thickness) +
                       ": that is a block, not a panel",
                   path + (upright ? ".width" : ".height"));
      }
    }
    if (!d) continue;
    all.at_most(path + ".width", one.width, d->wall, "is wider than the longest wall inside (give the clear width),");
    if (*one.lower_edge >= d->rim.most) {
      all.refuse(
          path + ".lower_edge",
          all.said(one.lower_edge) + " is not below the rim of the display, " + all.said(d->rim.most, one.lower_edge),
          d->rim.path);
    } else {
      all.at_most(path + ".height", one.height, {d->rim.most - *one.lower_edge, d->rim.path},
                  "is higher than the display is above the lower edge of the panel,");
    }
  }
}

inline void hold_brace(const brace& b, const display_bounds* d, book& all) {
  const std::string path = "vessel.brace";
  needs_beside(path, "modulus", b.modulus.given(), "allowable", b.allowable.given(), all);
  if (b.span) {
    const bound<length> span{*b.span, path + ".span"};
    all.at_most(path + ".depth", b.depth, span, "upright is more than the brace is long,");
    for (std::size_t i = 0; i < b.load.size(); ++i) {
      all.at_most(element(path + ".load", b.load, i) + ".at", b.load[i].at, span,
                  "from its end is past the other end of the brace, which spans");
    }
  }
  if (b.breadth && b.rail) {
    all.at_most(path + ".breadth", *b.breadth * *b.count, {*b.rail, path + ".rail"},
                "of braces side by side is more than their rail,");
  }
  if (!d) return;
  all.at_most(path + ".rail", b.rail, {d->wall.most, d->wall.path, d->over_walls.slack},
              "is longer than the longest wall,");
  all.at_most(path + ".rail_height", b.rail_height, {d->rim.most, d->rim.path, thickest_rail},
              "is off the walls, above the rim of the display,");
  all.at_most(path + ".span", b.span, d->over_walls, "is longer than the display,");
}

inline void hold_top(const vessel_section& v, const display_bounds* d, book& all) {
  if (v.brace) hold_brace(*v.brace, d, all);
  for (std::size_t i = 0; i < v.lid.size(); ++i) {
    const lid& one = v.lid[i];
    const std::string path = element("vessel.lid", v.lid, i);
    if (one.thickness && one.span && *one.thickness >= *one.span) {
      all.refuse(path + ".thickness",
                 all.said(one.thickness) + " is not less than the span, " + all.said(one.span) +
                     ": that is a block, not a lid",
                 path + ".span");
    }
    if (d) all.at_most(path + ".span", one.span, d->over_walls, "is longer than the display,");
  }
  if (!v.view || !d) return;
  all.at_most("vessel.view.nearest_rock", v.view->nearest_rock, d->line, "is farther than the display reaches,");
  all.at_most("vessel.view.thickness", v.view->thickness, d->line, "of pane is more than the display,");
}

inline void hold_levels(const vessel_section& v, const display_bounds* d, book& all) {
  const auto& stages = v.stages;
  for (std::size_t i = 0; i < stages.size(); ++i) {
    const std::string path = "vessel.stages[" + std::to_string(i + 1) + "]";
    if (d) all.at_most(path, stages[i], d->rim, "is above the rim of the display,");
    if (i == 0 || stages[i] > stages[i - 1]) continue;
    all.refuse(path,
               all.said(stages[i]) + " does not stand above the stage before it, " + all.said(stages[i - 1]) +
                   "; a fill rises",
               "vessel.stages[" + std::to_string(i) + "]");
  }
  if (d) all.at_most("vessel.water_level", v.water_level, d->rim, "is above the rim of the display,");
}

/// A sump within the footprint of the stand is not larger than it.
inline void hold_floor(const floor_under& f, const std::optional<sump_bounds>& sump, book& all) {
  if (!f.footprint) return;
  const bound<area> footprint{*f.footprint, "vessel.floor.footprint"};
  all.at_most("vessel.floor.bearing", f.bearing, footprint, "touches the floor; the footprint is only");
  if (!sump || !f.sump_below) return;
  all.at_most("plumbing.sump.chamber", sump->chambers, footprint,
              "of chambers does not fit under the display (where the sump stands elsewhere, say sump_below = false); "
              "the footprint is");
}

/// The overflow edge and the surface it skims, in the display that they belong to.
inline void hold_overflow(const plumbing_section& p, const vessel_section& v, const display_bounds& d, book& all) {
  if (!p.overflow || !p.overflow->crest_height) return;
  const overflow& o = *p.overflow;
  const length edge = *o.crest_height;
  const std::string path = "plumbing.overflow.";
  all.at_most(path + "crest_height", edge, d.rim, "is above the rim of the display,");
  if (p.pump && v.water_level) {
    all.at_most(path + "crest_height", edge, {*v.water_level, "vessel.water_level", doubt_of_levels(p)},
                "is above the water, which runs over it; that is at");
  }
  all.at_most("plumbing.edge_to_rim", p.edge_to_rim, {d.rim.most - edge, d.rim.path, doubt_of_levels(p)},
              "is more than the display has above its overflow edge,");
  if (o.gaps && o.gap_width && o.tooth_width) {
    const length comb = *o.gaps * *o.gap_width + (*o.gaps - 1.0) * *o.tooth_width;
    all.at_most(path + "gaps", comb, d.around, "of comb is more than all walls of the display,");
  }
  all.at_most(path + "width", o.width, d.around, "is wider than all walls of the display,");
  all.at_most(path + "thickness", o.thickness, d.line, "is more than the display,");
  all.at_most(path + "surface", o.surface, d.surface_at(edge, doubt_of_areas(p)),
              "is more than the display has at its overflow edge,");
}

}  // namespace detail

TANKWRIGHT_INLINE void hold_vessel(const build& build, book& all) {
  if (!build.vessel) return;
  const vessel_section& v = *build.vessel;
  const std::optional<display_bounds> seen = bounds_of(build);
  const display_bounds* const d = seen ? &*seen : nullptr;
  detail::hold_measures(v, all);
  detail::hold_walls(v, all);
  detail::hold_levels(v, d, all);
  detail::hold_sand(v, d, all);
  detail::hold_rock(v, d, all);
  if (d) detail::hold_contents(v, *d, all);
  detail::hold_panels(v, d, all);
  if (v.floor) detail::hold_floor(*v.floor, sump_bounds_of(build), all);
  detail::hold_top(v, d, all);
  if (build.plumbing && d) detail::hold_overflow(*build.plumbing, v, *d, all);
}

}  // namespace tankwright::plan::rules
