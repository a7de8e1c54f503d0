// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/bottom/items.hpp>
#include <tankwright/decisions/bottom/rock_weight.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_rock_weight(const situation& s, answers& out) {
  if (!s.plan().vessel || s.plan().vessel->rock.empty()) return;
  finding& f = out.ask(rock_weight);
  const vessel_case& c = s.vessel();
  const mass_density density = c.density();
  const auto& rock = c.in.rock;
  const auto weight = [&](auto member) {
    return sum_over<mass>(rock, [&](const auto& i) { return vessel::weight_of(i, density).*member; });
  };
  const auto solids = sum_over<volume>(rock, [](const auto& i) { return as_volume(i.solids); });
  f.answer("dry", "dry", weight(&vessel::item_weight::dry));
  f.answer("wet", "wet, pores full", weight(&vessel::item_weight::wet));
  f.answer("submerged", "weight under water", weight(&vessel::item_weight::submerged));
  f.detail("keeps_out", "water it keeps out", solids);
  f.detail("room", "room it takes", sum_over<volume>(rock, [](const auto& i) { return as_volume(i.envelope); }));
  bool may_float = false;
  for (const vessel::item& one : rock) {  // each lot by itself: heavy rock does not hold light rock down
    const auto down = vessel::weight_of(one, density).submerged;
    may_float = may_float || !(down.low.value() > 0.0);
    f.margin("down", "presses down with", down, mass{}, one.label);
  }
  if (may_float) f.note = "Some of it may float until its pores have filled.";
  if (f.verdict == verdict::does_not_hold) f.happens = f.margin()->place + " floats until its pores have filled.";
  f.source(vessel::bucher_1998).source(vessel::crane_2007);
  if (solids.low < solids.high) {
    f.next("hang the rock in water from a luggage scale, soaked through: it tells what it displaces");
  }
}

}  // namespace tankwright::decisions
