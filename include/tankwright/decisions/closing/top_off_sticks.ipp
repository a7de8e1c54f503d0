// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/evaporated.hpp>
#include <tankwright/decisions/closing/top_off_sticks.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

namespace detail {

/// More than any free volume: salinity alone decides.
inline constexpr volume no_rim = cubic_metres(1e9);

/// A tenth of the reservoir is the smallest useful room: it may be filled a little over.
[[nodiscard]] inline volume useful_room(volume reservoir) { return 0.1 * reservoir; }

}  // namespace detail

TANKWRIGHT_INLINE void answer_top_off_sticks(const situation& s, answers& out) {
  if (!s.plan().room || !s.plan().room->top_off) return;
  finding& f = out.ask(top_off_sticks);
  const room_case& c = s.room();
  if (!c.all_water) {
    f.unknown(detail::needs_water);
    return;
  }
  const plan::top_off_inputs& t = *c.in.top_off;
  const volume reservoir = t.reservoir;
  const auto request = [&](volume v, volume free_volume) {
    return room::reservoir_request{
        .water = c.water, .volume = v, .lowest = t.lowest, .free_volume = free_volume, .fresh_water = t.fresh_water};
  };
  const volume holds = t.free_volume.value_or(detail::no_rim);
  f.source(water::feistel_2008);
  f.detail("reservoir", "reservoir", reservoir);
  f.answer("salinity", "practical salinity when all has run in", map_rising(*c.all_water, [&](volume v) {
             return room::stuck_valve(request(v, holds), reservoir).salinity;
           }));
  f.limit("lowest", "lowest that the animals stand", t.lowest);
  if (c.water.salinity.get() < t.lowest) {
    f.note = "The water is below that salinity already.";
    f.margin("salt_left", "left before it is too fresh", -1.0 * reservoir, detail::useful_room(reservoir), "salinity");
  } else {
    const auto largest =
        map_rising(*c.all_water, [&](volume v) { return room::largest_reservoir(request(v, detail::no_rim)).largest; });
    f.detail("largest_by_salt", "largest reservoir that leaves it salty enough", largest);
    f.margin("salt_left", "left before it is too fresh", map_rising(largest, [&](volume v) { return v - reservoir; }),
             detail::useful_room(reservoir), "salinity");
  }
  if (!t.free_volume) {
    const verdict before = f.verdict;
    f.unknown("measure the free volume up to the rim of the chamber that the top-off runs into");
    f.verdict = worse_of(before, f.verdict);
    return;
  }
  f.limit("free", "room up to the rim", *t.free_volume);
  f.margin("rim_left", "left below the rim", *t.free_volume - reservoir, detail::useful_room(reservoir), "rim");
  const volume spilt = room::stuck_valve(request(c.all_water->central, holds), reservoir).overflow;
  if (spilt.value() > 0.0) {
    f.answer("spilt", "of it on the floor", spilt);
    f.happens = said(s, spilt) + " run onto the floor.";
  } else if (f.verdict == verdict::does_not_hold) {
    f.happens = "The water gets fresher than the animals stand.";
  }
}

}  // namespace tankwright::decisions
