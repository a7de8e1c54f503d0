// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/plumbing/residual_current.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_residual_current(const situation& s, answers& out) {
  if (!s.plan().room) return;
  const plan::room_section& r = *s.plan().room;
  bool protection = false;
  for (const plan::circuit& one : r.circuit) protection = protection || one.trips_at;
  if (!protection) return;
  finding& f = out.ask(residual_current);
  bool assumed = false;
  for (const plan::circuit& one : r.circuit) {
    if (!one.trips_at) continue;
    std::vector<estimate<electric_current>> all;
    for (const plan::appliance& a : r.appliance) {
      if (a.circuit != one.label) continue;
      if (a.leakage) {
        all.push_back({*a.leakage, *a.leakage, *a.leakage, {}});
      } else {
        all.push_back(room::usual_leakage);
        assumed = true;
      }
    }
    const auto leak = room::leakage_of(all);
    const electric_current most = room::leakage_share * one.trips_at.get();
    f.answer("leakage", "leaks with everything plugged in", leak, one.label);
    f.limit("most", "may flow in service without nuisance", most, one.label);
    f.margin("left", "less than that by", map_falling(leak, [&](electric_current i) { return most - i; }),
             electric_current{}, one.label);
    f.detail("may_trip", "may trip from", room::tripping_share * one.trips_at.get(), one.label);
    f.detail("devices", "devices on it", static_cast<double>(all.size()), one.label);
  }
  if (f.verdict == verdict::does_not_hold) {
    f.happens = "The protection of " + f.margin()->place +
                " may trip with nothing wrong, and stops everything on it: spread the devices over several.";
  }
  f.note = "Put the return pump and the air pump behind different protections, so that one trip leaves the other.";
  f.source(room::iec_60364_residual).source(room::iec_60335_leakage);
  if (assumed) f.next("have an electrician measure what the devices leak, all together, at the protection");
}

}  // namespace tankwright::decisions
