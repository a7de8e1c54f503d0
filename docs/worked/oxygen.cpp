// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/density.hpp>
#include <tankwright/water/oxygen.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(oxygen, "oxygen", "How much oxygen does the water hold on a day of low air pressure?") {
  using namespace tankwright;
  const double sp = s.given("S", "practical salinity", 35, 0, "", worked::range_of(water::practical_salinity_limits));
  const double t = s.given("t", "temperature", 24, 0, "°C");
  const double p = s.given("P", "air pressure at the tank", 985, 0, "hPa", "500 to 1150");
  s.wanted("The oxygen in balance with the air, in mg/L.");
  const absolute_pressure air{hectopascals(p)};
  s.step("C", "Garcia and Gordon, at one atmosphere",
         in_micromoles_per_kilogram(water::oxygen_saturation(practical_salinity{sp}, celsius(t))), 1, "umol/kg");
  s.step("c0", "the same = 0.0319988 C rho/1000",
         in_milligrams_per_litre(water::oxygen_saturation_concentration(practical_salinity{sp}, celsius(t))), 2,
         "mg/L");
  s.result("c", "at P, less the vapour that is in the air",
           in_milligrams_per_litre(water::oxygen_saturation_concentration(practical_salinity{sp}, celsius(t), air)), 1,
           "mg/L");
  s.compare("fresh", "fresh water of this temperature, at 1013 hPa",
            in_milligrams_per_litre(water::oxygen_saturation_concentration(practical_salinity{0.0}, celsius(t))), 1,
            "mg/L");
  s.means(
      "A meter that is set to fresh water shows a fifth too much: set its salinity. Full saturation is less than 3 "
      "mg/L above the "
      "alarm at 4 mg/L, so a crowded tank without air has little time.");
}
