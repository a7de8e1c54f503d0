// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/plumbing/drain_blocked.hpp>
#include <tankwright/decisions/plumbing/drain_share.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_drain_blocked(const situation& s, answers& out) {
  if (!s.plan().plumbing || !s.plumbing().in.has_circuit() || s.plumbing().in.drains.empty()) return;
  finding& f = out.ask(drain_blocked);
  const plumbing_case& c = s.plumbing();
  const auto flow = c.solved().band([](const auto& one) { return one.delivered; });
  const auto each = detail::drain_shares(c, flow.high);
  f.limit("brought", "the returns bring", flow);
  for (std::size_t i = 0; i < each.size(); ++i) {
    const std::string& label = c.in.drains[i].pipe.label;
    const auto others = detail::sum_of(each, [i](std::size_t j) { return j != i; });
    f.answer("carry", "the others carry", others, label);
    f.margin("left", "they could take more", detail::beyond(others, flow), flow_rate{}, label);
  }
  if (each.size() == 1) f.note = "There is no second drain.";
  if (f.verdict == verdict::does_not_hold) {
    const number& m = *f.margin();
    f.happens = "If the " + m.place + " is blocked, " + said(s, flow_rate::from_value(-m.value.central)) +
                (each.size() == 1 ? " have nowhere to go" : " are more than the other drains take") +
                ", and run over the rim";
  }
  f.source(plumbing::hills_1983);
}

}  // namespace tankwright::decisions
