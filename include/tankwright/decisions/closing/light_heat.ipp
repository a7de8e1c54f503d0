// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/evaporated.hpp>
#include <tankwright/decisions/closing/light_heat.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/life/acclimation.hpp>
#include <tankwright/life/levels.hpp>

namespace tankwright::decisions {

namespace detail {

/// How far the water may swing from day to night: common practice, no source.
inline constexpr temperature_difference even_day = kelvin_steps(1.0);

}  // namespace detail

TANKWRIGHT_INLINE void answer_light_heat(const situation& s, answers& out) {
  if (!s.plan().room) return;
  const auto& all = s.plan().room->appliance;
  bool asked = false;
  for (const plan::appliance& a : all) asked = asked || a.over_water;
  if (!asked) return;
  finding& f = out.ask(light_heat);
  const room_case& c = s.room();
  power mean{}, everything{};
  double swings = 0.0;  // W: what is stored by day and given back by night
  for (std::size_t i = 0; i < all.size(); ++i) {
    const plan::appliance_inputs& a = c.in.appliances[i];
    const power on = a.electricity.get() * a.into_water.value(), average = on * a.on.value();
    everything += average;
    if (!all[i].over_water) continue;
    mean += average;
    swings += average.value() * (1.0 - a.on.value());
    f.detail("each", "gives the water while it is on", on, a.label);
  }
  f.answer("mean", "heat into the water by lights, in the mean of the day", mean);
  if (everything.value() > 0.0) f.detail("share", "part of what all devices bring", fraction(mean / everything));
  if (!c.all_water) {
    f.unknown(detail::needs_water);
    return;
  }
  const auto swing = map_falling(heat_store_of(c), [&](heat_capacity store) {
    return temperature_difference::from_value(swings * 86400.0 / store.value());
  });
  f.answer("swing", "the water swings by them from night to day, at the most", swing);
  f.limit("even", "should swing by no more than", detail::even_day);
  f.margin("left", "less than that by",
           map_falling(swing, [](temperature_difference d) { return temperature_difference{detail::even_day - d}; }),
           temperature_difference{});
  if (f.verdict == verdict::does_not_hold) {
    f.happens =
        "By the evening the water is warmer than in the morning by more than is good: hang the lights higher, dim "
        "them, or let air pass between.";
  }
}

}  // namespace tankwright::decisions
