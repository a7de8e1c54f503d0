// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/power_cut/dry_floor.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/decisions/useful.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_dry_floor(const situation& s, answers& out) {
  if (!s.plan().plumbing) return;
  finding& f = out.ask(dry_floor);
  const plumbing_case& c = s.plumbing();
  if (!c.cut) {
    f.unknown(c.why_no_cut);
    return;
  }
  const auto& cut = *c.cut;
  f.margin("left", "left below the rim in the worst moment, in " + cut.worst.chamber, cut.margin,
           std::max(c.in.reserve, useful_level));
  f.limit("reserve", "wanted at least", c.in.reserve);
  f.detail("down", "comes down", cut.falls.total);
  f.detail("over_edge", "of it over the edge", cut.falls.over_edge);
  f.detail("back_siphon", "of it by back-siphon", cut.falls.back_siphon);
  f.detail("spare", "the sump still holds", cut.spare);
  if (cut.worst.at) f.detail("worst_at", "the water stands highest after", *cut.worst.at);
  if (cut.on_the_floor.high.value() > 0.0) f.detail("floor", "runs onto the floor", cut.on_the_floor);
  if (cut.on_the_floor.central.value() > 0.0) {
    f.happens = said(s, cut.on_the_floor.central) + " run onto the floor when the power fails";
  }
  f.source(plumbing::rehbock_1929).next("switch the pump off with somebody watching, and mark the highest level");
}

}  // namespace tankwright::decisions
