// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/first_fill/silicone_seams.hpp>
#include <tankwright/decisions/first_fill/wall_parts.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/vessel/joints.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_silicone_seams(const situation& s, answers& out) {
  if (!s.plan().vessel || s.plan().vessel->seam.empty()) return;
  finding& f = out.ask(silicone_seams);
  const vessel_case& c = s.vessel();
  const auto& all = s.plan().vessel->seam;
  for (std::size_t i = 0; i < all.size(); ++i) {
    const plan::silicone_seam& one = all[i];
    const std::string name = detail::part_name(one.label, "seam", i, all.size());
    const auto pull = vessel::pull_on_joint({.width = *one.pane_width,
                                             .depth = detail::under_the_rim(c, *one.lower_edge),
                                             .water_density = c.density(),
                                             .label = name});
    const stress in_it = pull / *one.bite;
    f.answer("stress", "stress in it at its lower end", in_it, name);
    f.detail("pull", "pull on a metre of it", pull, name);
    f.limit("allowed", "silicone may carry for good", vessel::silicone_seam_tension, name);
    f.margin("left", "part of that left",
             map_rising(vessel::silicone_seam_tension, [&](stress may) { return fraction(1.0 - in_it / may); }),
             least_strength_left, name);
    if (!one.gap) continue;
    const length may_move = *one.gap * one.stretches.get().value();
    f.limit("may_move", "its faces may move by", may_move, name);
    f.margin("movement", "more than they do by", may_move - *one.movement, millimetres(0.1), name);
  }
  f.note =
      "With water to the rim. Nobody agrees what a seam may carry for years; let panes bear on a frame from inside, "
      "so that the water presses them on and the silicone only seals. Cut a strip of the same batch and pull it: it "
      "should tear in itself, not off the glass.";
  if (f.verdict == verdict::does_not_hold) {
    f.happens =
        "The seam " + f.margin()->place +
        (f.margin()->id == "movement" ? " is torn off its faces as they move." : " creeps, and opens from below.");
  }
}

}  // namespace tankwright::decisions
