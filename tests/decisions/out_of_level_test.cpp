// SPDX-License-Identifier: BSL-1.0
#include <tankwright/decisions/first_fill/out_of_level.hpp>

#include "decisions/asked.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {
const evidence by_hand{"tankwright::decisions::answer_out_of_level", kind::identity, "hydrostatics by hand"};

// 0.85 m high, water at 0.80 m.
decisions::finding tilted(const char* by) {
  return answered(decisions::out_of_level, changed(lagoon(), {{"vessel.out_of_level", by}}));
}
}  // namespace

TEST_CASE("out of level: half of it deeper at one end, half shallower at the other") {
  const auto f = tilted("20 mm");
  TW_CHECK(by_hand, number(f, "depth"), 0.81, relative(1e-14));
  TW_CHECK(by_hand, number(f, "shallow"), 0.79, relative(1e-14));
  TW_CHECK(by_hand, number(f, "pressure"), 0.0125, relative(1e-12));  // 10 of 800 mm
  TW_CHECK(by_hand, number(f, "push"), 0.02515625, relative(1e-12));  // 1.0125^2 - 1
  TW_CHECK(by_hand, number(f, "left"), 0.04, relative(1e-12));
  judged(f, verdict::holds, "left");
}

TEST_CASE("out of level: at the rim and past it the low end runs over; a ripple of 2 mm is no room") {
  judged(tilted("120 mm"), verdict::does_not_hold, "left");
  CHECK(tilted("120 mm").happens.find("low end") != std::string::npos);
  plan::build build = lagoon();
  plan::set_si(build, "vessel.height", 0.75);
  plan::set_si(build, "vessel.water_level", 0.5);
  plan::set_si(build, "vessel.out_of_level", 0.5);
  judged(answered(decisions::out_of_level, build), verdict::does_not_hold, "left");  // exactly at the rim
  plan::set_si(build, "vessel.out_of_level", 0.4979);
  judged(answered(decisions::out_of_level, build), verdict::thin_margin, "left");  // 1.05 mm
  plan::set_si(build, "vessel.out_of_level", 0.4959);
  judged(answered(decisions::out_of_level, build), verdict::holds, "left");  // 2.05 mm
}

TEST_CASE("out of level: not asked where the plan does not say") {
  CHECK(asked(decisions::out_of_level, lagoon()).empty());
}
