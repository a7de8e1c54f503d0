// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <numbers>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/plumbing/pump_suction.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/decisions/useful.hpp>
#include <tankwright/plumbing/fittings.hpp>
#include <tankwright/water/vapour.hpp>

namespace tankwright::decisions {

namespace detail {

/// What suction head is kept over what the pump requires: common practice, as in `plumbing::npsh_available`.
inline constexpr length suction_reserve = metres(0.5);

/// Suction head with a sharp inlet, at one flow.
[[nodiscard]] inline head suction_head(const plumbing_case& c, const water_basis& water, flow_rate flow) {
  const plumbing::pump_inlet& inlet = *c.in.inlet;
  const double d = inlet.bore->diameter().value(), v = flow.value() / (0.25 * std::numbers::pi * d * d);
  const double k = plumbing::entrance_loss({.bore = inlet.bore}).high.value();
  const length over = c.in.sump.running_level.get() - inlet.above_floor.get();
  return plumbing::npsh_available(
      {.surface_pressure = water.air,
       .level_above_pump = over,
       .losses = head::from_value(k * v * v / (2.0 * standard_gravity.value())),
       .vapour_pressure = absolute_pressure{water::vapour_pressure(water.salinity, water.temperature)}},
      c.liquid);
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_pump_suction(const situation& s, answers& out) {
  if (!s.plan().plumbing || !s.plumbing().in.inlet || !s.plumbing().in.has_circuit()) return;
  finding& f = out.ask(pump_suction);
  const plumbing_case& c = s.plumbing();
  const flow_rate flow = c.solved().most.pumps.front().flow;  // the most that it may draw
  const auto needed = plumbing::vortex_submergence(c.in.inlet->bore, flow);
  const length over = c.in.sump.running_level.get() - c.in.inlet->above_floor.get();
  f.answer("over", "water over the inlet while it runs", over);
  f.limit("needed", "that keeps a vortex away", needed);
  f.margin("vortex", "more water than that by", map_falling(needed, [&](length deep) { return over - deep; }),
           useful_level);
  if (c.in.npsh_required) {
    const head has = detail::suction_head(c, s.basis(), flow);
    f.detail("npsh", "suction head that it has", has);
    f.detail("npsh_required", "suction head that it requires", *c.in.npsh_required);
    f.margin("suction", "more suction head than that by", has - *c.in.npsh_required, detail::suction_reserve);
    f.source(plumbing::crane_tp410);
  } else {
    f.note =
        "Under water a pump seldom lacks suction head; one that stands dry beside the sump may: give its "
        "npsh_required.";
  }
  if (f.verdict == verdict::does_not_hold) {
    f.happens = f.margin()->id == "suction" ? "The water boils in the pump: it rattles and is eaten away."
                                            : "A vortex draws air into the pump: it hums, and blows fine bubbles.";
  }
  f.source(plumbing::hydraulic_institute_9_8).source(plumbing::gordon_1970);
}

}  // namespace tankwright::decisions
