// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/moving_in/filter_finding.hpp>
#include <tankwright/decisions/moving_in/timetable.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/life/stocking_steps.hpp>
#include <tankwright/text/quantity.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_timetable(const situation& s, answers& out) {
  if (!s.plan().life || !s.plan().life->timetable) return;
  finding& f = out.ask(timetable);
  const plan::stocking_timetable& t = *s.plan().life->timetable;
  const life_case& c = s.life();
  if (!detail::can_balance(c, f)) return;
  const filter_balance b = balance_of(c, filter_at::today);
  if (!(b.needed.central.value() > 0.0)) {
    f.note = "The planned food makes no ammonia: the filter sets no dates.";
    return;
  }
  const double today = std::clamp(b.takes.central.value() / b.needed.central.value(), 0.0, 1.0);
  f.detail("today", "part of the food that today's filter takes", fraction(today));
  const double start = t.start ? t.start.get().value() : today;
  if (!(start > 0.0)) {
    f.unknown(
        "bring rock or media that work: from nothing no step can be dated, and the forecast of the start-up tells");
    return;
  }
  const auto dates = [&](rate growth) {
    return life::stocking_dates({.whole = life::nitrogen_load::from_nitrogen(b.needed.central),
                                 .start = fraction(start),
                                 .step = *t.step,
                                 .rest = *t.rest,
                                 .growth = growth,
                                 .net = c.net->central,
                                 .below = c.in.filter.stay_below});
  };
  const auto slow = dates(life::film_growth.low), middle = dates(life::film_growth.central),
             quick = dates(life::film_growth.high);
  const estimate<duration> last{quick.back().on, middle.back().on, slow.back().on, life::film_growth.reason};
  f.answer("last", "all of them are in after", last);
  f.detail("steps", "dates on which some come", static_cast<double>(middle.size()));
  std::string words;
  for (std::size_t i = 0; i < middle.size() && i < 8; ++i) {
    words += (i == 0 ? "Food and animals: " : ", ") + text::of(100.0 * middle[i].share.value(), text::significant(2)) +
             " % from day " + text::of(in_days(middle[i].on), text::significant(2));
  }
  f.note = words + (middle.size() > 8 ? ", and so on." : ".") +
           " Measure ammonia and nitrite each day after a step; the next waits until both were zero for three days.";
  if (start > today + 1e-9) {
    f.margin("start", "of the food on the first day, less than today's filter takes by", fraction(today - start),
             fraction(0.0));
    if (f.verdict == verdict::does_not_hold) f.happens = "On the first day they are fed more than the filter takes.";
  }
  if (t.ready_by) {
    f.limit("ready_by", "wanted by", *t.ready_by);
    f.margin("left", "earlier than that by", map_falling(last, [&](duration d) { return *t.ready_by - d; }),
             duration{});
    if (f.verdict == verdict::does_not_hold && f.happens.empty()) {
      f.happens = "The last of them can come after " + said(s, last.central) + ", later than is wanted.";
    }
  }
  f.source(life::nijhof_bovendeur_1990);
}

}  // namespace tankwright::decisions
