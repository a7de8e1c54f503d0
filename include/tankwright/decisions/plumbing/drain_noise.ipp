// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/plumbing/drain_noise.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

namespace detail {

/// What is left of a flow for each drain that vents, once the siphons have taken theirs.
[[nodiscard]] inline flow_rate flow_for_vented(const plumbing_case& c, flow_rate flow, std::size_t vented) {
  for (std::size_t i = 0; i < c.in.drains.size(); ++i) {
    if (c.in.drains[i].runs_full)
      flow -= plumbing::siphon_flow(c.in.drains[i].pipe, c.in.drains[i].drop, c.liquid).central;
  }
  return flow_rate::from_value(std::max(0.0, flow.value()) / static_cast<double>(vented));
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_drain_noise(const situation& s, answers& out) {
  if (!s.plan().plumbing || !s.plumbing().in.has_circuit() || s.plumbing().in.drains.empty()) return;
  finding& f = out.ask(drain_noise);
  const plumbing_case& c = s.plumbing();
  const auto vented = static_cast<std::size_t>(
      std::count_if(c.in.drains.begin(), c.in.drains.end(), [](const auto& d) { return !d.runs_full; }));
  const bool siphon = vented < c.in.drains.size();
  const circuit_band& solved = c.solved();
  const double limit = plumbing::self_venting_drain_number;
  for (std::size_t i = 0; i < c.in.drains.size(); ++i) {
    if (c.in.drains[i].runs_full) continue;
    const plumbing::pipe_run& pipe = c.in.drains[i].pipe;
    const auto number = solved.band([&](const auto& at) {
      return plumbing::drain_number(pipe.bore, detail::flow_for_vented(c, at.delivered, vented));
    });
    f.detail("number", "drain number", number, pipe.label);
    f.margin("left", "below the number at which it gulps",
             estimate<double>{0.8 * limit - number.high, limit - number.central, 1.2 * limit - number.low,
                              "the limit of a drain that vents itself is soft, about 20 %"},
             0.0, pipe.label);
  }
  f.source(plumbing::hills_1983);
  if (vented == 0) {
    f.note =
        "All of them are set up as siphons: silent while they are full, loud each time they start and break. One "
        "that carries a trickle with air beside them would tell of trouble.";
    return;
  }
  f.limit("limit", "drain number at which it begins to gulp", limit);
  if (siphon) {
    f.note =
        "A siphon is silent once its valve lets a little less through than the pump brings; the others take the "
        "rest.";
  }
  if (f.verdict == verdict::does_not_hold) {
    f.happens =
        "It gulps air and roars, and the level in the box swings: take a wider pipe, or run one of two as a "
        "siphon with a valve.";
  }
}

}  // namespace tankwright::decisions
