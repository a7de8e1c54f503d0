// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/pump.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(pump, "pump", "What does the return pump draw at its working point, and what at 80 % speed?") {
  using namespace tankwright;
  s.given("From the pump's sheet: 4.60 m at no flow, 3.40 m at 8000 L/h, 0.60 m at 15 000 L/h.");
  const double q = s.given("Q", "flow that it works at", 10000, 0, "L/h");
  const double eta = s.given("eta", "efficiency of pump and motor together", 0.45, 2, "",
                             worked::range_of(plumbing::pump_efficiency_limits));
  const double rho = s.given("rho", "density of the seawater", 1023.6, 1, "kg/m3");
  const double n = s.given("n", "speed to be tried, of the rated one", 0.80, 2, "",
                           worked::range_of(plumbing::turning_speed_limits));
  s.wanted("Head and power at Q, and the point it moves to at the lower speed.");
  const auto curve = plumbing::curve_from_three_points({.label = "return pump",
                                                        .shutoff_head = metres(4.60),
                                                        .middle = {litres_per_hour(8000), metres(3.40)},
                                                        .last = {litres_per_hour(15000), metres(0.60)}});
  const auto h = *plumbing::head_at(curve, litres_per_hour(q)).head;
  const water::liquid water{.density = kilograms_per_cubic_metre(rho), .viscosity = millipascal_seconds(0.96)};
  const auto power =
      plumbing::power_drawn({.flow = litres_per_hour(q), .head = h, .pump_efficiency = fraction(eta)}, water);
  const auto slow =
      plumbing::at_speed({.flow = litres_per_hour(q), .head = h, .power = power.shaft}, plumbing::speed_ratio{n});
  s.step("C", "exponent = ln((H0-H2)/(H0-H1))/ln(Q2/Q1)", std::log(4.0 / 1.2) / std::log(15.0 / 8.0), 3);
  s.step("H", "head = H0 - (H0-H1)(Q/Q1)^C", in_metres(h), 2, "m");
  s.step("Ph", "hydraulic power = rho g Q H", in_watts(power.hydraulic), 0, "W");
  s.result("P", "power drawn = Ph/eta", in_watts(power.electrical), 0, "W");
  s.result("Qn", "flow at the lower speed = n Q", in_litres_per_hour(slow.flow), 0, "L/h");
  s.result("Hn", "head there = n^2 H", in_metres(slow.head), 2, "m");
  s.result("Pn", "power there = n^3 P", in_watts(slow.power), 0, "W");
  s.means(
      "A fifth less speed halves the electricity, but the head falls by more than a third: where water is lifted, the "
      "flow "
      "falls by more than a fifth. Read the new flow off the circuit, not off this line.");
  s.caution(power.caution);
}
