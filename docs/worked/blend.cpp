// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/blend.hpp>
#include <vector>

#include "worked.hpp"

WORKED_EXAMPLE(blend, "blend", "Old and new water together: what comes of it?") {
  using namespace tankwright;
  const double v1 = s.given("V1", "water of the older tank, salinity 35", 400, 0, "L",
                            worked::range_of(water::portion_volume_limits));
  const double t1 = s.given("t1", "its temperature", 26, 0, "°C");
  const double v2 =
      s.given("V2", "new water, salinity 33.3", 1290, 0, "L", worked::range_of(water::portion_volume_limits));
  const double t2 = s.given("t2", "its temperature", 22, 0, "°C");
  s.wanted("Salinity and temperature of the mixture.");
  const std::vector<water::portion> waters{
      {.label = "old", .volume = litres(v1), .salinity = practical_salinity{35.0}, .temperature = celsius(t1)},
      {.label = "new", .volume = litres(v2), .salinity = practical_salinity{33.3}, .temperature = celsius(t2)}};
  const auto found = water::blend(waters);
  s.step("M", "mass of both = rho1 V1 + rho2 V2", in_kilograms(found.mass), 0, "kg");
  s.result("S", "salinity, by the masses", found.salinity.value(), 1);
  s.result("t", "temperature, by the masses and their heat", in_celsius(found.temperature), 1, "°C");
  s.result("V", "volume", in_litres(found.volume), 0, "L");
  s.means(
      "A quarter of old water brings a quarter of its salinity and warmth, and hardly any of its bacteria: those live "
      "on rock and sand. "
      "Animals that come from the old tank feel a step of three kelvin: warm the new water first.");
}
