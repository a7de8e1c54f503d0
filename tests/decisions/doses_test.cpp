// SPDX-License-Identifier: BSL-1.0
#include <tankwright/decisions/salting/doses.hpp>

#include "decisions/asked.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

TEST_CASE("doses: the rise times the water, dry or from a solution") {
  const evidence hand{"tankwright::decisions::answer_doses", kind::identity, "worked by hand"};
  plan::build build;
  give(build, {{"water.temperature", "25 °C"},
               {"water.new_water", "2000 L"},
               {"water.dose[1].label", "powder"},
               {"water.dose[1].rise", "15 mg/L"},
               {"water.dose[2].label", "solution"},
               {"water.dose[2].rise", "2 mg/L"},
               {"water.dose[2].stock", "50 g/L"}});
  const auto f = answered(decisions::doses, build);
  TW_CHECK(hand, number(f, "amount", "powder"), 0.030, relative(1e-9));      // 30 g
  TW_CHECK(hand, number(f, "amount", "solution"), 80.0e-6, relative(1e-9));  // 4 g are 80 mL
  TW_CHECK(hand, band(f, "amount", "powder").low, 0.015 * band(f, "water").low, relative(1e-9));
  TW_CHECK(hand, band(f, "amount", "powder").high, 0.015 * band(f, "water").high, relative(1e-9));
  CHECK(f.verdict == verdict::for_information);
  plan::clear(build, "water.new_water");
  CHECK(answered(decisions::doses, build).verdict == verdict::not_enough_known);
  CHECK(asked(decisions::doses, lagoon()).empty());
}
