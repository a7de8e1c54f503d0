// SPDX-License-Identifier: BSL-1.0
// What the rest of the house takes from [plumbing] besides its inputs: names of pumps, doubts of areas and levels.
#include <tankwright/plan/inputs/plumbing_inputs.hpp>

#include "plan/basin.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

TEST_CASE("plumbing: a pump without a label goes by the word pump") {
  const evidence name{"tankwright::plan::label_of", kind::property, "as described"};
  TW_HOLDS(name, plan::label_of({}) == "pump");
  TW_HOLDS(name, plan::label_of({.label = "left"}) == "left");
}

TEST_CASE("plumbing: how well areas and levels are known is what the plan says, else what is usual") {
  const evidence areas{"tankwright::plan::doubt_of_areas", kind::identity, "by hand"};
  const evidence levels{"tankwright::plan::doubt_of_levels", kind::identity, "by hand"};
  const auto doubts = [](key_texts changes) {
    plan::build build = basin();
    give(build, changes);
    return std::pair{plan::doubt_of_areas(*build.plumbing), plan::doubt_of_levels(*build.plumbing)};
  };
  // 0.06 m2 of 2.4 m2 are 2.5 %.
  TW_CHECK(areas, doubts({{"plumbing.overflow.surface", "2.4 m2 +/- 0.06 m2"}}).first, percent(2.5), relative(1e-14));
  TW_CHECK(levels, doubts({{"plumbing.sump.running_level", "250 mm +/- 7 mm"}}).second, millimetres(7.0),
           relative(1e-12));
  // Nothing said: an area from two lengths within 3 %, a moving water level within 4 mm (common practice, no source).
  TW_CHECK(areas, doubts({}).first, percent(3.0), relative(1e-14));
  TW_CHECK(levels, doubts({}).second, millimetres(4.0), relative(1e-14));
  TW_CHECK(areas, plan::doubt_of_areas({}), percent(3.0), relative(1e-14));
  TW_CHECK(levels, plan::doubt_of_levels({}), millimetres(4.0), relative(1e-14));
}
