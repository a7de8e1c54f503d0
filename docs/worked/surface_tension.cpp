// SPDX-License-Identifier: BSL-1.0
#include <tankwright/core/units.hpp>
#include <tankwright/water/surface_tension.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(surface_tension, "surface_tension", "How strongly does the surface of the lagoon hold?") {
  using namespace tankwright;
  const double sp = s.given("S", "practical salinity", 35, 0, "", "0 to 42");
  const double t = s.given("t", "temperature", 24, 0, "°C", "1 to 92");
  s.wanted("The surface tension, against that of fresh water.");
  const auto sea = water::surface_tension_of(practical_salinity{sp}, celsius(t));
  const auto fresh = water::surface_tension_of(practical_salinity{0.0}, celsius(t));
  s.step("sw", "fresh water at t, IAPWS R1-76", in_millinewtons_per_metre(fresh), 1, "mN/m");
  s.result("sigma", "seawater, IAPWS G14-19", in_millinewtons_per_metre(sea), 1, "mN/m");
  s.means(
      "Salt changes it by one part in seventy; a trace of fat on a hand changes it more. Wash the hydrometer, not the "
      "formula.");
}
