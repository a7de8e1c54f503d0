// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life/water_changes.hpp>
#include <tankwright/water/ammonia.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(water_changes, "water_changes", "Four weeks of quarantine without a filter") {
  using namespace tankwright;
  const double n = s.given("N", "ammonia nitrogen that the animals give off", 0.035, 3, "g/d",
                           worked::range_of(life::nitrogen_load_limits));
  const double v = s.given("V", "water in the tank", 180, 0, "L", worked::range_of(life::net_volume_limits));
  const double p =
      s.given("p", "part that a change takes out", 40, 0, "%", worked::range_of(life::change_part_limits, 100.0));
  const double every =
      s.given("T", "from one change to the next", 2, 0, "d", worked::range_of(life::change_interval_limits));
  const double lasts = s.given("D", "how long they stay", 28, 0, "d", worked::range_of(life::quarantine_limits));
  s.wanted("The highest ammonia, with these changes and with daily ones, and the water that they take.");
  const auto course = [&](double days_between) {
    return life::ammonia_with_changes({.net = litres(v),
                                       .load = life::nitrogen_load::from_nitrogen(grams_per_day(n)),
                                       .part = percent(p),
                                       .every = days(days_between),
                                       .lasts = days(lasts)});
  };
  const auto as_planned = course(every), daily = course(1.0);
  s.step("r", "rises between two changes by N T/V", 1e3 * n * every / v, 2, "mg/L");
  s.step("n", "changes D/T", as_planned.changes, 0);
  s.result("C", "highest, before the last change", in_milligrams_per_litre(as_planned.highest.as_nitrogen()), 2,
           "mg/L");
  s.result("W", "new water for the changes", in_litres(as_planned.changed), 0, "L");
  s.compare("Cd", "changed daily", in_milligrams_per_litre(daily.highest.as_nitrogen()), 2, "mg/L");
  s.compare("Wd", "new water for that", in_litres(daily.changed), 0, "L");
  s.means(
      "Changes alone never bring it below what comes in between two of them, divided by the part that is changed. A "
      "sponge that has sat in an older sump for a month does more than a second change a day.");
  s.caution(water::ammonia_caution);
}
