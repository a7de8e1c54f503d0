// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <string>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/plumbing/surge.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/decisions/useful.hpp>

namespace tankwright::decisions {

namespace detail {

/// What the drains hold up: as it was seen, otherwise as siphons prime.
[[nodiscard]] inline estimate<volume> held_up_by(const plumbing_case& c, const estimate<flow_rate>& flow, finding& f) {
  if (c.in.surge) {
    const area surface = c.in.display.box ? c.in.display.box->horizontal_area.get() : c.in.display.surface.get();
    const double part = c.in.area_uncertainty.value();
    const volume seen = surface * *c.in.surge;
    return {seen * (1.0 - part), seen, seen * (1.0 + part), "the area over which the surge was seen"};
  }
  const auto priming = plumbing::held_up_while_priming(c.in.drains, flow, c.liquid);
  f.answer("taken", "the drains take in the first half minute", priming.taken);
  f.detail("brought", "the returns bring", flow);
  for (const auto& d : c.in.drains) {
    if (!d.runs_full || plumbing::primes_itself(d, flow.central)) continue;
    f.note += "This flow may be too little to sweep the air out of " + d.pipe.label + ". ";
  }
  f.next("watch the first start and write down how far the water rises: it counts in place of half a minute");
  f.source(plumbing::hills_1983).source(plumbing::wyly_eaton_1961);
  return priming.held_up;
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_surge(const situation& s, answers& out) {
  if (!s.plan().plumbing || !s.plumbing().in.has_circuit() || s.plumbing().in.drains.empty()) return;
  const plumbing_case& c = s.plumbing();
  const auto& all = c.in.drains;
  const bool siphons = std::any_of(all.begin(), all.end(), [](const auto& d) { return d.runs_full; });
  if (!siphons && !c.in.surge) return;  // nothing has to find its siphon
  finding& f = out.ask(surge);
  if (!c.in.edge_to_rim) {
    f.unknown("give the height from the overflow edge to the rim of the display");
    return;
  }
  const circuit_band& solved = c.solved();
  const auto flow = solved.band([](const auto& one) { return one.delivered; });
  const auto held = detail::held_up_by(c, flow, f);
  const auto head = [&](flow_rate q) { return plumbing::head_over(c.in.display.edge, q, extrapolate).head; };
  const double part = c.in.area_uncertainty.value();
  const area surface = c.in.display.surface;
  const length room = *c.in.edge_to_rim;
  const auto stands = [&](length over, volume up, double area_part) {
    return over + length::from_value(up.value() / (surface.value() * area_part));
  };
  const estimate<length> over{stands(head(flow.low).low, held.low, 1.0 + part),
                              stands(head(flow.central).central, held.central, 1.0),
                              stands(head(flow.high).high, held.high, 1.0 - part),
                              "the flow, the weir formula, and what the drains take before they run full"};
  f.margin("left", "left below the rim of the display", map_falling(over, [&](length z) { return room - z; }),
           std::max(c.in.reserve, useful_level));
  f.limit("rim", "from the edge to the rim", room);
  f.answer("over", "the display stands over its edge", over);
  f.detail("held_up", "held up until the drains run full", held);
  if (f.verdict == verdict::does_not_hold) {
    const volume more = volume::from_value((over.central - room).value() * surface.value());
    f.happens = said(s, more) + " run over the rim of the display before the drains take the whole flow";
  }
  f.source(plumbing::rehbock_1929);
}

}  // namespace tankwright::decisions
