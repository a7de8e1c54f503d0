// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/density.hpp>
#include <tankwright/water/mass_concentration.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(salinity, "salinity", "A recipe asks for 35 grams to the litre: which salinity is that?") {
  using namespace tankwright;
  const double c = s.given("c", "salt in a litre of the finished seawater", 35.0, 1, "g/L",
                           worked::range_of(water::mass_concentration_limits));
  const double t = s.given("t", "temperature of the litre", 25, 0, "°C");
  s.wanted("The practical salinity, and what the recipe should have said for salinity 35.");
  const auto sp = water::salinity_from_mass_concentration(grams_per_litre(c), celsius(t));
  s.step("rho", "density of that seawater", water::density(sp, celsius(t)).value(), 1, "kg/m3");
  s.step("SA", "absolute salinity = 1000 c/rho", in_grams_per_kilogram(water::absolute_from_practical(sp)), 2, "g/kg");
  s.result("S", "practical salinity = 35/35.16504 SA", sp.value(), 1);
  s.result("c35", "salt in a litre of salinity 35",
           in_grams_per_litre(water::mass_concentration_from_salinity(practical_salinity{35.0}, celsius(t))), 1, "g/L");
  s.means(
      "The recipe falls short by one whole unit of salinity. Ask of every \"35\" whether it counts a litre, a kilogram "
      "or a "
      "conductivity.");
}
