// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/salting/moved_water.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/water/blend.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_moved_water(const situation& s, answers& out) {
  if (!s.plan().water || !s.plan().water->moved) return;
  finding& f = out.ask(moved_water);
  const water_case& c = s.water();
  const plan::moved_water& moved = *s.plan().water->moved;
  const auto all = water_to_make(c, s.state());
  if (!all) {
    const std::string& why = s.state().why_no_display;
    f.unknown(why.empty() ? "give the volume of all the water, or the display so that it can be computed" : why);
    return;
  }
  const volume comes = *moved.amount;
  const auto rest = map_rising(*all, [&](volume v) { return v - comes; });
  f.answer("new", "new water still to be made", rest);
  if (!(rest.central.value() >= 0.0)) {
    f.note = "More comes over than the system holds: the rest serves for quarantine or the first water change.";
    return;
  }
  const practical_salinity target = c.target().central;
  const practical_salinity old = moved.salinity ? *moved.salinity : target;
  // New water as it was measured, or as it is to be made.
  const estimate<practical_salinity> fresh =
      c.in.now ? c.now() : estimate<practical_salinity>{target, target, target, "as it is to be made"};
  const auto together = [&](practical_salinity made, volume in_all) {
    const volume new_water = volume::from_value(std::max(0.0, (in_all - comes).value()));
    const water::portion both[] = {
        {.label = "new water", .volume = new_water, .salinity = made, .temperature = c.in.temperature},
        {.label = "old water", .volume = comes, .salinity = old, .temperature = c.in.temperature}};
    return water::blend(both).salinity;
  };
  const estimate<practical_salinity> blend{together(fresh.low, all->high), together(fresh.central, all->central),
                                           together(fresh.high, all->high), "the band of the reading"};
  const auto saved = water::salt_for_finished_volume(
      {.volume = comes, .target = target, .temperature = c.in.temperature, .mix_yield = c.mix_yield().central});
  f.detail("saved", "mix that it saves", saved.mix);
  f.answer("blend", "salinity of both together", blend);
  f.detail("old", "salinity of the old water", old);
  const double near = c.in.match_within.value();
  const auto apart = [&](practical_salinity at) { return std::fabs(at.value() - target.value()); };
  const double most = std::max(apart(blend.low), apart(blend.high));
  f.limit("near_enough", "may differ by", c.in.match_within);
  f.margin(
      "left", "nearer to what is wanted than that by",
      estimate<practical_salinity>{practical_salinity{near - most}, practical_salinity{near - apart(blend.central)},
                                   practical_salinity{near}, blend.reason},
      practical_salinity{0.0});
  f.note =
      "Old water carries little of the filter, which sits on rock and sand; it carries nitrate, phosphate and "
      "parasites. Take it from the middle of a quiet tank.";
  f.source(water::feistel_2008).source(water::millero_2008);
  if (f.verdict == verdict::does_not_hold) f.happens = "The two waters together miss the salinity that is wanted.";
}

}  // namespace tankwright::decisions
