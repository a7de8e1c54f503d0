// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/evaporated.hpp>
#include <tankwright/decisions/closing/top_off_fails.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/water/drift.hpp>

namespace tankwright::decisions {

namespace detail {

/// The chamber whose level falls: as given, otherwise the last of the sump.
struct falling_chamber {
  area surface;
  length running;
  length lowest;
};

[[nodiscard]] inline std::optional<falling_chamber> chamber_of(const situation& s,
                                                               const plan::pump_chamber_inputs& given) {
  if (s.plan().plumbing) {
    const auto& sump = s.plumbing().in.sump;
    const auto& last = sump.chambers.back();
    return falling_chamber{last.horizontal_area.at(sump.running_level) - last.gear, sump.running_level, given.lowest};
  }
  if (!given.surface || !given.running) return std::nullopt;
  return falling_chamber{*given.surface, *given.running, given.lowest};
}

/// Until the water is too salty, without anything added.
[[nodiscard]] inline estimate<duration> until_too_salty(const room_case& c, const estimate<flow_rate>& rate) {
  const auto time = [&](volume v, flow_rate q) {
    return water::time_to_salinity({.volume = v,
                                    .salinity = c.water.salinity,
                                    .temperature = c.water.temperature,
                                    .evaporation = q,
                                    .top_off = flow_rate{}},
                                   c.in.top_off->highest, extrapolate);
  };
  const estimate<volume>& water = *c.all_water;
  return {time(water.low, rate.high), time(water.central, rate.central), time(water.high, rate.low),
          "the band of the evaporation, and how well the volume is known"};
}

/// The salinity when somebody looks again; nothing where the tank would be dry by then.
inline void add_salinity_then(finding& f, const room_case& c, const estimate<flow_rate>& rate) {
  const plan::top_off_inputs& t = *c.in.top_off;
  if (rate.high * t.unattended >= c.all_water->low) {
    say(f, "The tank would be dry before anybody looks.");
    return;
  }
  const auto salinity = [&](volume v, flow_rate q) {
    return water::drift({.volume = v,
                         .salinity = c.water.salinity,
                         .temperature = c.water.temperature,
                         .evaporation = q,
                         .top_off = flow_rate{}},
                        t.unattended, extrapolate)
        .salinity;
  };
  f.detail(
      "salinity", "practical salinity by then",
      estimate<practical_salinity>{salinity(c.all_water->high, rate.low), salinity(c.all_water->central, rate.central),
                                   salinity(c.all_water->low, rate.high), rate.reason});
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_top_off_fails(const situation& s, answers& out) {
  if (!s.plan().room || !s.plan().room->top_off) return;
  const room_case& c = s.room();
  if (!c.gives_any()) return;  // room.reservoir says what is missing
  const estimate<mass_flow> lost = detail::most_evaporation(c);
  if (!(lost.low.value() > 0.0)) return;
  finding& f = out.ask(top_off_fails);
  if (!c.all_water) {
    f.unknown(detail::needs_water);
    return;
  }
  const plan::top_off_inputs& t = *c.in.top_off;
  const estimate<flow_rate> rate = room::top_off_rate(lost, t.fresh_water);
  f.limit("unattended", "nobody looks for", t.unattended);
  const auto left = [&](const estimate<duration>& until) {
    return map_rising(until, [&](duration d) { return d - t.unattended; });
  };
  std::string air;
  if (const auto chamber = t.chamber ? detail::chamber_of(s, *t.chamber) : std::nullopt) {
    const auto level = room::return_level({.surface = chamber->surface,
                                           .top_off = rate,
                                           .running_level = chamber->running,
                                           .lowest_level = chamber->lowest});
    f.answer("until_air", "until the pump draws air", level.until_lowest);
    f.margin("air_left", "longer than nobody looks by", left(level.until_lowest), days(0.0), "pump");
    f.detail("fall", "return chamber falls by", level.fall);
    if (!(level.until_lowest.central > t.unattended)) {
      air = "The return pump draws air after " + said(s, level.until_lowest.central) + ".";
    }
  } else {
    f.next("give the return chamber, its running level and the lowest at which the pump draws no air");
  }
  const auto salty = detail::until_too_salty(c, rate);
  f.answer("until_salty", "until it is saltier than the animals stand", salty);
  f.limit("highest", "highest that the animals stand", t.highest);
  f.margin("salt_left", "longer than nobody looks by", left(salty), days(0.0), "salinity");
  detail::add_salinity_then(f, c, rate);
  f.happens = air;
  if (!(salty.central > t.unattended)) {
    f.happens += (air.empty() ? "The water" : " The water") + std::string{" passes the highest salinity after "} +
                 said(s, salty.central) + ".";
  }
  detail::add_evaporation_sources(f);
  f.source(water::feistel_2008);
}

}  // namespace tankwright::decisions
