// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/specific_gravity.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(specific_gravity, "specific_gravity", "A table says 1.0264: which line is that on my hydrometer?") {
  using namespace tankwright;
  const double g = s.given("g", "specific gravity in the table, 25 °C/25 °C", 1.0264, 4, "",
                           worked::range_of(water::specific_gravity_limits));
  s.given("The hydrometer is marked 60 °F/60 °F; another, from a laboratory, 20 °C/4 °C.");
  s.wanted("The salinity, and the same water on both scales.");
  const water::specific_gravity printed{g, water::scale_25_25};
  s.step("rho0", "density of pure water at 25 °C", water::density(practical_salinity{0.0}, celsius(25.0)).value(), 2,
         "kg/m3");
  s.step("rho", "density of the seawater at 25 °C = g rho0",
         g * water::density(practical_salinity{0.0}, celsius(25.0)).value(), 1, "kg/m3");
  s.result("S", "salinity that has this density", water::salinity_from_specific_gravity(printed).value(), 1);
  s.result("g60", "on 60 °F/60 °F", water::on_scale(printed, water::scale_60f_60f).value(), 4);
  s.result("g4", "on 20 °C/4 °C", water::on_scale(printed, water::scale_20_4).value(), 4);
  s.means(
      "One water, three numbers: between the first and the last lie two units of salinity. Copy a specific gravity "
      "only together "
      "with its two temperatures.");
}
