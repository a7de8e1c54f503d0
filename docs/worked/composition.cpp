// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/composition.hpp>
#include <tankwright/water/density.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(composition, "composition", "What should a calcium and a magnesium kit show in natural seawater?") {
  using namespace tankwright;
  const double sp = s.given("S", "practical salinity", 35, 0, "", worked::range_of(water::practical_salinity_limits));
  const double t = s.given("t", "temperature", 24, 0, "°C");
  s.wanted("Milligrams per litre.");
  using water::constituent;
  const auto c = [&](constituent what) {
    return in_milligrams_per_litre(water::concentration_of(what, practical_salinity{sp}, celsius(t)));
  };
  s.step("salt", "salt in a litre = SA rho",
         35.16504 / 35 * sp * water::density(practical_salinity{sp}, celsius(t)).value() / 1000.0, 2, "g/L");
  s.result("Ca", "calcium = 0.0117186 of the salt", c(constituent::calcium), 0, "mg/L");
  s.result("Mg", "magnesium = 0.0365055 of the salt", c(constituent::magnesium), -1, "mg/L");
  s.result("K", "potassium = 0.0113495 of the salt", c(constituent::potassium), 0, "mg/L");
  s.means(
      "A kit that shows a tenth less in water of the right salinity tells of the mix or of itself. Test it with "
      "natural seawater, "
      "or with a standard, before adding anything.");
}
