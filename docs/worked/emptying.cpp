// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/emptying.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(emptying, "emptying", "Cengel and Cimbala, Fluid Mechanics, example 5-2: a tank empties to half") {
  using namespace tankwright;
  const double d = s.given("D", "diameter of the tank", 0.90, 2, "m");
  const double b = s.given("d", "bore of the hole in its bottom, rounded", 13, 0, "mm");
  const double h1 =
      s.given("h1", "water over the hole at the start", 1.20, 2, "m", worked::range_of(plumbing::from_limits));
  const double h2 = s.given("h2", "at the end", 0.60, 2, "m");
  s.wanted("The minutes, without contraction and friction.");
  const double area = 0.78539816339744831 * d * d;
  const auto outlet = plumbing::outlet_through(plumbing::orifice{.bore = millimetres(b), .discharge_coefficient = 1.0});
  const plumbing::any_vessel vessel = plumbing::area_profile{square_metres(area)};
  const auto time = plumbing::emptying_time(vessel, {.outlet = outlet, .from = metres(h1), .to = metres(h2)});
  const auto real =
      plumbing::emptying_time(vessel, {.outlet = plumbing::outlet_through(plumbing::orifice{.bore = millimetres(b)}),
                                       .from = metres(h1),
                                       .to = metres(h2)});
  s.step("A", "horizontal area = pi D^2/4", area, 3, "m2");
  s.step("a", "hole = pi d^2/4", outlet.value().value() * 1e6, 1, "mm2");
  s.result("T", "time = 2 A (sqrt(h1) - sqrt(h2))/(a sqrt(2 g))", in_minutes(time), 1, "min");
  s.result("Treal", "through a sharp hole, Cd 0.61", in_minutes(real), 0, "min");
  s.means(
      "The book prints 11.6 min. A real hole takes two thirds longer. The last half takes longer still: a tank never "
      "empties at the "
      "pace that its first litres promise.");
}
