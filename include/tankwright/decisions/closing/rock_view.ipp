// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/rock_view.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_rock_view(const situation& s, answers& out) {
  if (!s.plan().vessel || !s.plan().vessel->view) return;
  finding& f = out.ask(rock_view);
  const plan::view_inputs& view = *s.vessel().in.view;
  const vessel::underwater_view& rock = view.rock;
  vessel::underwater_view clearance = rock;
  clearance.water = view.least_clearance;
  f.answer("seems", "it seems behind the glass by", vessel::apparent_distance(rock));
  f.detail("distance", "nearest rock to the inner face", rock.water.get());
  f.limit("clearance", "least clearance", view.least_clearance);
  f.margin("left", "clearance to spare", rock.water.get() - view.least_clearance, length{});
  f.detail("clearance_seems", "that clearance would seem", vessel::apparent_distance(clearance));
  if (f.verdict == verdict::does_not_hold) f.happens = "The animals have less room to turn than they need.";
  f.note = "Straight on; seen at an angle everything seems nearer still.";
}

}  // namespace tankwright::decisions
