// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/closing/evaporated.hpp>
#include <tankwright/decisions/closing/outage.hpp>
#include <tankwright/decisions/closing/outage_rate.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/life/levels.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_outage_rate(const situation& s, answers& out) {
  if (!s.plan().room || !s.plan().room->heating || !s.plan().room->heating->outage) return;
  finding& f = out.ask(outage_rate);
  const room_case& c = s.room();
  if (const char* missing = detail::missing_for_heat(c)) {
    f.unknown(missing);
    return;
  }
  const room::uncontrolled_tank still = outage_of(c);
  const range_policy policy = policy_for(still.tank.air);
  const duration lasts = c.in.heating->outage->lasts;
  const auto add = [&](duration window, const life::starting_value<temperature_difference>& pace,
                       std::string_view changes, std::string_view paced, std::string_view left, const char* place) {
    const auto change = room::largest_change(still, lasts, window, policy).largest;
    const auto size = [](temperature_difference d) { return kelvin_steps(std::fabs(in_kelvin_steps(d))); };
    const auto a = size(change.low), b = size(change.high);
    const estimate<temperature_difference> fast{std::min(a, b), size(change.central), std::max(a, b), change.reason};
    f.answer(changes, std::string{"changes at most, within "} + place, fast, place);
    f.limit(paced, std::string{"recommended at most, within "} + place, pace.level, place);
    f.margin(left, "slower than that by",
             map_falling(fast,
                         [&](temperature_difference d) {
                           return kelvin_steps(in_kelvin_steps(pace.level) - in_kelvin_steps(d));
                         }),
             kelvin_steps(0.0), place);
  };
  add(hours(1.0), life::temperature_change_in_an_hour, "in_an_hour", "pace_of_an_hour", "left_of_an_hour", "an hour");
  add(days(1.0), life::temperature_change_in_a_day, "in_a_day", "pace_of_a_day", "left_of_a_day", "a day");
  if (f.verdict == verdict::does_not_hold) {
    const number& m = *f.margin();
    f.happens = "Within " + m.place + " the water changes by " + said(s, kelvin_steps(-m.value.central)) +
                " more than is recommended.";
  }
  detail::add_heat_sources(f);
  f.source(life::temperature_change_in_a_day.source);
  f.next("close the top and wrap the tank when the power fails: it is the surface and the walls that cool it");
}

}  // namespace tankwright::decisions
