// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <cmath>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/moving_in/filter_finding.hpp>
#include <tankwright/decisions/moving_in/grown_up.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE void answer_grown_up(const situation& s, answers& out) {
  if (!s.plan().life) return;
  bool asked = false;
  for (const plan::animal_kind& a : s.plan().life->animals) asked = asked || a.adult_mass;
  if (!asked) return;
  finding& f = out.ask(grown_up);
  const life_case& c = s.life();
  double now = 0.0, grown = 0.0;
  for (std::size_t i = 0; i < c.in.animals.size(); ++i) {
    const plan::animal_kind& given = s.plan().life->animals[i];
    life::animals group = c.in.animals[i].breathing;
    group.label = c.in.animals[i].label;
    const mass_flow use = life::oxygen_use(group, c.state.water.temperature).use;
    now += use.value();
    if (given.adult_mass) group.each = *given.adult_mass;
    const mass_flow then = life::oxygen_use(group, c.state.water.temperature).use;
    grown += then.value();
    if (given.adult_mass) {
      f.detail("mass", "all of them grown", *given.adult_mass * *given.count, c.in.animals[i].label);
    }
  }
  if (!(now > 0.0)) {
    f.unknown("give animals that use oxygen: their food is taken to grow as that does");
    return;
  }
  const double times = grown / now;
  f.answer("times", "they eat and breathe more than now by a factor of", times);
  f.detail("oxygen", "oxygen that they use when grown", mass_flow::from_value(grown));
  if (!detail::describes_filter(s.plan()) || !detail::can_balance(c, f)) return;
  const filter_balance b = balance_of(c, filter_at::mature);
  const auto needed = map_rising(b.needed, [&](mass_flow n) { return n * times; });
  f.limit("needed", "nitrogen made in a day by the food of the grown", map_rising(needed, in_a_day));
  f.answer("takes", "taken away in a day by the mature filter", map_rising(b.takes, in_a_day));
  const estimate<mass_flow> spare{b.takes.low - needed.high, b.takes.central - needed.central,
                                  b.takes.high - needed.low, film_and_food};
  f.margin("left", "left over; short where negative", map_rising(spare, in_a_day), mass{});
  f.note =
      "Food is taken to grow as the use of oxygen does, with mass to the power 0.7 to 0.9. How fast they grow is not "
      "asked: weigh or measure some of them each year.";
  if (f.verdict == verdict::does_not_hold) {
    f.happens = "Grown, they are fed more than this filter can take away: fewer of them, or more surface.";
  }
  f.sources = {life::nijhof_bovendeur_1990, life::timmons_ebeling_2007};
}

}  // namespace tankwright::decisions
