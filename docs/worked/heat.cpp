// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/density.hpp>
#include <tankwright/water/heat.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(heat, "heat", "How much heat warms the lagoon from tap water to 24 °C?") {
  using namespace tankwright;
  const double v = s.given("V", "seawater, salinity 35", 1690, 0, "L");
  const double t1 = s.given("t1", "filled at", 12, 0, "°C");
  const double t2 = s.given("t2", "wanted", 24, 0, "°C");
  const double e = s.given("E", "evaporates in a day", 9, 0, "kg/d");
  s.wanted("The energy, and the heat that evaporation takes.");
  const double c = water::specific_heat(practical_salinity{35.0}, celsius(18.0)).value();
  const double rho = water::density(practical_salinity{35.0}, celsius(18.0)).value();
  const double latent = water::latent_heat(practical_salinity{35.0}, celsius(t2)).value();
  s.step("c", "specific heat at 18 °C", c, 0, "J/(kg K)");
  s.step("C", "of all the water = c rho V", c * rho * v / 1e3 / 3.6e6, 2, "kWh/K");
  s.step("L", "latent heat at t2", latent / 1000.0, 0, "kJ/kg");
  s.result("Q", "energy = C (t2 - t1)", c * rho * v / 1e3 / 3.6e6 * (t2 - t1), 0, "kWh");
  s.result("P", "taken by evaporation = E L", e * latent / 86400.0, 0, "W");
  s.means(
      "Two heaters of 300 W need more than a day and a half for it, with no loss at all. What evaporates takes as much "
      "heat as one of "
      "them gives, day and night.");
}
