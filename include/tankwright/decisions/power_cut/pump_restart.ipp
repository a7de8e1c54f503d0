// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/power_cut/pump_restart.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/decisions/useful.hpp>
#include <tankwright/plumbing/priming.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_pump_restart(const situation& s, answers& out) {
  if (!s.plan().plumbing || !s.plumbing().in.inlet || !s.plumbing().cut) return;
  finding& f = out.ask(pump_restart);
  const plumbing_case& c = s.plumbing();
  plumbing::restart_input task{.system = *c.cut_input, .inlet = *c.in.inlet, .surge = c.in.surge};
  if (!c.in.drains.empty()) {
    const flow_rate flow = c.solved().central.delivered;
    task.taken = plumbing::held_up_while_priming(c.in.drains, {flow, flow, flow, "central"}, c.liquid).taken;
  }
  const auto again = plumbing::restart_after(*c.cut, task);
  f.margin("left", "over what keeps a vortex away", again.margin, useful_level);
  f.detail("lowest", "lowest level of the pump chamber", again.lowest_level);
  f.detail("held_up", "held up in the drains until they run", again.held_up);
  f.detail("until_over", "until water runs over the edge again", again.until_it_runs_over);
  if (f.verdict == verdict::does_not_hold) {
    f.happens = again.lowest_level.central.value() > 0.0
                    ? "When the power comes back, the pump draws air before the display runs over again"
                    : "When the power comes back, the pump's chamber runs dry before the display runs over again";
  } else if (again.runs_dry) {
    f.note = "At the worst end of all areas and levels its chamber runs dry.";
  }
  f.source(plumbing::hydraulic_institute_9_8).source(plumbing::gordon_1970);
}

}  // namespace tankwright::decisions
