// SPDX-License-Identifier: BSL-1.0
#include <tankwright/decisions/closing/rock_view.hpp>

#include "decisions/asked.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

const evidence by_hand{"tankwright::decisions::answer_rock_view", kind::identity, "Snell's law by hand"};

}  // namespace

TEST_CASE("rock view: how near the rock seems, and the room in front of it") {
  const auto f = answered(decisions::rock_view, lagoon());
  const double n = vessel::seawater_index.value();
  TW_CHECK(by_hand, number(f, "seems"), 0.32 / n + 0.0182 / 1.52, relative(1e-13));
  TW_CHECK(by_hand, number(f, "clearance_seems"), 0.30 / n + 0.0182 / 1.52, relative(1e-13));
  TW_CHECK(by_hand, number(f, "left"), 0.02, relative(1e-12));
  judged(f, verdict::holds, "left");
  const auto acrylic = answered(decisions::rock_view, lagoon(), {{"vessel.view.panel", "acrylic"}});
  TW_CHECK(by_hand, number(acrylic, "seems"), 0.32 / n + 0.0182 / 1.49, relative(1e-13));
}

TEST_CASE("rock view: less room than the animals need does not hold, nor does just as much") {
  judged(answered(decisions::rock_view, lagoon(), {{"vessel.view.least_clearance", "0.33 m"}}), verdict::does_not_hold,
         "left");
  judged(answered(decisions::rock_view, lagoon(), {{"vessel.view.least_clearance", "0.32 m"}}), verdict::does_not_hold,
         "left");
  plan::build large = lagoon();
  plan::clear(large, "vessel.view.least_clearance");
  TW_CHECK(by_hand, number(answered(decisions::rock_view, large), "clearance"), 18.0 * 0.0254, relative(1e-14));
  plan::clear(large, "vessel.view");
  CHECK(asked(decisions::rock_view, large).empty());
}
