// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/evaporated.hpp>
#include <tankwright/decisions/closing/reservoir.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_reservoir_time(const situation& s, answers& out) {
  if (!s.plan().room || !s.plan().room->top_off) return;
  finding& f = out.ask(reservoir_time);
  const room_case& c = s.room();
  if (!c.gives_any()) {
    f.unknown(detail::what_is_missing(c, detail::needs_seasons));
    return;
  }
  const plan::top_off_inputs& t = *c.in.top_off;
  const estimate<mass_flow> lost = detail::most_evaporation(c);
  if (!(lost.low.value() > 0.0)) {
    f.unknown("nothing evaporates: there is nothing to be topped off");
    return;
  }
  const estimate<flow_rate> rate = room::top_off_rate(lost, t.fresh_water);
  const estimate<duration> lasts = room::reservoir_lasts(t.reservoir, rate);
  f.answer("lasts", "it lasts", lasts);
  f.limit("unattended", "nobody looks for", t.unattended);
  f.margin("left", "left", map_rising(lasts, [&](duration d) { return d - t.unattended; }), days(0.0));
  f.detail("top_off", "top-off", rate);
  f.note = "Plan on the low end: it belongs to the high evaporation.";
  detail::add_evaporation_sources(f);
  if (f.verdict == verdict::does_not_hold) {
    f.happens = "It runs dry after " + said(s, lasts.central) + ", and the water gets saltier from then on.";
  }
  if (f.verdict != verdict::holds) f.next("read the reservoir for a week: that narrows the band");
}

}  // namespace tankwright::decisions
