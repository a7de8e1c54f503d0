// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/plumbing/fittings_cost.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/plumbing/fittings.hpp>

namespace tankwright::decisions {

namespace detail {

/// A loss coefficient as a plain number with its band.
[[nodiscard]] inline estimate<double> plain_loss(const estimate<plumbing::loss_coefficient>& k) {
  return map_rising(k, [](plumbing::loss_coefficient one) { return one.value(); });
}

/// The sum of a pipe's losses, and the head it takes where the circuit is solved.
inline void show_fittings(finding& f, const situation& s, const plumbing::pipe_run& run) {
  const estimate<double> k = plain_loss(run.fittings);
  f.answer("loss", "sum of the loss coefficients", k, run.label);
  const plumbing_case& c = s.plumbing();
  if (!c.circuit) return;
  for (std::size_t i = 0; i < c.circuit->central.runs.size(); ++i) {
    if (c.circuit->central.runs[i].label != run.label) continue;
    const auto taken = [&](double at_k, const plumbing::circuit_solution& at) {
      const double v = at.runs[i].velocity.value();
      return length::from_value(at_k * v * v / (2.0 * standard_gravity.value()));
    };
    f.detail("head", "head that they take",
             estimate<length>{taken(k.high, c.circuit->least), taken(k.central, c.circuit->central),
                              taken(k.low, c.circuit->most), k.reason},
             run.label);
  }
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_fittings_cost(const situation& s, answers& out) {
  if (!s.plan().plumbing) return;
  const plan::plumbing_section& p = *s.plan().plumbing;
  bool counted = p.trunk && p.trunk->pipe.fittings.given();
  for (const auto& r : p.returns) counted = counted || r.pipe.fittings.given();
  for (const auto& d : p.drain) counted = counted || d.pipe.fittings.given();
  if (!counted) return;
  finding& f = out.ask(fittings_cost);
  const plan::plumbing_inputs& in = s.plumbing().in;
  for (std::size_t i = 0; i < in.shared_pipes.size(); ++i) {
    if (p.trunk && p.trunk->pipe.fittings.given()) detail::show_fittings(f, s, in.shared_pipes[i].pipe);
  }
  for (std::size_t i = 0; i < p.returns.size(); ++i) {
    if (p.returns[i].pipe.fittings.given()) detail::show_fittings(f, s, in.returns[i].pipe);
  }
  for (std::size_t i = 0; i < p.drain.size(); ++i) {
    if (p.drain[i].pipe.fittings.given()) detail::show_fittings(f, s, in.drains[i].pipe);
  }
  f.note = "With what stands in `loss`. A valve half shut costs many times as much as one that is open.";
  f.source(plumbing::crane_tp410);
}

}  // namespace tankwright::decisions
