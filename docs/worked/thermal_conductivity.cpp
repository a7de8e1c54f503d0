// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/thermal_conductivity.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(thermal_conductivity, "thermal_conductivity", "How much heat goes through still seawater?") {
  using namespace tankwright;
  const double sp = s.given("S", "practical salinity", 35, 0, "", "0 to 42");
  const double t =
      s.given("t", "temperature", 24, 0, "°C", worked::range_of(water::thermal_conductivity_temperature_limits));
  const double d = s.given("d", "layer", 100, 0, "mm");
  const double dt = s.given("dT", "warmer on one side by", 2, 0, "K");
  s.wanted("Watts through a square metre of it, if it really stood still.");
  const auto k = water::thermal_conductivity_of(practical_salinity{sp}, celsius(t));
  s.step("k", "conductivity, IAPWS", in_watts_per_metre_kelvin(k), 3, "W/(m K)");
  s.result("q", "heat = k dT/d", in_watts_per_metre_kelvin(k) * dt / (d / 1000.0), 0, "W/m2");
  s.means(
      "Next to nothing beside what moving water carries. That is why a tank whose pumps stand keeps its warm layer on "
      "top and "
      "its cold one below.");
}
