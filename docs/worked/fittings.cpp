// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/fittings.hpp>
#include <tankwright/plumbing/friction.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(fittings, "fittings", "What do the fittings of the left return cost?") {
  using namespace tankwright;
  using plumbing::fitting;
  const double d = s.given("D", "bore", 42.6, 1, "mm", worked::range_of(plumbing::fitting_bore_limits, 1000.0));
  const double q = s.given("Q", "flow", 5000, 0, "L/h");
  const double n = s.given("n", "elbows of 90°", 3, 0, "", worked::range_of(plumbing::count_limits));
  s.given("One ball valve, and the end of the pipe under water.");
  s.wanted("The sum of the loss coefficients, and the head.");
  const plumbing::pipe_bore bore{millimetres(d)};
  const auto elbow = plumbing::fitting_loss(fitting::elbow_90, bore);
  const auto valve = plumbing::fitting_loss(fitting::ball_valve, bore);
  const auto all = plumbing::total_loss({{elbow, static_cast<int>(n)}, {valve}, {plumbing::exit_loss}});
  const double v = in_metres_per_second(plumbing::mean_velocity(litres_per_hour(q), bore));
  s.step("fT", "f_T = 0.25/log10(0.0018 in/(3.7 D))^2", plumbing::fully_turbulent_factor(bore).value(), 4);
  s.step("Ke", "an elbow = 30 f_T", elbow.central.value(), 2);
  s.step("Kv", "the ball valve = 3 f_T", valve.central.value(), 2);
  s.step("v", "velocity", v, 2, "m/s");
  s.result("K", "sum = n Ke + Kv + 1 for the exit", all.central.value(), 1);
  s.result("Le", "an elbow as straight pipe = Ke D/f, f 0.022", 0.001 * d * elbow.central.value() / 0.022, 1, "m");
  s.result("h", "head = K v^2/(2 g)", 100.0 * all.central.value() * v * v / (2 * 9.80665), 0, "cm");
  s.result("low", "K at the low end of the bands", all.low.value(), 1);
  s.result("high", "K at the high end", all.high.value(), 1);
  s.means(
      "The exit costs as much as an elbow does, a good ball valve nearly nothing. Count elbows before you count "
      "metres: each "
      "of these is worth more than a metre of straight pipe.");
}
