// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/moving_in/alkalinity.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_alkalinity(const situation& s, answers& out) {
  if (!s.plan().life || !s.plan().life->alkalinity) return;
  finding& f = out.ask(alkalinity);
  const life_case& c = s.life();
  if (c.in.filter.food.empty()) f.unknown(std::string{needs_food});
  if (!c.net) f.unknown(c.state.why_no_display.empty() ? std::string{needs_net_volume} : c.state.why_no_display);
  if (!f.measure_next.empty()) return;
  const plan::alkalinity_inputs& a = *c.in.alkalinity;
  const auto under = [&](const life::nitrogen_load& made) {
    return life::time_alkalinity_lasts({.load = made, .net = c.net->central, .now = a.now, .lowest = a.lowest});
  };
  const auto least = under(c.load.low), middle = under(c.load.central), most = under(c.load.high);
  const auto degrees = [](const water::alkalinity& level) { return in_degrees_kh(level); };
  const estimate<double> fall{degrees(least.daily_fall.low), degrees(middle.daily_fall.central),
                              degrees(most.daily_fall.high), c.load.reason};
  const double now = degrees(a.now), lowest = degrees(a.lowest), interval = in_days(a.measured_every);
  if (least.lasts && middle.lasts && most.lasts) {
    f.answer("lasts", "until the lowest that may be",
             estimate<duration>{most.lasts->low, middle.lasts->central, least.lasts->high, c.load.reason});
  }
  f.detail("every", "measured every", a.measured_every);
  f.detail("fall", "falls in a day by, dKH", fall);
  f.detail("now", "now, dKH", now);
  f.limit("lowest", "may fall to, dKH", lowest);
  f.margin("left", "above that at the next measurement, dKH",
           map_falling(fall, [&](double by) { return now - lowest - by * interval; }), 0.0);
  const auto dose = water::alkalinity_to_add({.volume = c.net->central,
                                              .from = water::alkalinity::from_degrees_kh(0.0),
                                              .target = water::alkalinity::from_degrees_kh(fall.central)});
  f.detail("dose", "sodium bicarbonate that puts a day back", dose.sodium_bicarbonate);
  f.note = "Before dosing: " + std::string{water::alkalinity_caution.text};
  if (middle.lasts && middle.lasts->central <= a.measured_every) {
    f.happens = "The alkalinity is at its lowest after " + said(s, middle.lasts->central) +
                ", before it is measured again; then nitrification stalls and ammonia rises.";
  }
  f.sources = {life::ebeling_2006, life::gujer_jenkins_1974};
  f.next("measure the alkalinity on two days a week apart: corals and plants use and make it too");
}

}  // namespace tankwright::decisions
