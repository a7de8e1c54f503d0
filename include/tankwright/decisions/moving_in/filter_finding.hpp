// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the decisions about the filter say alike: today's, the mature one's, and that of its free ammonia.
#pragma once

#include <algorithm>
#include <string>
#include <tankwright/decisions/finding.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/life/meals.hpp>

namespace tankwright::decisions {

namespace detail {

/// What a filter lacks for its balance; true where nothing does.
[[nodiscard]] inline bool can_balance(const life_case& c, finding& f) {
  if (c.in.filter.food.empty()) f.unknown(std::string{needs_food});
  if (!c.net) f.unknown(c.state.why_no_display.empty() ? std::string{needs_net_volume} : c.state.why_no_display);
  if (!c.in.filter.rock && c.in.filter.surfaces.empty()) {
    f.unknown("give the rock that moves and the food it has kept up with, or the surfaces of sand and media");
  }
  return f.measure_next.empty();
}

[[nodiscard]] inline bool fed_rarely(const life_case& c) {
  return std::any_of(c.in.filter.food.begin(), c.in.filter.food.end(),
                     [](const plan::meal& m) { return m.every > life::meal_excreted_in; });
}

/// Where the ammonia settles, and what happens where it does not hold.
inline void tell_levels(const situation& s, const life_case& c, const filter_balance& b, finding& f) {
  const settled_levels& at = b.settles;
  const std::string words = fed_rarely(c) ? "total ammonia reaches" : "total ammonia settles at";
  const mass_flow short_by = -b.spare.central;
  if (at.low && at.central && at.high) {
    f.detail("settles", words,
             estimate<mass_concentration>{at.low->as_nitrogen(), at.central->as_nitrogen(), at.high->as_nitrogen(),
                                          film_and_food});
  } else if (at.central) {
    f.detail("settles", words, at.central->as_nitrogen());
    f.note = "With the poorest films it does not settle but rises. ";
  } else {
    f.note = "No ammonia level balances this load: it rises for as long as the animals are fed like this. ";
  }
  if (short_by.value() > 0.0) {
    const mass_concentration rise = in_a_day(short_by) / c.net->central;
    f.detail("rise", "until bacteria grow, rises in a day by", rise);
    f.happens = "The ammonia rises by " + said(s, rise) + " in a day until bacteria grow" +
                (at.central ? ", up to " + said(s, at.central->as_nitrogen()) + "." : ", without end.");
  }
}

inline void tell_filter(const situation& s, finding& f, filter_at when) {
  const life_case& c = s.life();
  if (!can_balance(c, f)) return;
  const filter_balance b = balance_of(c, when);
  const auto daily = [](const estimate<mass_flow>& flow) { return map_rising(flow, in_a_day); };
  f.answer("takes", "taken away in a day, as nitrogen", daily(b.takes));
  f.detail("level", "while the total ammonia is", c.in.filter.stay_below.as_nitrogen());
  if (c.in.filter.rock) f.detail("by_rock", "of that, by the moved rock", daily(b.by_rock));
  if (fed_rarely(c)) {
    f.detail("made", "made in a day, in the mean",
             map_rising(c.load, [](life::nitrogen_load n) { return in_a_day(n.as_nitrogen()); }));
    f.limit("needed", "must be taken in the day of the large meals", daily(b.needed));
  } else {
    f.limit("needed", "made in a day, as nitrogen", daily(b.needed));
  }
  f.margin("left", "left over; short where negative", daily(b.spare), mass{});
  tell_levels(s, c, b, f);
  if (c.in.filter.rock) {
    f.note +=
        "Rock loses bacteria when it dries, cools or stands without flow. Measure ammonia and nitrite every day, feed "
        "little, and keep matched water ready to change. Ask an aquatic veterinarian.";
  }
  f.sources = {life::nijhof_bovendeur_1990, life::zhu_chen_2002, life::malone_pfeiffer_2006,
               life::timmons_ebeling_2007};
  if (fed_rarely(c)) f.source(life::brett_zala_1975);
  f.next(std::string{challenge_test});
}

/// Whether the plan says anything about a filter.
[[nodiscard]] inline bool describes_filter(const plan::build& build) {
  return build.life && (!build.life->food.empty() || build.life->moved_rock || !build.life->surface.empty());
}

}  // namespace detail

}  // namespace tankwright::decisions
