// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/friction.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(friction, "friction", "Cengel and Cimbala, Fluid Mechanics, example 8-3: 60 m of 50 mm pipe") {
  using namespace tankwright;
  const double q = s.given("Q", "flow", 6.0, 1, "L/s");
  const double d = s.given("D", "bore", 50.0, 1, "mm", worked::range_of(plumbing::bore_limits, 1000.0));
  const double l = s.given("L", "length", 60, 0, "m", worked::range_of(plumbing::run_length_limits));
  const double e = s.given("e", "roughness of the wall", 2.0, 1, "um", "e/D 0 to 0.05");
  const double rho = s.given("rho", "density of the water", 999, 0, "kg/m3");
  const double mu = s.given("mu", "its viscosity", 1.138, 3, "mPa s");
  s.wanted("The head lost to the wall.");
  const water::liquid water{.density = kilograms_per_cubic_metre(rho), .viscosity = millipascal_seconds(mu)};
  const plumbing::pipe_bore bore{millimetres(d)};
  const flow_rate flow = litres_per_second(q);
  const auto re = plumbing::reynolds(flow, bore, water);
  const head h = plumbing::head_loss({.bore = bore, .length = metres(l), .roughness = micrometres(e)}, flow, water);
  s.step("V", "velocity = Q/(pi D^2/4)", in_metres_per_second(plumbing::mean_velocity(flow, bore)), 2, "m/s");
  s.step("Re", "Reynolds number = V D rho/mu", re.value(), 0);
  s.step("f", "friction factor, Colebrook and White",
         plumbing::friction_factor(re, plumbing::relative_roughness{e * 1e-3 / d}).value(), 4);
  s.result("h", "head lost = f L/D V^2/(2 g)", in_metres(h), 2, "m");
  s.result("dp", "the same as pressure = rho g h", rho * 9.80665 * in_metres(h) / 1000.0, 1, "kPa");
  s.means(
      "At 3 m/s the pipe eats more head than most tanks have lift. Half the velocity costs a quarter: the next larger "
      "pipe is "
      "nearly always cheaper than the larger pump. (The book prints 0.0172, 9.85 m and 96.5 kPa.)");
}
