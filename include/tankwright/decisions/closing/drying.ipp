// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/drying.hpp>
#include <tankwright/decisions/closing/evaporated.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/room/humidity_control.hpp>
#include <tankwright/room/moist_air.hpp>

namespace tankwright::decisions {

namespace detail {

/// Outdoor air that is drier than the room shall be.
[[nodiscard]] inline bool outdoor_air_dries(const solved_season& s, relative_humidity target) {
  const room::air wanted{
      .temperature = s.given.indoors, .humidity = target, .pressure = s.as_planned.room.outdoor.pressure};
  return room::humidity_ratio_of(s.as_planned.room.outdoor) < room::humidity_ratio_of(wanted);
}

inline void add_machine(finding& f, const room_case& c, const solved_season& s) {
  const char* place = words(s.when);
  const auto rated_at = c.in.dehumidifier ? c.in.dehumidifier->machine.rated_at : room::rated_80F_60;
  const auto size = room::dehumidifier_for(s.as_planned, c.in.target, rated_at);
  f.detail("load", in_season("to remove", s.when), map_rising(size.load, as_litres), place);
  if (size.needed) {
    f.answer("label", "dehumidifier by its label, " + std::string{place}, as_litres(size.suggested), place);
  }
  if (c.in.dehumidifier) {
    const mass_flow label = c.in.dehumidifier->machine.capacity;
    const auto spare = map_falling(size.rated, [&](mass_flow m) { return label - m; });
    f.detail("spare", in_season("spare capacity", s.when), map_rising(spare, as_litres), place);
  }
}

inline void add_ventilation(finding& f, const room_case& c, const solved_season& s) {
  const char* place = words(s.when);
  if (!outdoor_air_dries(s, c.in.target)) {
    say(f, s.when == season::winter
               ? "In winter the outdoor air is no drier than the room shall be: ventilation cannot dry it."
               : "In summer the outdoor air is no drier than the room shall be: ventilation cannot dry it.");
    return;
  }
  const auto air = room::ventilation_for(s.as_planned, c.in.target);
  f.answer("air_changes", in_season("or air changes", s.when), air.air_changes, place);
  f.detail("outdoor_air", in_season("  outdoor air", s.when), air.outdoor_air, place);
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_drying_methods(const situation& s, answers& out) {
  if (!s.plan().room) return;
  finding& f = out.ask(drying_methods);
  const room_case& c = s.room();
  if (!c.gives_any()) {
    f.unknown(detail::what_is_missing(c, detail::needs_seasons));
    return;
  }
  bool unknown_machine = false;
  c.for_each_season(f, [&](const solved_season& one) {
    try {
      detail::add_machine(f, c, one);
    } catch (const out_of_range&) {
      unknown_machine = true;
    }
    detail::add_ventilation(f, c, one);
  });
  if (unknown_machine) {
    detail::say(f, "The air shall be too dry, or is too cold, for a dehumidifier: ask the maker for the output in it.");
  }
  if (c.in.dehumidifier) {
    f.detail("planned", "dehumidifier in the plan, by its label",
             detail::as_litres(c.in.dehumidifier->machine.capacity));
  }
  detail::add_evaporation_sources(f);
  f.source(room::energyplus_dehumidifier);
}

}  // namespace tankwright::decisions
