// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/liquid.hpp>
#include <tankwright/water/viscosity.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(viscosity, "viscosity", "How thick is the water in the pipes?") {
  using namespace tankwright;
  const double sp = s.given("S", "practical salinity", 35, 0, "", "0 to 42");
  const double t = s.given("t", "temperature", 24, 0, "°C", worked::range_of(water::viscosity_temperature_limits));
  const double v = s.given("v", "velocity in a pipe of 42.6 mm", 1.0, 1, "m/s");
  s.wanted("Viscosity and Reynolds number.");
  const auto liquid = water::seawater(practical_salinity{sp}, celsius(t));
  const double nu = water::kinematic_viscosity_of(liquid).value();
  s.step("mu0", "fresh water at t", in_millipascal_seconds(water::fresh_water(celsius(t)).viscosity), 3, "mPa s");
  s.step("mu", "seawater = mu0 (1 + A s + B s^2), s in kg/kg", in_millipascal_seconds(liquid.viscosity), 2, "mPa s");
  s.step("nu", "kinematic = mu/rho", 1e6 * nu, 2, "mm2/s");
  s.result("Re", "v D/nu", v * 0.0426 / nu, -3);
  s.means(
      "Far above 4000: the flow is turbulent, and an error of a few per cent in the viscosity moves the friction by "
      "less than one.");
}
