// SPDX-License-Identifier: BSL-1.0
#include <tankwright/room/top_off.hpp>
#include <tankwright/water/density.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(top_off, "top-off", "How long does the reservoir last, and what if its valve sticks open?") {
  using namespace tankwright;
  const double r = s.given("R", "reservoir", 60, 0, "L", worked::range_of(room::reservoir_limits, 1000.0));
  const double lo = s.given("E1", "evaporation, low end of its band", 5, 0, "kg/d");
  const double hi = s.given("E2", "evaporation, high end", 14, 0, "kg/d");
  const double v = s.given("V", "water in the system, salinity 35, 24 °C", 1940, 0, "L");
  const double fv = s.given("free", "room in the sump above the working level", 75, 0, "L");
  s.wanted("The days it lasts, and the salinity when all of it has run in.");
  const estimate<mass_flow> e{kilograms_per_day(lo), kilograms_per_day(9.0), kilograms_per_day(hi), "as above"};
  const auto lasts = room::reservoir_lasts(litres(r), room::top_off_rate(e));
  const auto stuck = room::stuck_valve({.water = {.temperature = celsius(24.0), .salinity = practical_salinity{35.0}},
                                        .volume = litres(v),
                                        .lowest = practical_salinity{33.0},
                                        .free_volume = litres(fv)},
                                       litres(r));
  s.step("m0", "mass of the seawater = rho V",
         v / 1000.0 * water::density(practical_salinity{35.0}, celsius(24.0)).value(), 0, "kg");
  s.result("short", "lasts at least = R/E2", in_days(lasts.low), 0, "d");
  s.result("long", "lasts at most = R/E1", in_days(lasts.high), 0, "d");
  s.result("S", "valve stuck open: S = 35 m0/(m0 + rho0 R)", stuck.salinity.value(), 1);
  s.result("spilt", "onto the floor = R - free, or nothing", in_litres(stuck.overflow), 0, "L");
  s.means(
      "Count on four days, and on a drop of one unit if the valve sticks: animals stand that, the floor stays dry. A "
      "larger reservoir "
      "would spare walking and risk both.");
  s.caution(stuck.caution);
}
