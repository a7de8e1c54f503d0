// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/plumbing/drain_blocked.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>
#include <vector>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_drain_blocked(const situation& s, answers& out) {
  if (!s.plan().plumbing || !s.plumbing().in.has_circuit() || s.plumbing().in.drains.empty()) return;
  finding& f = out.ask(drain_blocked);
  const plumbing_case& c = s.plumbing();
  const flow_rate flow = c.solved().most.delivered;  // the drains must take the most that may come
  std::vector<estimate<flow_rate>> each;
  for (const auto& drain : c.in.drains) {
    const auto one = plumbing::drain_mode_for(drain, flow, c.liquid);
    each.push_back({one.surely, std::min(one.full.central, one.inlet.central), std::min(one.full.high, one.inlet.high),
                    "siphon formula, inlets and the losses of the fittings"});
  }
  f.limit("brought", "the returns bring at most", flow);
  for (std::size_t i = 0; i < each.size(); ++i) {
    const std::string& label = c.in.drains[i].pipe.label;
    estimate<flow_rate> others{{}, {}, {}, each[i].reason};
    for (std::size_t j = 0; j < each.size(); ++j) {
      if (j != i) others = {others.low + each[j].low, others.central + each[j].central, others.high + each[j].high,
                            each[i].reason};
    }
    f.answer("carry", "the others carry, " + label + " blocked", others, label);
    f.margin("left", "they could take more, " + label + " blocked",
             map_rising(others, [&](flow_rate q) { return q - flow; }), flow_rate{}, label);
  }
  if (each.size() == 1) f.note = "There is no second drain.";
  if (f.verdict == verdict::does_not_hold) {
    const number& m = *f.margin();
    f.happens = "With " + m.place + " blocked, " + said(s, flow_rate::from_value(-m.value.central)) +
                " run over the rim of the box or of the display";
  }
  f.source(plumbing::hills_1983);
}

}  // namespace tankwright::decisions
