// SPDX-License-Identifier: BSL-1.0
#include <tankwright/decisions/first_fill/metered_water.hpp>

#include "decisions/asked.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {
const evidence by_hand{"tankwright::decisions::answer_metered_water", kind::identity, "length times width times level"};

// 2.40 m by 1.00 m, water at 0.80 m: 1920 L; 3 % of them are 57.6 L.
decisions::finding counted(const char* metered) {
  return answered(decisions::metered_water, changed(lagoon(), {{"vessel.metered", metered}}));
}
}  // namespace

TEST_CASE("metered water: what the meter counted less length times width times level") {
  const auto f = counted("1940 L");
  TW_CHECK(by_hand, number(f, "computed"), 1.92, relative(1e-14));
  TW_CHECK(by_hand, number(f, "more"), 0.02, relative(1e-12));
  TW_CHECK(by_hand, number(f, "allowed"), 0.0576, relative(1e-13));
  TW_CHECK(by_hand, number(f, "left"), 0.0376, relative(1e-12));
  judged(f, verdict::holds, "left");
}

TEST_CASE("metered water: too much and too little do not hold, each with its words") {
  const auto more = counted("1980 L"), less = counted("1860 L");
  judged(more, verdict::does_not_hold, "left");
  judged(less, verdict::does_not_hold, "left");
  TW_CHECK(by_hand, number(less, "left"), 0.0576 - 0.06, relative(1e-11));
  CHECK(more.happens.starts_with("More water"));
  CHECK(less.happens.starts_with("Less water"));
  CHECK_FALSE(more.caution.empty());
}

TEST_CASE("metered water: a difference as large as is allowed does not hold, a litre less does") {
  plan::build build = lagoon();
  plan::set_si(build, "vessel.metered", 1.5 * 2.4 * 0.8);
  plan::set_si(build, "vessel.metered_within", 0.5);
  judged(answered(decisions::metered_water, build), verdict::does_not_hold, "left");
  plan::set_si(build, "vessel.metered", 1.5 * 2.4 * 0.8 - 0.001);
  judged(answered(decisions::metered_water, build), verdict::holds, "left");
}

TEST_CASE("metered water: without a meter nothing is asked") {
  CHECK(asked(decisions::metered_water, lagoon()).empty());
  plan::build none = changed(lagoon(), {{"vessel.metered", "1920 L"}});
  plan::clear(none, "vessel");
  CHECK(asked(decisions::metered_water, none).empty());
}
