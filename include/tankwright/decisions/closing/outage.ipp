// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/evaporated.hpp>
#include <tankwright/decisions/closing/outage.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/room/heat_store.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE room::uncontrolled_tank outage_of(const room_case& c) {
  room::uncontrolled_tank o{.tank = heat_of(c, c.solved(season::winter), powered::none),
                            .heat_capacity = heat_store_of(c).central,
                            .room = c.in.heating->outage->room};
  for (room::wet_surface& s : o.tank.surfaces) s.agitation = room::still_surface;
  return o;
}

namespace detail {

/// The coldest that the water gets, at each end of the band.
[[nodiscard]] inline estimate<temperature> coldest_of(const room::temperature_course& course) {
  estimate<temperature> cold = course.points.front().water;
  for (const room::temperature_point& p : course.points) {
    const auto here = p.water;
    cold = {std::min(cold.low, here.low), std::min(cold.central, here.central), std::min(cold.high, here.high),
            here.reason};
  }
  return cold;
}

/// When the limit is reached.
inline void add_time_to_limit(finding& f, const room_case& c, const room::uncontrolled_tank& central,
                              temperature lowest, range_policy policy) {
  const auto [soonest, expected, latest, caution] =
      room::time_to_temperature(central, heat_store_of(c), lowest, days(7.0), policy);
  if (soonest && expected && latest) {
    const estimate<duration> after{*soonest, *expected, *latest,
                                   "the band of the evaporation, and how well the volume is known"};
    f.detail("reached", "the limit is reached after", after);
  } else if (soonest) {
    f.detail("reached_soonest", "the limit is reached after at least", *soonest);
  } else {
    f.note = "The limit is not reached within a week.";
  }
}

}  // namespace detail

TANKWRIGHT_INLINE void answer_heat_outage(const situation& s, answers& out) {
  if (!s.plan().room || !s.plan().room->heating || !s.plan().room->heating->outage) return;
  finding& f = out.ask(heat_outage);
  const room_case& c = s.room();
  if (const char* missing = detail::missing_for_heat(c)) {
    f.unknown(missing);
    return;
  }
  const plan::heat_outage_inputs& cut = *c.in.heating->outage;
  const room::uncontrolled_tank central = outage_of(c);
  const range_policy policy = policy_for(central.tank.air);
  const room::temperature_course course =
      room::temperature_course_of(central, cut.lasts, cut.lasts.get() / 24.0, policy);
  const auto cold = detail::coldest_of(course);
  const auto left =
      map_rising(cold, [&](temperature t) { return kelvin_steps(in_kelvins(t) - in_kelvins(cut.lowest)); });
  f.answer("coldest", "coldest water of the power cut", cold);
  f.limit("lowest", "lowest that the animals stand", cut.lowest.get());
  f.margin("left", "left", left, kelvin_steps(1.0));
  f.detail("lasts", "power cut", cut.lasts.get());
  if (f.verdict == verdict::does_not_hold) {
    f.happens = "The water falls to " + said(s, cold.central) + ".";
  }
  detail::add_time_to_limit(f, c, central, cut.lowest, policy);
  if (course.settles_at) {
    f.detail("settles", "in the end it settles at", *course.settles_at);
  }
  detail::add_heat_sources(f);
  f.source(room::en_iso_10456);
  if (!cut.room) f.next("say how the room cools without power: here it stays as warm as it is");
}

}  // namespace tankwright::decisions
