// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/first_fill/drips.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/plan/inputs/hold_inputs.hpp>
#include <tankwright/text/quantity.hpp>
#include <tankwright/vessel/leak_parts.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_drips(const situation& s, answers& out) {
  if (!s.plan().hold || s.plan().hold->drip.empty()) return;
  finding& f = out.ask(drips);
  const plan::hold_section& h = *s.plan().hold;
  const flow_rate matters = plan::inputs_of(h).leak_that_matters;
  flow_rate low{}, central{}, high{};
  std::string_view reason;
  bool assumed = false;
  for (const plan::counted_drip& one : h.drip) {
    vessel::counted_drops count{.drops = static_cast<int>(*one.drops), .over = *one.over};
    if (one.drop) count.drop = {*one.drop, *one.drop, *one.drop, "counted to one drop either way"};
    assumed = assumed || !one.drop;
    const auto leak = vessel::drip_rate(count).leak;
    f.answer("leak", "drips", leak, one.label);
    low += leak.low;
    central += leak.central;
    high += leak.high;
    reason = leak.reason;
  }
  const estimate<flow_rate> all{low, central, high, reason};
  if (h.drip.size() > 1) f.answer("all", "all of them together", all);
  f.limit("matters", "leak that matters", matters);
  f.margin("left", "less than that by", map_falling(all, [&](flow_rate q) { return matters - q; }), flow_rate{});
  f.note = "A drip seldom stays: salt keeps it open, creeps, and eats metal. Mark the place, count again tomorrow.";
  if (f.verdict == verdict::does_not_hold) {
    f.happens = "They come to " + text::in(all.central, "L/d") + ": drain to below the place and mend it.";
  }
  if (assumed) f.next("catch a hundred drops in a measure: that halves the doubt");
}

}  // namespace tankwright::decisions
