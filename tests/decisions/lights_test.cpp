// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <tankwright/decisions/closing/lights.hpp>

#include "decisions/asked.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

const evidence by_hand{"tankwright::decisions::answer_lights", kind::identity, "worked by hand"};

plan::build lit() {
  plan::build build;
  give(build, {{"room.lights.height", "0.4 m"},
               {"room.lights.beam", "90 deg"},
               {"room.lights.spacing", "0.6 m"},
               {"room.lights.depth", "0.67 m"},
               {"room.lights.through_a_metre", "80 %"},
               {"room.lights.least_share", "10 %"}});
  return build;
}

}  // namespace

TEST_CASE("lights: width against spacing, share at the depth, and both at equality") {
  const auto f = answered(decisions::lights, lit());
  TW_CHECK(by_hand, number(f, "width"), 0.8, relative(1e-12));
  TW_CHECK(by_hand, number(f, "overlap"), 0.2, relative(1e-12));
  const double share = std::pow(0.4 / 0.9, 2.0) * std::pow(0.8, 0.67);  // 0.67 m of water like 0.5 m of air
  TW_CHECK(by_hand, number(f, "share"), share, relative(1e-12));
  TW_CHECK(by_hand, number(f, "left"), share - 0.1, relative(1e-12));
  CHECK(f.verdict == verdict::holds);
  judged(answered(decisions::lights, lit(), {{"room.lights.spacing", "1 m"}}), verdict::does_not_hold, "overlap");
  judged(answered(decisions::lights, lit(), {{"room.lights.least_share", "30 %"}}), verdict::does_not_hold, "left");
  const auto under_glass = answered(decisions::lights, lit(), {{"room.lights.through_cover", "90 %"}});
  TW_CHECK(by_hand, number(under_glass, "share"), 0.9 * share, relative(1e-12));
  plan::build equal = lit();
  plan::set_si(equal, "room.lights.least_share", number(f, "share"));
  judged(answered(decisions::lights, equal), verdict::does_not_hold, "left");
  CHECK(asked(decisions::lights, plan::build{}).empty());
}

TEST_CASE("lights: down to the bottom of the display, where no depth is given") {
  plan::build build = lagoon();  // filled to a depth that the plan knows
  give(build, {{"room.lights.height", "0.4 m"}, {"room.lights.beam", "60 deg"}});
  const auto f = answered(decisions::lights, build);
  const decisions::situation s{build};
  TW_CHECK(by_hand, number(f, "depth"), s.state().display_depth->value(), relative(1e-12));
  CHECK(f.verdict == verdict::for_information);
  plan::build unknown;
  give(unknown, {{"room.lights.height", "0.4 m"}, {"room.lights.beam", "60 deg"}});
  CHECK(answered(decisions::lights, unknown).verdict == verdict::not_enough_known);
}
