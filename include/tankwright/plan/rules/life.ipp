// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/rules/display_bounds.hpp>
#include <tankwright/plan/rules/rules.hpp>

namespace tankwright::plan::rules {

namespace detail {

inline void hold_moved_rock(const life_section& l, book& all) {
  if (!l.moved_rock) return;
  const moved_rock& r = *l.moved_rock;
  if (r.whole) {
    all.at_most("life.moved_rock.moved", r.moved, {*r.whole, "life.moved_rock.of"},
                "moves, which is more than there was,");
  }
  double protein = 0.0;
  for (const food& f : r.food) {
    if (!f.amount || !f.protein) return;
    protein += f.amount.si() * f.protein.si();
  }
  if (!r.food.empty() && !(protein > 0.0)) {
    all.refuse("life.moved_rock.food", "is nothing; rock that kept up with nothing carries nothing");
  }
}

/// Steps in order, and nothing after the end of the forecast: it would not be seen.
inline void hold_weeks(const life_section& l, book& all) {
  if (!l.start_up) return;
  const start_up_weeks& w = *l.start_up;
  const bound<duration> end{*w.horizon, "life.start_up.horizon"};
  constexpr std::string_view too_late = "is after the end of the forecast,";
  const auto within = [&](const std::string& path, const value<duration>& when) {
    if (l.forecast) all.at_most(path, when, end, too_late);
  };
  within("life.start_up.rock_on", w.rock_on);
  for (std::size_t i = 0; i < w.animals.size(); ++i) {
    const std::string path = element("life.start_up.animals", w.animals, i) + ".on";
    within(path, w.animals[i].on);
    if (i == 0 || !w.animals[i].on || !w.animals[i - 1].on) continue;
    if (*w.animals[i].on <= *w.animals[i - 1].on) {
      all.refuse(path,
                 all.said(w.animals[i].on) + " is not after the step before it, " + all.said(w.animals[i - 1].on) +
                     "; put the steps in order",
                 element("life.start_up.animals", w.animals, i - 1) + ".on");
    }
  }
  const auto each = [&](std::string_view name, const auto& list) {
    for (std::size_t i = 0; i < list.size(); ++i) within(element(name, list, i) + ".first", list[i].when.first);
  };
  each("life.start_up.culture", w.culture);
  each("life.start_up.ammonia_dose", w.ammonia_dose);
  each("life.start_up.water_change", w.water_change);
}

/// What lives in the display is not larger than it.
inline void hold_in_display(const build& build, const life_section& l, book& all) {
  const auto display = bounds_of(build);
  if (!display) return;
  const auto sump = sump_bounds_of(build);
  const area floors = display->floor().most + (sump ? sump->floor().most : area{});
  for (std::size_t i = 0; i < l.surface.size(); ++i) {
    const std::string path = element("life.surface", l.surface, i);
    all.at_most(path + ".bed", l.surface[i].bed, about(floors, display->wall.path),
                "of sand is more than the floor of display and sump,");
    all.at_most(path + ".breathing_depth", l.surface[i].breathing_depth, display->rim,
                "of sand is above the rim of the display,");
    all.at_most(path + ".volume", l.surface[i].volume, {tanks_hold(display, sump), display->rim.path},
                "of media is more than display and sump hold,");
  }
  if (l.room) all.at_most("life.room.run", l.room->run, display->line, "is longer than the display inside,");
}

}  // namespace detail

TANKWRIGHT_INLINE void hold_life(const build& build, book& all) {
  if (!build.life) return;
  const life_section& l = *build.life;
  detail::hold_moved_rock(l, all);
  detail::hold_weeks(l, all);
  detail::hold_in_display(build, l, all);
  if (l.alkalinity && l.alkalinity->now) {
    all.at_most("life.alkalinity.lowest", l.alkalinity->lowest, {*l.alkalinity->now, "life.alkalinity.now"},
                "is above what the water has now,");
  }
  if (l.arrivals && l.arrivals->ph.scale && l.ph.scale && *l.arrivals->ph.scale != *l.ph.scale) {
    all.refuse("life.arrivals.ph_scale", "is not that of the tank: measure both with one probe", "life.ph_scale");
  }
  if (l.room && l.room->run) {
    all.at_most("life.room.width", l.room->width, {*l.room->run, "life.room.run"},
                "is more than the longest straight run: they may be exchanged;");
  }
}

}  // namespace tankwright::plan::rules
