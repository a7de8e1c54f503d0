// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/first_fill/corner_joints.hpp>
#include <tankwright/decisions/first_fill/wall_parts.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/vessel/joints.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_corner_joints(const situation& s, answers& out) {
  if (!s.plan().vessel || s.plan().vessel->joint.empty()) return;
  finding& f = out.ask(corner_joints);
  const vessel_case& c = s.vessel();
  const auto& all = s.plan().vessel->joint;
  bool screwed = false;
  for (std::size_t i = 0; i < all.size(); ++i) {
    const plan::corner_joint& one = all[i];
    const std::string name = detail::part_name(one.label, "corner", i, all.size());
    const auto pull = vessel::pull_on_joint({.width = *one.wall_width,
                                             .depth = detail::under_the_rim(c, *one.lower_edge),
                                             .water_density = c.density(),
                                             .label = name});
    f.answer("pull", "pull on a metre of it at its lower end", pull, name);
    line_load holds{};
    if (one.screw_diameter) {
      const force each = vessel::withdrawal_of(
          {.gravity = *one.gravity, .diameter = *one.screw_diameter, .penetration = *one.penetration, .label = name});
      const line_load screws = each / *one.spacing;
      f.detail("screw", "one screw may carry for good", each, name);
      f.detail("screws", "the screws of a metre may carry for good", screws, name);
      holds = std::max(holds, screws);
      screwed = true;
    }
    if (one.glue_width) {
      const line_load glue = *one.glue_shear * *one.glue_width;
      f.detail("glue", "the glue of a metre may carry for good", glue, name);
      holds = std::max(holds, glue);
    }
    if (holds.value() == 0.0) {
      f.unknown("give screws or glue of " + name);
      continue;
    }
    f.limit("holds", "the stronger of them may carry", holds, name);
    f.margin("left", "part of that left", fraction(1.0 - pull / holds), least_strength_left, name);
  }
  f.note =
      "With water to the rim, and the whole wall hung on its corners. Glue takes the load first and screws only when "
      "it has failed, so the two are not added. Wet wood holds a screw with 0.7 of this, end grain not at all.";
  if (f.verdict == verdict::does_not_hold && f.margin()) {
    f.happens =
        f.margin()->place + " opens at its lower end: a bracket round the corner, more screws, a wider glue line.";
  }
  if (screwed) f.source(vessel::nds_wood_screws);
}

}  // namespace tankwright::decisions
