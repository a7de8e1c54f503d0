// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/drift.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(drift, "drift", "The top-off fails on a long weekend: where does the salinity go?") {
  using namespace tankwright;
  const double v = s.given("V", "water in the system", 1940, 0, "L", worked::range_of(water::water_volume_limits));
  const double sp =
      s.given("S0", "salinity at the start", 35.0, 1, "", worked::range_of(water::practical_salinity_limits));
  const double t = s.given("t", "temperature", 24, 0, "°C");
  const double e = s.given("E", "evaporation", 9, 0, "L/d", worked::range_of(water::evaporation_limits));
  const double d = s.given("d", "without top-off", 4, 0, "d", worked::range_of(water::drift_time_limits));
  s.wanted("The salinity after that, and the day on which it reaches 36.");
  const water::drifting_system system{.volume = litres(v),
                                      .salinity = practical_salinity{sp},
                                      .temperature = celsius(t),
                                      .evaporation = litres_per_day(e),
                                      .top_off = litres_per_day(0.0)};
  const auto after = water::drift(system, days(d));
  s.step("M0", "mass of the water = rho V", v / 1000.0 * water::density(practical_salinity{sp}, celsius(t)).value(), 0,
         "kg");
  s.step("lost", "mass that evaporates = rho0 E d",
         e * d / 1000.0 * water::density(practical_salinity{0.0}, celsius(t)).value(), 1, "kg");
  s.result("S", "salinity = S0 M0/(M0 - lost)", after.salinity.value(), 1);
  s.result("T36", "reaches 36 after", in_days(water::time_to_salinity(system, practical_salinity{36.0})), 0, "d");
  s.means(
      "Two thirds of a unit in four days: no animal minds that. The pump minds it first, because all the fall shows in "
      "its chamber. "
      "When the top-off runs again, let it refill slowly.");
  s.caution(after.caution);
}
