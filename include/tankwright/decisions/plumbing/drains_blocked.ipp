// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/plumbing/drains_blocked.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/decisions/useful.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_drains_blocked(const situation& s, answers& out) {
  if (!s.plan().plumbing || !s.plumbing().cut_input) return;
  finding& f = out.ask(drains_blocked);
  const plumbing_case& c = s.plumbing();
  if (!c.in.edge_to_rim) {
    f.unknown("give the height from the overflow edge to the rim of the display");
    return;
  }
  plumbing::drains_blocked_input in{.system = *c.cut_input, .edge_to_rim = *c.in.edge_to_rim, .inlet = c.in.inlet};
  const auto& room = s.plan().room;
  if (room && room->top_off && room->top_off->reservoir) in.top_off = *room->top_off->reservoir;
  const auto end = plumbing::all_drains_blocked(in);
  f.margin("left", "left below the rim of the display when the pump has run dry", end.margin,
           std::max(c.in.reserve, useful_level));
  f.limit("rim", "from the edge to the rim", *c.in.edge_to_rim);
  f.answer("over", "the display stands over its edge", end.over_edge);
  f.detail("delivered", "the pump still delivers", end.delivered);
  if (in.top_off.value() > 0.0) f.detail("top_off", "of it from the top-off's reservoir", in.top_off);
  f.detail("until_dry", "until it draws air, at the least", end.until_dry);
  if (end.on_the_floor.high.value() > 0.0) f.detail("floor", "runs onto the floor", end.on_the_floor);
  if (end.on_the_floor.central.value() > 0.0) {
    f.happens = said(s, end.on_the_floor.central) + " run over the rim of the display when every drain is blocked";
  }
  if (!c.in.inlet) f.next("give the pump's inlet: here it draws its chamber down to the floor");
  f.source(plumbing::rehbock_1929);
}

}  // namespace tankwright::decisions
