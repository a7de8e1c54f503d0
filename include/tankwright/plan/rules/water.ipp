// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/rules/reading_rules.hpp>
#include <tankwright/plan/rules/rules.hpp>
#include <tankwright/plan/usual.hpp>
#include <tankwright/water/freezing.hpp>
#include <tankwright/water/salinity.hpp>

namespace tankwright::plan::rules {

namespace detail {

/// The salinity that the new water is meant to have, where that can be said without an instrument.
[[nodiscard]] inline std::optional<practical_salinity> meant_salinity(const water_section& w) {
  const auto s =
      w.older_tank ? w.older_tank->known.maybe() : std::optional{w.target.value_or(practical_salinity{35.0})};
  const bool possible = s && s->value() >= 0.0 && s->value() <= usual::salinity.high.value();
  return possible ? s : std::nullopt;
}

/// Water, and not ice; checked where the formula of the freezing point holds.
inline void hold_liquid(const water_section& w, book& all) {
  const auto s = meant_salinity(w);
  if (!w.temperature || !s || s->value() > water::practical_salinity_limits.published.high) return;
  const temperature freezes = water::freezing_point(*s, extrapolate);
  if (*w.temperature < freezes) {
    all.refuse("water.temperature",
               all.said(w.temperature) + " is below the freezing point of this water, " + all.said(freezes) +
                   " at practical salinity " + all.said(*s),
               w.older_tank ? "water.older_tank"
               : w.target   ? "water.target"
                            : "");
  }
}

/// A mix is neither more than salt, nor so little that it never reaches the target.
inline void hold_trial(const water_section& w, book& all) {
  const trial_batch& t = *w.trial_batch;
  hold_salinity("water.trial_batch.reached", t.reached, all);
  if (!t.reached) return;
  const double half = half_width(t.reached, usual::doubt_of(usual::read_salinity));
  if (half >= t.reached.si()) {
    all.refuse("water.trial_batch.reached", "has a doubt that is not less than what was reached");
    return;
  }
  if (!t.mix || !t.fresh_water || !(*t.mix > kilograms(0.0))) return;
  const double salt_in_mix = 1e-3 * (*t.fresh_water + *t.mix).value() / t.mix.get().value();  // per g/kg reached
  const auto grams = [](double s) { return 35.16504 / 35.0 * s; };                            // Millero et al. 2008
  const auto yield_at = [&](double s) { return grams(s) * salt_in_mix; };
  const double least = yield_at(t.reached.si() - half);
  if (least > 1.0) {
    all.refuse("water.trial_batch.reached",
               all.said(t.reached) + " is more salt than the mix weighed, " + all.said(t.mix) + " in " +
                   all.said(t.fresh_water) + " of water",
               "water.trial_batch.mix");
  }
  const auto s = meant_salinity(w);
  if (s && least * 1e3 <= grams(s->value())) {
    all.refuse("water.trial_batch.mix",
               all.said(t.mix) +
                   " gave so little salt that even the undiluted mix would not reach practical "
                   "salinity " +
                   all.said(*s),
               "water.trial_batch.reached");
  }
}

}  // namespace detail

TANKWRIGHT_INLINE void hold_water(const build& build, book& all) {
  if (!build.water) return;
  const water_section& w = *build.water;
  hold_salinity("water.target", w.target, all);
  if (w.older_tank) hold_reading("water.older_tank", *w.older_tank, all);
  if (w.now) hold_reading("water.now", *w.now, all);
  detail::hold_liquid(w, all);
  if (w.trial_batch) detail::hold_trial(w, all);
  if (w.new_water && half_width(w.new_water, usual::metered) >= w.new_water.si()) {
    all.refuse("water.new_water", "has a doubt that leaves no water");
  }
  if (w.weighed && w.weighed->full) {
    all.at_most("water.weighed.empty", w.weighed->empty, {*w.weighed->full, "water.weighed.full"},
                "is more than the full flask,");
  }
  if (w.ammonia.given() && !w.ph.ph.given()) {
    all.refuse("water.ph", "is missing: ammonia is given, and how much of it is free depends on the pH");
  }
}

}  // namespace tankwright::plan::rules
