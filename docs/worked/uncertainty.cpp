// SPDX-License-Identifier: BSL-1.0
#include <tankwright/core/measured.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/numerics/uncertainty.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(uncertainty, "uncertainty", "A tank measured with a tape: how well is its volume known?") {
  using namespace tankwright;
  const double l = s.given("L", "length", 2.400, 3, "m");
  const double w = s.given("W", "width", 1.000, 3, "m");
  const double h = s.given("H", "depth of the water", 0.800, 3, "m");
  const double a = s.given("a", "tape and eye: right to within", 5, 0, "mm");
  s.wanted("The volume with its uncertainty, and which measure to repeat.");
  const auto found = numerics::propagate([](length x, length y, length z) { return volume{x * y * z}; },
                                         rectangular(metres(l), millimetres(a)), rectangular(metres(w), millimetres(a)),
                                         rectangular(metres(h), millimetres(a)));
  s.step("u", "standard uncertainty of each = a/sqrt(3)", a / std::sqrt(3.0), 1, "mm");
  s.step("V", "volume = L W H", in_litres(found.value), 0, "L");
  s.step("uV", "u sqrt((W H)^2 + (L H)^2 + (L W)^2)", in_litres(found.uncertainty), 1, "L");
  s.result("low", "between, 95 %", in_litres(found.low), -1, "L");
  s.result("high", "and", in_litres(found.high), -1, "L");
  s.means(
      "The depth makes most of it, because the depth is the shortest of the three: read the water level twice, at both "
      "ends, before "
      "measuring the length again.");
}
