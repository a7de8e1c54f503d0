// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/adjust.hpp>
#include <tankwright/water/density.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(adjust, "adjust", "The first mixing fell short: how much more mix?") {
  using namespace tankwright;
  const double v = s.given("V", "water in the tank", 1690, 0, "L", worked::range_of(water::water_volume_limits));
  const double s1 = s.given("S1", "salinity now", 33.3, 1, "", worked::range_of(water::practical_salinity_limits));
  const double s2 = s.given("S2", "salinity wanted", 35.0, 1, "", worked::range_of(water::practical_salinity_limits));
  const double t = s.given("t", "temperature", 24, 0, "°C");
  const double y = s.given("y", "yield of the mix", 0.867, 3, "", worked::range_of(water::mix_yield_limits));
  s.wanted("The mix to add; and had it been too salt by as much, the fresh water.");
  const auto found = water::raise_salinity({.volume = litres(v),
                                            .from = practical_salinity{s1},
                                            .target = practical_salinity{s2},
                                            .temperature = celsius(t),
                                            .mix_yield = fraction(y)});
  const auto down = water::lower_salinity({.volume = litres(v),
                                           .from = practical_salinity{s2 + (s2 - s1)},
                                           .target = practical_salinity{s2},
                                           .temperature = celsius(t)});
  s.step("M", "mass of the water = rho V", v / 1000.0 * water::density(practical_salinity{s1}, celsius(t)).value(), 0,
         "kg");
  s.step("dS", "rise in absolute salinity = 1.004715 (S2 - S1)", 35.16504 / 35.0 * (s2 - s1), 2, "g/kg");
  s.result("m", "mix to add = M dS/(1000 y - SA2)", in_kilograms(found.mix), 1, "kg");
  s.result("w", "or fresh water, from 36.7 down to S2", in_litres(down.fresh_water), 0, "L");
  s.means(
      "The reading is good to a third of a unit, so the mix to add is known to a fifth of itself: add half of it, wait "
      "until the water "
      "is clear, and measure again.");
  s.caution(found.caution);
}
