// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/density.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(density, "density", "What do 1850 litres of seawater weigh?") {
  using namespace tankwright;
  const double sp = s.given("S", "practical salinity", 35.0, 1, "", worked::range_of(water::practical_salinity_limits));
  const double t = s.given("t", "temperature", 24, 0, "°C", worked::range_of(water::gibbs_temperature_limits));
  const double v = s.given("V", "volume of the water", 1850, 0, "L");
  s.wanted("Its mass, and how much more than as fresh water.");
  const auto rho = water::density(practical_salinity{sp}, celsius(t));
  const auto fresh = water::density(practical_salinity{0.0}, celsius(t));
  s.step("SA", "absolute salinity = 35.16504/35 S",
         in_grams_per_kilogram(water::absolute_from_practical(practical_salinity{sp})), 3, "g/kg");
  s.step("rho", "density at SA and t, TEOS-10", rho.value(), 2, "kg/m3");
  s.step("rho0", "density of pure water at t", fresh.value(), 2, "kg/m3");
  s.result("M", "mass = rho V", in_kilograms(rho * litres(v)), 0, "kg");
  s.result("more", "more than as fresh water", in_kilograms((rho - fresh) * litres(v)), 0, "kg");
  s.means(
      "Salting adds 49 kg to the floor and 2.6 % to the load on every panel: judge floor and panels "
      "with seawater, "
      "even while the tank still stands full of fresh water for its leak test.");
}
