// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/alkalinity.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(alkalinity, "alkalinity", "The alkalinity has fallen to 7.0 dKH: how much bicarbonate?") {
  using namespace tankwright;
  const double v = s.given("V", "water in the tank", 1690, 0, "L", worked::range_of(water::water_volume_limits));
  const double a1 = s.given("A1", "alkalinity now", 7.0, 1, "dKH");
  const double a2 = s.given("A2", "alkalinity wanted", 8.0, 1, "dKH");
  s.wanted("Sodium bicarbonate, or dry sodium carbonate.");
  const auto dose = water::alkalinity_to_add({.volume = litres(v),
                                              .from = water::alkalinity::from_degrees_kh(a1),
                                              .target = water::alkalinity::from_degrees_kh(a2)});
  s.step("dA", "rise = (A2 - A1)/2.804", (a2 - a1) / water::exact_masses.degrees_kh_per_milliequivalent, 3, "meq/L");
  s.result("m", "sodium bicarbonate = dA V 84.01/1000", in_grams(dose.sodium_bicarbonate), 0, "g");
  s.result("c", "or sodium carbonate = dA V 52.99/1000", in_grams(dose.sodium_carbonate), 0, "g");
  s.means(
      "Not much, and less than it looks. Dissolve it in fresh water and let it run in over a day: the rise is within "
      "what animals stand in one day.");
  s.caution(dose.caution);
}
