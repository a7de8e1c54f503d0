// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/evaporated.hpp>
#include <tankwright/decisions/closing/humidity.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/room/condensation.hpp>
#include <tankwright/text/quantity.hpp>

namespace tankwright::decisions {

namespace detail {

/// The numbers of one season.
inline void add_humidity(finding& f, const room_case& c, const solved_season& s) {
  const char* place = words(s.when);
  const estimate<relative_humidity> h = s.settles_at();
  f.answer("humidity", in_season("settles", s.when) + " at", h, place);
  f.margin("below", "points below the limit, " + std::string{place}, points_below(c.in.target, h), useful_humidity,
           place);
  f.detail("uncovered", in_season("without covers,", s.when), s.humidity_uncovered.central.air.humidity.get(), place);
  if (s.as_planned.dehumidifier) {
    room::tank_room alone = s.as_planned;
    alone.dehumidifier.reset();
    f.detail("alone", "without the dehumidifier, " + std::string{place},
             room::humidity_balance(alone).central.air.humidity.get(), place);
    f.detail("duty", in_season("dehumidifier runs", s.when), s.humidity.central.duty, place);
  }
  if (h.central > c.in.target) {
    f.happens += (f.happens.empty() ? "The room settles at " : ", and at ") +
                 text::in(h.central, "%", text::significant(2)) + " in " + place;
  }
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_room_humidity(const situation& s, answers& out) {
  if (!s.plan().room) return;
  finding& f = out.ask(room_humidity);
  const room_case& c = s.room();
  if (!c.gives_any()) {
    f.unknown(detail::what_is_missing(c, detail::needs_seasons));
    return;
  }
  f.limit("limit", "relative humidity, at most", c.in.target);
  bool measured = true, saturated = false, left_out = false;
  c.for_each_season(f, [&](const solved_season& one) {
    detail::add_humidity(f, c, one);
    measured = measured && one.humidity.within_data;
    saturated = saturated || one.humidity.high.saturated || one.humidity.low.saturated;
    left_out = left_out || (c.in.dehumidifier && !one.machine_counts);
  });
  if (!f.happens.empty()) f.happens += ".";
  if (saturated) detail::say(f, "The air can get saturated: what it cannot hold runs down walls and windows.");
  if (!measured) detail::say(f, "Part of the band lies outside 28 to 95 %, where evaporation was measured.");
  if (left_out) {
    detail::say(f, "No dehumidifier is counted where the room is outside -30 to 45 °C, where its output can be said.");
  }
  detail::add_evaporation_sources(f);
  f.source(room::ashrae_2017);
  if (c.in.dehumidifier) f.source(room::energyplus_dehumidifier);
  if (f.verdict != verdict::holds) {
    f.next("log the humidity indoors and outdoors for a week: air changes are known worst of all");
  }
}

}  // namespace tankwright::decisions
