// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/moving_in/hardness_unattended.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_hardness_unattended(const situation& s, answers& out) {
  if (!s.plan().life || !s.plan().life->drift) return;
  finding& f = out.ask(hardness_unattended);
  const plan::hardness_drift& d = *s.plan().life->drift;
  const auto lowest = [&](double start, double falls) {
    water::falling_level level{.start = start, .falls_a_day = falls, .time = *d.unattended};
    if (d.water_change) {
      level.changed = *d.water_change;
      level.every = *d.every;
    }
    return water::lowest_level(level);
  };
  const double falls = *d.alkalinity_a_day, at = lowest(*d.alkalinity_now, falls);
  f.answer("alkalinity", "lowest alkalinity, dKH", at);
  f.limit("alkalinity_lowest", "may fall to, dKH", *d.alkalinity_lowest);
  f.margin("alkalinity_left", "above that by, dKH", at - *d.alkalinity_lowest, 0.0);
  if (falls > 0.0 && !d.water_change) {
    f.detail("lasts", "until it is there", days((*d.alkalinity_now - *d.alkalinity_lowest) / falls));
  }
  if (d.calcium_now) {
    const double each = in_milligrams_per_litre(water::calcium_with_alkalinity(falls));
    const double calcium = lowest(in_milligrams_per_litre(*d.calcium_now), each);
    f.answer("calcium", "lowest calcium", milligrams_per_litre(calcium));
    f.limit("calcium_lowest", "may fall to", *d.calcium_lowest);
    f.margin("calcium_left", "above that by", milligrams_per_litre(calcium) - *d.calcium_lowest, mass_concentration{});
    f.detail("calcium_a_day", "calcium that goes with it in a day", milligrams_per_litre(each));
  }
  f.detail("unattended", "nobody doses for", *d.unattended);
  f.note =
      "Nitrification takes alkalinity alone, growing skeletons take both. What grows takes more from month to month: "
      "measure the fall anew before going away.";
  if (f.verdict == verdict::does_not_hold) {
    f.happens = f.margin()->id == "calcium_left" ? "The calcium falls below what they need while nobody is there."
                                                 : "The alkalinity falls below what they need while nobody is there.";
  }
}

}  // namespace tankwright::decisions
