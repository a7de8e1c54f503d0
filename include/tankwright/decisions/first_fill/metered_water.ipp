// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/first_fill/metered_water.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/vessel/shape.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_metered_water(const situation& s, answers& out) {
  if (!s.plan().vessel || !s.plan().vessel->metered) return;
  finding& f = out.ask(metered_water);
  const vessel_case& c = s.vessel();
  const volume metered = *s.plan().vessel->metered;
  const volume full = vessel::filled_volume(c.in.display, c.in.water_level);
  const volume apart = metered - full, allowed = (*s.plan().vessel->metered_within).value() * full;
  f.answer("more", "the meter counted more than the dimensions hold by", apart);
  f.detail("metered", "by the meter", metered);
  f.detail("computed", "by the dimensions", full);
  f.limit("allowed", "they may differ by", allowed);
  f.margin("left", "agreement to spare", allowed - volume::from_value(std::fabs(apart.value())), volume{});
  if (f.verdict == verdict::does_not_hold) {
    f.happens = apart.value() > 0.0
                    ? "More water went in than the dimensions hold: it leaks, the walls bulge, or a length is wrong."
                    : "Less water went in than the dimensions hold: the meter was by-passed, or a length is wrong.";
  }
  f.note = "Without sand, rock and equipment, which is how the first fill is done.";
  f.next("measure length, width and water level once more, inside, in two places each");
}

}  // namespace tankwright::decisions
