// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life/space.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(space, "space", "Is the lagoon long enough for garden eels of 38 cm?") {
  using namespace tankwright;
  const double a = s.given("a", "length of the adult", 0.38, 2, "m", worked::range_of(life::body_length_limits));
  const double r = s.given("r", "longest free run", 2.00, 2, "m", worked::range_of(life::straight_run_limits));
  const double w = s.given("w", "clear width", 0.80, 2, "m", worked::range_of(life::clear_width_limits));
  const double v = s.given("v", "routine speed", 0.05, 2, "m/s", worked::range_of(life::swim_speed_limits));
  s.wanted("Run and width in lengths of the animal.");
  const auto found =
      life::swim_clearance({.animal = metres(a), .run = metres(r), .width = metres(w), .speed = metres_per_second(v)});
  s.result("run", "run = r/a; the trade asks for 3", found.run_in_lengths, 1);
  s.result("wide", "width = w/a; the trade asks for 2", found.width_in_lengths, 1);
  s.result("T", "to cross the run = r/v", in_seconds(found.crossing), 0, "s");
  s.means(
      "Both lie above the habit of the trade, which has no source. Garden eels stand in the sand: for them the depth "
      "of the bed says more "
      "than the run. The figure compares tanks; it does not say that a species may be kept.");
  s.caution(found.caution);
}
