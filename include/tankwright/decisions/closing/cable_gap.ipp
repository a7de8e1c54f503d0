// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/cable_gap.hpp>
#include <tankwright/decisions/closing/evaporated.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

namespace detail {

/// Evaporation of as much open water as a gap, from half of it on where the gap is narrow.
[[nodiscard]] inline estimate<mass_flow> through_gap(const room_case& c, const solved_season& s, room::wet_surface open,
                                                     area gap) {
  open.area = gap;
  open.covered = fraction(0.0);
  const room::air& air = s.humidity.central.air;
  const auto rate = room::evaporation({.water = c.water, .air = air, .surfaces = {open}}, policy_for(air)).rate;
  const mass_flow half = 0.5 * rate.low;
  return {half < rate.low ? half : rate.low, rate.central, rate.high, "evaporation, and how freely air passes a gap"};
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_cable_gap(const situation& s, answers& out) {
  if (!s.plan().room) return;
  const plan::room_section& r = *s.plan().room;
  const bool display = r.display && r.display->gap, sump = r.sump && r.sump->gap;
  if (!display && !sump) return;
  finding& f = out.ask(cable_gap);
  const room_case& c = s.room();
  if (!c.gives_any()) {
    f.unknown(detail::what_is_missing(c, detail::needs_seasons));
    return;
  }
  c.for_each_season(f, [&](const solved_season& one) {
    const std::string when = words(one.when);
    const double all = detail::evaporation_of(one.humidity).central.value();
    const auto show = [&](const room::wet_surface& surface, area gap, const char* what) {
      const auto out_of_it = detail::through_gap(c, one, surface, gap);
      const std::string place = std::string{what} + ", " + when;
      f.answer("gap", "through the gaps", detail::top_off_amount(out_of_it), place);
      if (all > 0.0) {
        f.detail("share", "part of all evaporation",
                 map_rising(out_of_it, [&](mass_flow m) { return fraction(m.value() / all); }), place);
      }
    };
    if (display) show(c.in.display.surface, *r.display->gap, "display");
    if (sump) show(c.in.sump.surface, *r.sump->gap, "sump");
  });
  f.note = "Count them in `covered` too: gaps are not covered. A collar of foam round a pipe costs nothing.";
  detail::add_evaporation_sources(f);
}

}  // namespace tankwright::decisions
