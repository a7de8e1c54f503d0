// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/moving_in/nitrogen_load.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/life/meals.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_nitrogen_load(const situation& s, answers& out) {
  if (!s.plan().life || (s.plan().life->food.empty() && s.plan().life->animals.empty())) return;
  finding& f = out.ask(nitrogen_load);
  const life_case& c = s.life();
  if (c.in.filter.food.empty()) {
    f.unknown(std::string{needs_food});
    return;
  }
  mass_flow food = {}, bound = {};
  duration rarest = {};
  for (const plan::meal& m : c.in.filter.food) {
    food += m.fed.food.get();
    bound += life::nitrogen_from_feed(m.fed).bound.as_nitrogen();
    rarest = std::max(rarest, m.every);
  }
  f.answer("nitrogen", "ammonia in a day, as nitrogen",
           map_rising(c.load, [](life::nitrogen_load n) { return in_a_day(n.as_nitrogen()); }));
  f.detail("bound", "all nitrogen in the food", in_a_day(bound));
  f.detail("food", "food in a day, as given", in_a_day(food));
  f.note = rarest > life::meal_excreted_in
               ? "The mean of the days. Most of a large meal arrives within a day of it: see the filter."
               : "After feeding it is 1.2 to 1.5 times the daily mean.";
  f.source(life::timmons_ebeling_2007).next("weigh the food of a week");
}

}  // namespace tankwright::decisions
