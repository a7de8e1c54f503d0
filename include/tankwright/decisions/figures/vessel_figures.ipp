// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/figures/vessel_figures.hpp>

namespace tankwright::decisions {

namespace detail {

/// The bed as steps: a slope rises over its run and is level from there on.
inline void add_sand(figure& f, const plan::sand& sand, double length) {
  constexpr int steps = 20;
  if (sand.depth) {
    f.rectangles.push_back({0.0, 0.0, length, sand.depth.si(), "sand", "sand"});
    return;
  }
  if (!sand.shallow_end || !sand.deep_end || !sand.run) return;
  const double low = sand.shallow_end.si(), high = sand.deep_end.si(), run = std::min(sand.run.si(), length);
  for (int i = 0; i < steps; ++i) {
    const double at = (i + 0.5) / steps;
    f.rectangles.push_back({run * i / steps, 0.0, run / steps, low + at * (high - low), "sand", i == steps / 2 ? "sand" : ""});
  }
  if (run < length) f.rectangles.push_back({run, 0.0, length - run, high, "sand", {}});
}

}  // namespace detail

TANKWRIGHT_INLINE std::vector<figure> display_figures_of(const plan::build& build) {
  if (!build.vessel || !build.vessel->length || !build.vessel->height || !build.vessel->water_level) return {};
  const plan::vessel_section& v = *build.vessel;
  const double length = v.length.si(), height = v.height.si(), water = v.water_level.si();
  figure f{.id = "vessel.water", .title = "The display from its front, to scale"};
  f.rectangles.push_back({0.0, 0.0, length, water, "water", {}});
  for (const plan::sand& sand : v.sand) detail::add_sand(f, sand, length);
  f.rectangles.push_back({0.0, 0.0, length, height, "wall", {}});
  f.marks.push_back({0.0, length, water, "water"});
  if (build.plumbing && build.plumbing->overflow && build.plumbing->overflow->crest_height) {
    const double edge = build.plumbing->overflow->crest_height.si();
    if (edge != water) f.marks.push_back({0.0, length, edge, "overflow edge"});
    double at = 0.25 * length;
    for (const plan::return_pipe& r : build.plumbing->returns) {
      if (!r.below_edge) continue;
      f.marks.push_back({at, at + 0.08 * length, edge - r.below_edge.si(), r.label});
      at += 0.4 * length;
    }
  }
  f.marks.push_back({0.0, length, height, "rim", true});
  return {f};
}

}  // namespace tankwright::decisions
