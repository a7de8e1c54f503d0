// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/plumbing/turnover.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_turnover(const situation& s, answers& out) {
  if (!s.plan().plumbing || !s.plumbing().in.has_circuit()) return;
  finding& f = out.ask(turnover);
  const plumbing_case& c = s.plumbing();
  const circuit_band& solved = c.solved();
  const auto& held = s.state().display_water;
  if (!held) {
    const std::string& why = s.state().why_no_display;
    f.unknown(why.empty() ? "give the display, so that its net volume can be computed" : why);
    return;
  }
  const auto turns = [](flow_rate q, volume v) { return rate::from_value(q.value() / v.value()); };
  const auto flow = solved.band([](const auto& at) { return at.delivered; });
  const estimate<rate> often{turns(flow.low, held->high), turns(flow.central, held->central),
                             turns(flow.high, held->low), "losses of the fittings and net volume"};
  f.answer("turns", "turns", often).source(plumbing::todini_pilati_1988);
  if (!c.in.wanted_turnover) return;
  const rate wanted = *c.in.wanted_turnover;
  f.limit("wanted", "wanted", wanted);
  f.margin("left", "more than that by", map_rising(often, [&](rate r) { return r - wanted; }), rate{});
}

}  // namespace tankwright::decisions
