// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/evaporated.hpp>
#include <tankwright/decisions/closing/evaporation.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_daily_evaporation(const situation& s, answers& out) {
  if (!s.plan().room) return;
  finding& f = out.ask(daily_evaporation);
  const room_case& c = s.room();
  if (!c.gives_any()) {
    f.unknown(detail::what_is_missing(c, detail::needs_seasons));
    return;
  }
  bool covered = false;
  for (const room::wet_surface& w : c.surfaces) covered = covered || w.covered.value() > 0.0;
  c.for_each_season(f, [&](const solved_season& one) {
    const char* place = words(one.when);
    f.answer("evaporation", detail::in_season(covered ? "covered as planned," : "", one.when),
             detail::top_off_amount(detail::evaporation_of(one.humidity)), place);
    if (covered) {
      f.detail("uncovered", detail::in_season("without covers,", one.when),
               detail::top_off_amount(detail::evaporation_of(one.humidity_uncovered)), place);
    }
  });
  f.note = "In the air that the room settles at: a wetter room holds water back.";
  detail::add_evaporation_sources(f);
  if (covered) f.source(room::npirc_2016);
  f.next("read the top-off reservoir for a week: that is your evaporation, without the band");
}

}  // namespace tankwright::decisions
