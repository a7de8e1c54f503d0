// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life/nitrogen.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(nitrogen, "nitrogen", "What does a day's food come to, in ammonia, oxygen and alkalinity?") {
  using namespace tankwright;
  const double f1 = s.given("F1", "frozen food, wet", 24, 0, "g/d", worked::range_of(life::food_limits));
  const double p1 = s.given("p1", "protein in it, as it is", 11, 0, "%", "0 to 100");
  const double f2 = s.given("F2", "granulate, dry", 4, 0, "g/d", worked::range_of(life::food_limits));
  const double p2 = s.given("p2", "protein in it", 48, 0, "%", "0 to 100");
  s.wanted("The ammonia of a day, and what the filter uses for it.");
  const auto one = life::nitrogen_from_feed({.food = grams_per_day(f1), .protein = percent(p1)});
  const auto two = life::nitrogen_from_feed({.food = grams_per_day(f2), .protein = percent(p2)});
  const mass_flow n = one.ammonia.central.as_nitrogen() + two.ammonia.central.as_nitrogen();
  const mass_flow bound = one.bound.as_nitrogen() + two.bound.as_nitrogen();
  const auto needs = life::needs_of_nitrification(life::nitrogen_load::from_nitrogen(n));
  s.step("Pr", "protein = F1 p1 + F2 p2", f1 * p1 / 100 + f2 * p2 / 100, 2, "g/d");
  s.result("N", "ammonia, as nitrogen = 0.092 Pr", in_grams_per_day(n), 2, "g/d");
  s.result("most", "all the nitrogen in it = 0.16 Pr", in_grams_per_day(bound), 2, "g/d");
  s.result("O2", "oxygen that the filter uses = 4.57 N", in_grams_per_day(needs.oxygen.central), 1, "g/d");
  s.result("Alk", "alkalinity, as CaCO3 = 7.14 N", in_grams_per_day(needs.alkalinity.central), 1, "g/d");
  s.means(
      "Four grams of granulate make three quarters as much ammonia as 24 grams of wet food: count protein, never food. "
      "In 1690 L that is a "
      "quarter of a milligram per litre a day, if nothing took it away.");
  s.caution(one.caution);
}
