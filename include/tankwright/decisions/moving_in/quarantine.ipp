// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/cases/filter_balance.hpp>
#include <tankwright/decisions/moving_in/quarantine.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/life/water_changes.hpp>
#include <tankwright/water/salt_mix.hpp>

namespace tankwright::decisions {

namespace detail {

/// The tank at one end: of what the food becomes, and of what its surfaces take at the level to stay below.
[[nodiscard]] inline life::changed_tank_course quarantine_at(const plan::quarantine_inputs& q, end_of_load end,
                                                             mass_flow takes) {
  const food_end food = food_at(q.filter, end);
  life::changed_tank tank{.net = q.net,
                          .load = life::nitrogen_load::from_nitrogen(mass_flow{}),
                          .part = q.part,
                          .every = q.every,
                          .lasts = q.lasts};
  mass_flow load{};
  for (const life::regular_meal& meal : food.meals) {
    load += meal.mean->as_nitrogen();
    if (meal.every > life::meal_excreted_in) tank.largest_meal += mass{meal.mean->as_nitrogen() * meal.every};
  }
  tank.load = life::nitrogen_load::from_nitrogen(load);
  tank.removal = rate::from_value(takes.value() / (q.filter.stay_below.as_nitrogen().value() * q.net.value()));
  return life::ammonia_with_changes(tank);
}

/// Mix for the first fill and for the changes, where the plan says what water is made.
inline void add_mix(finding& f, const situation& s, volume in_all) {
  if (!s.plan().water) return;
  const water_case& c = s.water();
  const auto mix = water::salt_for_finished_volume({.volume = in_all,
                                                    .target = c.target().central,
                                                    .temperature = c.in.temperature,
                                                    .mix_yield = c.mix_yield().central});
  f.detail("mix", "mix for all of it", mix.mix);
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_quarantine(const situation& s, answers& out) {
  if (!s.plan().life || !s.plan().life->quarantine) return;
  finding& f = out.ask(quarantine);
  using ends = estimate<life::nitrogen_load>;
  const plan::quarantine_inputs& q = *s.life().in.quarantine;
  const water_basis& water = s.basis();
  const water::total_ammonia level = q.filter.stay_below;
  const bool filtered = !q.filter.surfaces.empty();
  estimate<mass_flow> takes = mass_flow{};
  if (filtered) {
    takes = balance_of(q.filter, {.when = filter_at::today,
                                  .net = q.net,
                                  .temperature = water.temperature,
                                  .level = {level, level, level, {}}})
                .takes;
  }
  const auto least = detail::quarantine_at(q, &ends::low, takes.high);
  const auto middle = detail::quarantine_at(q, &ends::central, takes.central);
  const auto most = detail::quarantine_at(q, &ends::high, takes.low);
  constexpr std::string_view from_food = "feed, species and digestion differ by about 25 %";
  const std::string_view why = filtered ? film_and_food : from_food;
  const estimate<mass_concentration> highest{least.highest.as_nitrogen(), middle.highest.as_nitrogen(),
                                             most.highest.as_nitrogen(), why};
  f.answer("highest", "highest ammonia before a change, as nitrogen", highest);
  f.limit("limit", "stay below, as nitrogen", level.as_nitrogen());
  const auto under = [](mass_concentration limit) { return [limit](mass_concentration c) { return limit - c; }; };
  f.margin("left", "below that by", map_falling(highest, under(level.as_nitrogen())), mass_concentration{});
  if (q.ph) {
    const auto part = water::free_ammonia_fraction(*q.ph, water.salinity, water.temperature);
    const auto as_free = [](mass_concentration n, proportion free) {
      return water::free_ammonia::from_nitrogen(n * free.value()).as_ammonia();
    };
    const estimate<mass_concentration> free{as_free(highest.low, part.low), as_free(highest.central, part.central),
                                            as_free(highest.high, part.high),
                                            filtered ? "food, films, dissociation constant and pH probe" : why};
    f.answer("free", "of it free, as NH3", free);
    f.limit("free_limit", "stay below, as NH3", q.filter.free_below.as_ammonia());
    f.margin("free_left", "below that by", map_falling(free, under(q.filter.free_below.as_ammonia())),
             mass_concentration{});
    f.source(water::clegg_whitfield_1995);
  } else {
    f.next("measure the pH of the quarantine tank, and say on which scale");
  }
  f.detail("changes", "changes in all", middle.changes);
  f.detail("new_water", "water for the first fill and all changes", q.net + middle.changed);
  detail::add_mix(f, s, q.net + middle.changed);
  f.note = filtered
               ? "Medicines, and copper above all, may kill the film of the sponge: count on the changes alone then."
               : "Counted without a filter: a sponge that has sat in the older sump for a month takes most of it.";
  if (f.verdict == verdict::does_not_hold) {
    f.happens = "The ammonia comes to " + said(s, highest.central) +
                " of nitrogen before a change: change more, change sooner, feed less, or move a seeded sponge.";
  }
  f.source(life::timmons_ebeling_2007);
  f.next("measure the ammonia before each change, not after it");
}

}  // namespace tankwright::decisions
