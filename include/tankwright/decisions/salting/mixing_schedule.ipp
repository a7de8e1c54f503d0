// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/salting/mixing_schedule.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

namespace detail {

/// The new water beside what comes over from the older tank; none where nothing tells it.
[[nodiscard]] inline std::optional<volume> new_water_to_make(const situation& s) {
  const auto all = water_to_make(s.water(), s.state());
  if (!all) return std::nullopt;
  const auto& moved = s.plan().water->moved;
  const double over = moved ? moved->amount.get().value() : 0.0;
  return volume::from_value(std::max(0.0, all->central.value() - over));
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_mixing_schedule(const situation& s, answers& out) {
  if (!s.plan().water || !s.plan().water->schedule) return;
  finding& f = out.ask(mixing_schedule);
  const plan::mixing_schedule& plan = *s.plan().water->schedule;
  const water_case& c = s.water();
  const auto make = detail::new_water_to_make(s);
  if (!make) {
    const std::string& why = s.state().why_no_display;
    f.unknown(why.empty() ? "give the volume of new water, or the display so that it can be computed" : why);
    return;
  }
  if (make->value() == 0.0) {
    f.note = "The water of the older tank fills all of it: nothing is to be mixed.";
    return;
  }
  const double batches = std::ceil(*make / *plan.vat - 1e-9);
  const auto each = water::salt_for_finished_volume({.volume = *make / batches,
                                                     .target = c.target().central,
                                                     .temperature = c.in.temperature,
                                                     .mix_yield = c.mix_yield().central});
  const double fresh = batches * each.fresh_water.value();
  const double to_purify = std::max(0.0, fresh - plan.stored.get().value());
  const duration purify = duration::from_value(to_purify / plan.unit_rate.get().value());
  const duration dissolve = batches * plan.dissolve.get();
  // Where purified water can be stored while a batch dissolves, only the slower of the two counts, and the other once.
  const duration apart = purify + dissolve;
  const duration together = std::max(purify + *plan.dissolve, purify / batches + dissolve);
  const estimate<duration> ready{together, apart, apart,
                                 "whether purified water can be stored while a batch dissolves"};
  f.answer("ready", "until all of it is ready", ready);
  f.answer("batches", "batches", batches);
  f.detail("makes", "each makes", *make / batches);
  f.detail("mix", "mix for each", each.mix);
  f.detail("fresh", "purified water for each", each.fresh_water);
  f.detail("purify", "hours of the unit", purify);
  if (plan.recovery) {
    const volume fed = volume::from_value(to_purify / plan.recovery.get().value());
    f.detail("fed", "water that the unit is fed", fed);
    f.detail("waste", "of it down the drain", fed - volume::from_value(to_purify));
  }
  if (c.in.hydrometer) {
    const double reads = water::hydrometer_reading(c.target().central, c.in.temperature, *c.in.hydrometer);
    f.detail("reads", "each should read on the hydrometer", amount{"specific_gravity", reads, reads, reads});
  }
  if (plan.ready_in) {
    f.limit("wanted", "wanted in", *plan.ready_in);
    f.margin("left", "earlier than that by", map_falling(ready, [&](duration t) { return *plan.ready_in - t; }),
             duration{});
    if (f.verdict == verdict::does_not_hold) {
      f.happens =
          "It takes " + said(s, apart) + ", longer than there is: a larger vat, a faster unit, or stored water.";
    }
  }
  f.note =
      "Pour salt into water, never water onto salt; measure each batch when it is clear and at temperature, and "
      "put the next one right by what the last one read.";
  f.source(water::feistel_2008);
  f.next("time the unit with a bucket at the temperature of its supply: cold water halves it");
}

}  // namespace tankwright::decisions
