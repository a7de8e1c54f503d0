// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/bottom/items.hpp>
#include <tankwright/decisions/bottom/sand_bed.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_sand_bed(const situation& s, answers& out) {
  if (!s.plan().vessel || s.plan().vessel->sand.empty()) return;
  finding& f = out.ask(sand_bed);
  const vessel_case& c = s.vessel();
  const mass_density density = c.density();
  const auto& sand = c.in.sand;
  f.answer("dry", "dry sand", sum_over<mass>(sand, [](const auto& i) { return i.dry_mass; }));
  if (const area floor = vessel::plan_area(c.in.display, length{}); floor.value() > 0.0) {
    f.detail("depth", "mean depth over the whole floor",
             sum_over<length>(sand, [&](const auto& i) { return vessel::bed_depth(i, floor); }));
  }
  f.detail("keeps_out", "water it keeps out",
           sum_over<volume>(sand, [](const auto& i) { return as_volume(i.solids); }));
  f.detail("submerged", "weight under water",
           sum_over<mass>(sand, [&](const auto& i) { return vessel::weight_of(i, density).submerged; }));
  for (std::size_t i = 0; i < sand.size(); ++i) {
    const plan::value<mass>& bag = s.plan().vessel->sand[i].bag;
    if (!bag) continue;
    f.detail("bags", "whole bags to buy",
             map_rising(sand[i].dry_mass, [&](mass dry) { return std::ceil(dry.value() / (*bag).value()); }),
             sand[i].label);
  }
  for (const plan::sloped_sand& bed : c.in.slopes) {
    const angle slope = vessel::sloped_bed(bed.slope).slope;
    f.detail("slope", "slope of the bed", slope, bed.label);
    f.limit("repose", "steepest it lies", bed.slope.repose, bed.label);
    f.margin("left", "to spare", bed.slope.repose - slope, angle{}, bed.label);
  }
  if (f.verdict == verdict::does_not_hold) f.happens = "The slope slides until it is no steeper than the sand lies.";
  f.source(vessel::bucher_1998);
  f.next("fill a bucket of known volume with the dry sand and weigh it: that settles its porosity");
}

}  // namespace tankwright::decisions
