// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/bottom/floor_load.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/text/quantity.hpp>

namespace tankwright::decisions {

namespace detail {

/// Water and contents of the display, and the water of a sump that stands on the same floor.
[[nodiscard]] inline estimate<mass> mass_above(const situation& s, const plan::floor_inputs& floor) {
  const vessel_case& c = s.vessel();
  estimate<mass> all = c.contents().on_the_floor;
  if (const auto& water = s.state().sump_water; floor.sump_below && water) {
    const auto sump = map_rising(*water, [&](volume v) { return v * c.density(); });
    all = {all.low + sump.low, all.central + sump.central, all.high + sump.high, all.reason};
  }
  return map_rising(all, [&](mass m) { return m + floor.tank_and_stand; });
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_floor_load(const situation& s, answers& out) {
  if (!s.plan().vessel) return;
  finding& f = out.ask(floor_load);
  const vessel_case& c = s.vessel();
  if (!c.in.floor) {
    f.answer("contents", "water and what is in it", c.contents().on_the_floor);
    f.unknown("give the floor: footprint of the stand, mass of tank and stand, the load it is built for");
    return;
  }
  const plan::floor_inputs& floor = *c.in.floor;
  const auto load_of = [&](mass total) {
    return vessel::load_on_floor({.total = total,
                                  .footprint = floor.footprint,
                                  .bearing = floor.bearing,
                                  .code = floor.code,
                                  .label = c.in.display.label()});
  };
  const auto total = detail::mass_above(s, floor);
  const auto central = load_of(total.central);
  const auto spread = map_rising(total, [&](mass m) { return load_of(m).spread; });
  f.answer("load", "load under the footprint", spread);
  f.limit("code", "live load of the code: " + std::string{floor.code.name}, floor.code.value);
  f.margin("left", "load to spare", map_falling(spread, [&](pressure p) { return floor.code.value - p; }),
           floor.code.value * least_strength_left.value());
  f.detail("times_code", "times the code's live load", central.times_code);
  f.detail("mass", "all of it weighs", total);
  if (floor.bearing) f.detail("under_feet", "load under the feet", central.under_feet);
  f.note = "Live load after: " + std::string{floor.code.source} + ".";
  if (floor.sump_below && !s.state().sump_water) {
    f.note += " The sump's water is not in it.";
    f.next("give the sump: its water stands on the same floor");
  }
  if (f.verdict == verdict::does_not_hold) {
    f.happens = "The floor carries " + text::of(central.times_code, text::significant(3)) +
                " times the load that it is built for, and may give way.";
  }
  if (f.verdict != verdict::holds) {
    f.next("find span, direction and bearing of the joists, or the load the slab is built for");
  }
}

}  // namespace tankwright::decisions
