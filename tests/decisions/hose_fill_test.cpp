// SPDX-License-Identifier: BSL-1.0
#include <tankwright/decisions/first_fill/hose_fill.hpp>

#include "decisions/asked.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {
const evidence by_hand{"tankwright::decisions::answer_hose_fill", kind::identity, "length times width times level"};
}

TEST_CASE("hose fill: the meter counts length times width times level") {
  // 2.40 m by 1.00 m, 0.85 m high, water at 0.80 m; what lies in it does not count on the first fill.
  const auto f = answered(decisions::hose_fill, changed(lagoon(), {{"vessel.stages", "0.2 m, 0.8 m"}}));
  TW_CHECK(by_hand, number(f, "full"), 2.4 * 1.0 * 0.8, relative(1e-14));
  TW_CHECK(by_hand, number(f, "metered", "stage 1"), 2.4 * 0.2, relative(1e-14));
  TW_CHECK(by_hand, number(f, "metered", "stage 2"), 2.4 * 0.8, relative(1e-14));
  TW_CHECK(by_hand, number(f, "to_rim"), 2.4 * 0.05, relative(1e-12));
  CHECK(f.verdict == decisions::verdict::for_information);
  CHECK_FALSE(f.caution.empty());
}

TEST_CASE("hose fill: filled to the rim nothing is left, and nothing is asked without a display") {
  const auto brim = changed(lagoon(), {{"vessel.water_level", "0.85 m"}, {"vessel.stages", "0.85 m"}});
  TW_CHECK(by_hand, number(answered(decisions::hose_fill, brim), "to_rim"), 0.0,
           (tolerance{.absolute = 1e-12, .relative = 0.0}));
  plan::build none = lagoon();
  plan::clear(none, "vessel");
  CHECK(asked(decisions::hose_fill, none).empty());
}

TEST_CASE("hose fill: volume over flow, and how soon a forgotten hose runs over") {
  // 1920 L at 600 L/h are 3.2 h; 120 L of room above the water level are 12 minutes.
  const auto f = answered(decisions::hose_fill,
                          changed(lagoon(), {{"vessel.stages", "0.2 m, 0.8 m"}, {"vessel.hose", "600 L/h"}}));
  TW_CHECK(by_hand, number(f, "hours"), 3.2 * 3600.0, relative(1e-12));
  TW_CHECK(by_hand, number(f, "after", "stage 1"), 0.8 * 3600.0, relative(1e-12));
  TW_CHECK(by_hand, number(f, "runs_over"), 12.0 * 60.0, relative(1e-10));
  CHECK(f.consequence == decisions::consequence::flood);
}
