// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/floor.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(floor, "floor", "What stands on the floor under the lagoon?") {
  using namespace tankwright;
  const double m = s.given("m", "water, sand, rock, tank and stand", 2750, 0, "kg");
  const double a = s.given("A", "outline of the stand, 2.60 m by 1.20 m", 3.12, 2, "m2");
  const double f = s.given("f", "what touches the floor, all feet together", 0.24, 2, "m2");
  const double c = s.given("c", "live load of rooms, 40 psf", 1.915, 3, "kPa");
  s.wanted("The load on the floor, beside what floors of dwellings are meant for.");
  const auto found =
      vessel::load_on_floor({.total = kilograms(m), .footprint = square_metres(a), .bearing = square_metres(f)});
  s.step("F", "weight = m g", in_kilonewtons(found.weight), 1, "kN");
  s.result("p", "over the outline = F/A", in_kilopascals(found.spread), 1, "kPa");
  s.result("pf", "under the feet = F/f", in_kilopascals(found.under_feet), 0, "kPa");
  s.result("times", "over the live load of a room = p/c", found.times_code, 1);
  (void)c;
  s.means(
      "Four and a half times what a room of a dwelling is meant for: this belongs on a slab on the ground, or on a "
      "floor that an "
      "engineer has calculated for it. The live load of a code is for people and furniture, not a permission for a "
      "tank.");
  s.caution(found.caution);
}
