// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/lid_sag.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/text/quantity.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_lid_sag(const situation& s, answers& out) {
  if (!s.plan().vessel || s.plan().vessel->lid.empty()) return;
  finding& f = out.ask(lid_sag);
  const vessel_case& c = s.vessel();
  bool bow_is_larger = false, glass = false;
  for (const vessel::lid& lid : c.in.lids) {
    const auto r = vessel::sag_of(lid);
    const length allowed = lid.span.get() / c.in.lid_span_over_sag;
    // Wet below and dry above, a lid bows downwards: the two add.
    const auto lowest = map_rising(r.long_term_sag, [&](length sag) { return sag + r.moisture_bow; });
    f.answer("down", "down in the middle after years", lowest, lid.label);
    f.limit("allowed", "allowed", allowed, lid.label);
    f.margin("sag_left", "part of the allowed sag left",
             map_falling(lowest, [&](length down) { return fraction(1.0 - down.value() / allowed.value()); }),
             fraction(0.0), lid.label);
    f.detail("bow", "of it bow from damp below", r.moisture_bow, lid.label);
    f.detail("sag", "sag at first", r.sag, lid.label);
    f.detail("used", "part of the allowable stress used", fraction(r.utilisation), lid.label);
    f.margin("stress_left", "part of the allowable stress left", fraction(1.0 - r.utilisation), least_strength_left,
             lid.label);
    bow_is_larger = bow_is_larger || r.moisture_bow > r.long_term_sag.central;
    glass = glass || lid.material->name == vessel::annealed_glass.name;
  }
  if (f.verdict == verdict::does_not_hold) {
    const number& worst = *f.margin();
    const number* down = f.find("down", worst.place);
    f.happens = worst.id == "stress_left" ? "Under its load the " + worst.place + " may break."
                                          : "In years of load and damp the " + worst.place + " sag by " +
                                                said(s, length::from_value(down->value.central)) + ".";
  }
  if (bow_is_larger && f.verdict != verdict::holds) {
    f.note = "Most of it is bow from damp below: turn the lid over now and then, or take a thicker sheet or glass.";
  }
  if (glass) f.source(vessel::astm_e1300);
}

}  // namespace tankwright::decisions
