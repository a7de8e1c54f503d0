// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/cautions.hpp>
#include <tankwright/vessel/materials.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(materials, "materials", "How much stress may glass bear for good?") {
  using namespace tankwright;
  const double b = s.given("f3", "surface stress for 3 s, ASTM E1300", 23.3, 1, "MPa");
  const double d = s.given("d", "a test fill lasts", 12, 0, "h");
  s.wanted("The same for the test fill, and for years.");
  const double k = vessel::glass_load_duration_factor(hours(d));
  s.step("k", "factor = (d/3 s)^(-1/16)", k, 2);
  s.result("fd", "during the test fill = k f3", k * b, 1, "MPa");
  s.result("f", "for good = 0.31 f3",
           vessel::for_permanent_load(
               {"surface", megapascals(b), vessel::load_basis::short_term, standing::from_memory, "ASTM E1300"})
                   .value.value() /
               1e6,
           1, "MPa");
  s.means(
      "Glass that stood the test fill has not shown that it stands for years: it then bears little more than half. The "
      "library "
      "allows 5 MPa by default, less than this.");
  s.caution(vessel::panel_caution);
}
