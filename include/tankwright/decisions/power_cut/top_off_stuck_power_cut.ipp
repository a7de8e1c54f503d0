// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/power_cut/top_off_stuck_power_cut.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/decisions/useful.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_top_off_stuck_power_cut(const situation& s, answers& out) {
  const auto& room = s.plan().room;
  if (!s.plan().plumbing || !s.plumbing().cut || !room || !room->top_off || !room->top_off->reservoir) return;
  finding& f = out.ask(top_off_stuck_power_cut);
  const plumbing_case& c = s.plumbing();
  plumbing::power_cut_input flooded = *c.cut_input;
  flooded.topped_up = room->top_off->reservoir.get();
  const auto cut = plumbing::power_cut(flooded);
  f.margin("left", "left below the rim in the worst moment, in " + cut.worst.chamber, cut.margin,
           std::max(c.in.reserve, useful_level));
  f.detail("reservoir", "of the reservoir in the sump", room->top_off->reservoir.get());
  if (cut.on_the_floor.central.value() > 0.0) {
    f.detail("floor", "runs onto the floor", cut.on_the_floor);
    f.happens = "If the power fails after the top-off has stuck open, " + said(s, cut.on_the_floor.central) +
                " run onto the floor";
  }
  f.source(plumbing::rehbock_1929);
}

}  // namespace tankwright::decisions
