// SPDX-License-Identifier: BSL-1.0
/// @file
/// The reservoir of fresh water: how long it lasts, and what happens when its valve fails shut or open.
#pragma once

#include <tankwright/commissioning/detail/room_case.hpp>
#include <tankwright/room/top_off.hpp>
#include <tankwright/water/drift.hpp>

namespace tankwright::commissioning::detail::closing {

/// The season in which more water evaporates.
[[nodiscard]] inline estimate<mass_flow> most_evaporation(const room_case& c) noexcept {
  estimate<mass_flow> most = evaporation_of(c.seasons.front().humidity);
  const estimate<mass_flow> other = evaporation_of(c.seasons.back().humidity);
  return other.high > most.high ? other : most;
}

[[nodiscard]] inline finding reservoir_finding(const room_case& c, const estimate<flow_rate>& rate) {
  finding f = asked(reservoir_question);
  const top_off_plan& plan = *c.plan.top_off;
  const estimate<duration> lasts = room::reservoir_lasts(plan.reservoir, rate);
  const auto left = map_rising(lasts, [&](duration d) { return d - plan.unattended; });
  f.says = verdict_of_margin(left, days(0.0));
  f.numbers =
      entries(entry{"it lasts", amount_of(lasts)}, entry{"nobody looks for", amount_of(plan.unattended), role::limit},
              entry{"left", amount_of(left), role::margin}, entry{"top-off", amount_of(rate), role::detail});
  f.note = "Plan on the low end: it belongs to the high evaporation.";
  f.sources = evaporation_sources();
  f.before_acting = room::top_off_caution.text;
  if (f.says != verdict::holds) f.measure_next.push_back("read the reservoir for a week: that narrows the band");
  return f;
}

/// The valve stays shut, or the reservoir is empty.
[[nodiscard]] inline finding dry_finding(const room_case& c, const estimate<flow_rate>& rate) {
  finding f = asked(dry_question);
  const top_off_plan& plan = *c.plan.top_off;
  f.numbers.push_back({"nobody looks for", amount_of(plan.unattended), role::limit});
  if (plan.chamber) {
    const auto level = room::return_level({.surface = plan.chamber->surface,
                                           .top_off = rate,
                                           .running_level = plan.chamber->running,
                                           .lowest_level = plan.chamber->lowest});
    const auto left = map_rising(level.until_lowest, [&](duration d) { return d - plan.unattended; });
    f.says = verdict_of_margin(left, days(0.0));
    f.numbers.push_back({"until the pump draws air", amount_of(level.until_lowest)});
    f.numbers.push_back({"left", amount_of(left), role::margin});
    f.numbers.push_back({"return chamber falls by", amount_of(level.fall), role::detail});
  } else {
    f.measure_next.push_back(
        "give the return chamber, its running level and the lowest at which the pump draws no air");
  }
  if (rate.high * plan.unattended >= c.all_water->low) {
    f.says = verdict::does_not_hold;
    f.note = "The tank would be dry before anybody looks.";
  } else {
    const auto salinity = [&](volume v, flow_rate q) {
      return water::drift({.volume = v,
                           .salinity = c.water.salinity,
                           .temperature = c.water.temperature,
                           .evaporation = q,
                           .top_off = flow_rate{}},
                          plan.unattended, extrapolate)
          .salinity;
    };
    const estimate<practical_salinity> then{salinity(c.all_water->high, rate.low),
                                            salinity(c.all_water->central, rate.central),
                                            salinity(c.all_water->low, rate.high), rate.reason};
    const auto below =
        map_falling(then, [&](practical_salinity s) { return practical_salinity{plan.highest.value() - s.value()}; });
    f.says = graver(f.says, verdict_of_margin(below, practical_salinity{0.0}));
    f.numbers.push_back({"practical salinity by then", amount_of(then)});
    f.numbers.push_back({"highest that the animals stand", amount_of(plan.highest), role::limit});
    f.numbers.push_back({"salinity below that", amount_of(below), role::margin});
  }
  f.sources = evaporation_sources();
  f.sources.push_back(water::feistel_2008);
  f.before_acting = room::starving_pump_caution.text;
  return f;
}

/// The valve stays open, and all of the reservoir runs in.
[[nodiscard]] inline finding stuck_finding(const room_case& c) {
  finding f = asked(stuck_question);
  const top_off_plan& plan = *c.plan.top_off;
  f.sources = {water::feistel_2008};
  f.before_acting = room::top_off_caution.text;
  if (!plan.free_volume) {
    f.says = verdict::not_enough_known;
    f.measure_next.push_back("measure the free volume up to the rim of the chamber that the top-off runs into");
    return f;
  }
  const auto request = [&](volume v) {
    return room::reservoir_request{.water = c.water,
                                   .volume = v,
                                   .lowest = plan.lowest,
                                   .free_volume = *plan.free_volume,
                                   .fresh_water = plan.fresh_water};
  };
  const room::stuck_valve_result stuck = room::stuck_valve(request(c.all_water->central), plan.reservoir);
  const auto mixed =
      map_rising(*c.all_water, [&](volume v) { return room::stuck_valve(request(v), plan.reservoir).salinity; });
  f.numbers = entries(entry{"practical salinity when all has run in", amount_of(mixed)},
                      entry{"lowest that the animals stand", amount_of(plan.lowest), role::limit});
  if (stuck.overflow.value() > 0.0) f.numbers.push_back({"of it on the floor", amount_of(stuck.overflow)});
  if (c.water.salinity.get() < plan.lowest) {
    f.says = verdict::does_not_hold;
    f.note = "The water is below that salinity already.";
    return f;
  }
  const auto largest = map_rising(*c.all_water, [&](volume v) { return room::largest_reservoir(request(v)).largest; });
  const auto left = map_rising(largest, [&](volume v) { return v - plan.reservoir.get(); });
  f.says = verdict_of_margin(left, 0.1 * plan.reservoir.get());
  f.numbers.push_back({"largest reservoir without harm", amount_of(largest), role::limit});
  f.numbers.push_back({"left", amount_of(left), role::margin});
  f.numbers.push_back({"reservoir", amount_of(plan.reservoir.get()), role::detail});
  f.note.append("What decides is the ")
      .append(room::largest_reservoir(request(c.all_water->central)).governed_by)
      .append(".");
  return f;
}

}  // namespace tankwright::commissioning::detail::closing
