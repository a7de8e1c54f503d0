// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/hardness_drift.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(hardness_drift, "hardness_drift", "Two weeks away: what is left of the alkalinity?") {
  using namespace tankwright;
  const double a = s.given("A", "alkalinity today", 8.0, 1, "dKH", worked::range_of(water::falling_start_limits));
  const double fall = s.given("f", "what it falls in a day", 0.12, 2, "dKH/d", worked::range_of(water::falling_limits));
  const double time = s.given("T", "away for", 14, 0, "d", worked::range_of(water::falling_time_limits));
  const double part = s.given("p", "of the water changed by a machine", 10, 0, "%",
                              worked::range_of(water::falling_part_limits, 100.0));
  const double every = s.given("i", "from one change to the next", 4, 0, "d");
  const double calcium = s.given("Ca", "calcium today", 415, 0, "mg/L");
  s.wanted("The lowest alkalinity while nobody doses, with and without the changes, and the calcium.");
  const double with = water::lowest_level(
      {.start = a, .falls_a_day = fall, .time = days(time), .changed = percent(part), .every = days(every)});
  const double without = water::lowest_level({.start = a, .falls_a_day = fall, .time = days(time)});
  const double less = in_milligrams_per_litre(water::calcium_with_alkalinity(fall * time));
  s.step("d1", "deficit before the first change = f i", fall * every, 2, "dKH");
  s.step("d2", "before the second = (1 - p) d1 + f i", (1.0 - part / 100.0) * fall * every + fall * every, 2, "dKH");
  s.result("Amin", "lowest with the changes", with, 2, "dKH");
  s.result("Anone", "without any", without, 2, "dKH");
  s.result("Calow", "calcium without changes = Ca - 7.15 mg/L per dKH", calcium - less, 0, "mg/L");
  s.means(
      "Water changes give back a quarter of what is used, no more: it is the dosing that holds the level. Calcium "
      "hardly moves, so watch the alkalinity.");
}
