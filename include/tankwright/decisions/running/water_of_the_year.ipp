// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/evaporated.hpp>
#include <tankwright/decisions/running/water_of_the_year.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/water/salt_mix.hpp>

namespace tankwright::decisions {

namespace detail {

/// What evaporates in a year: the mean of the seasons that are given.
[[nodiscard]] inline std::optional<estimate<volume>> top_off_of_the_year(const room_case& c, finding& f) {
  std::optional<estimate<volume>> sum;
  double seasons = 0.0;
  c.for_each_season(f, [&](const solved_season& one) {
    const auto year = map_rising(evaporation_of(one.humidity), [](mass_flow e) {
      return litres(e.value() > 0.0 ? in_kilograms_per_day(e) * 365.25 : 0.0);  // a kilogram is a litre
    });
    sum = sum ? *sum + year : year;
    seasons += 1.0;
  });
  if (!sum) return std::nullopt;
  return map_rising(*sum, [&](volume v) { return v / seasons; });
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_water_of_the_year(const situation& s, answers& out) {
  if (!s.plan().room || !s.plan().room->running) return;
  const plan::running_year& r = *s.plan().room->running;
  if (!r.water_change && !r.price_of_water) return;
  finding& f = out.ask(water_of_the_year);
  const room_case& c = s.room();
  estimate<volume> purified = volume{};
  if (r.water_change) {
    if (!c.all_water) {
      f.unknown(detail::needs_water);
      return;
    }
    const double times = days(365.25) / *r.every * r.water_change.get().value();
    const auto changed = map_rising(*c.all_water, [&](volume v) { return v * times; });
    const auto per_litre = water::salt_for_finished_volume(
        {.volume = litres(1.0),
         .target = c.water.salinity,
         .temperature = c.water.temperature,
         .mix_yield = s.plan().water ? s.water().mix_yield().central : water::typical_mix_yield.central});
    const auto mix = map_rising(changed, [&](volume v) { return per_litre.mix * in_litres(v); });
    f.answer("changed", "water changed in a year", changed);
    f.answer("mix", "mix for it", mix);
    purified = map_rising(changed, [&](volume v) { return per_litre.fresh_water * in_litres(v); });
    if (r.price_of_salt) {
      f.answer("salt_cost", "which costs, in your currency",
               map_rising(mix, [&](mass m) { return in_kilograms(m) * *r.price_of_salt; }));
    }
  }
  if (const auto top_off = detail::top_off_of_the_year(c, f)) {
    f.answer("top_off", "top-off in a year", *top_off);
    purified = purified + *top_off;
  } else {
    f.next("describe the air of winter and summer: top-off is missing here");
  }
  f.answer("purified", "purified water in a year", purified);
  const double recovery = r.recovery.value_or(fraction(1.0)).value();
  const auto fed = map_rising(purified, [&](volume v) { return v / recovery; });
  if (r.recovery) f.detail("fed", "water from the tap for it", fed);
  if (r.price_of_water) {
    f.answer("water_cost", "the water costs, in your currency",
             map_rising(fed, [&](volume v) { return v.value() * *r.price_of_water; }));
  }
}

}  // namespace tankwright::decisions
