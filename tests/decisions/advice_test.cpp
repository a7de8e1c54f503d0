// SPDX-License-Identifier: BSL-1.0
#include <tankwright/decisions/advice.hpp>

#include <tankwright/decisions/assess.hpp>

#include "plan/basin.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

TEST_CASE(
    "advice: a chance that can be worked out by hand, cures for what is open, and nothing of it by central values") {
  // Rim 252 mm, known to 3 mm; water at 250 mm, known to 4 mm: P(2 + a > b), a even within 3, b within 4, is
  // 1 - the integral of (2 - a)/8 over a/6 from -3 to 2 = 1 - 12.5/48.
  plan::build build = basin();
  give(build, {{"plumbing.sump.rim", "252 mm"}});
  std::size_t told = 0;
  const auto all =
      decisions::advise(build, {.samples = 512, .cures = 1, .progress = [&](auto, auto, auto) { ++told; }});
  const evidence by_hand{"tankwright::decisions::advise", kind::identity, "areas of a rectangle, by hand"};
  REQUIRE(all.chance_for("sump.running").has_value());
  TW_CHECK(by_hand, *all.chance_for("sump.running"), 1.0 - 12.5 / 48.0, within(0.01));
  CHECK(all.by_chance);
  CHECK(told > 2);
  REQUIRE(all.cures_for("sump.running") != nullptr);
  CHECK(all.cures_for("none") == nullptr);
  // 7.5 mm of room, 0.5 mm at the least: of the variance 9/3 and 16/3, which are 0.36 and 0.64.
  plan::build close = basin();
  give(close, {{"plumbing.sump.rim", "257.5 mm"}});
  const auto thin = decisions::advise(close, {.samples = 512, .cures = 0});
  REQUIRE(thin.shares_for("sump.running") != nullptr);
  TW_CHECK(by_hand, thin.shares_for("sump.running")->shares.front().part, 0.64, within(0.02));

  const auto quick = decisions::advise(build, {.doubts = false});
  CHECK_FALSE(quick.by_chance);
  CHECK(quick.cures.empty());
  CHECK(quick.shares.empty());
  CHECK(quick.first.empty());
  CHECK_FALSE(quick.chance_for("sump.running").has_value());
  CHECK(quick.judged.all.findings.size() == all.judged.all.findings.size());
}

TEST_CASE("advice: an executor that runs the parts backwards changes nothing") {
  plan::build build = basin();
  const decisions::executor backwards = [](std::size_t parts, const std::function<void(std::size_t)>& one) {
    for (std::size_t p = parts; p-- > 0;) one(p);
  };
  const auto forwards = decisions::advise(build, {.samples = 128, .cures = 1});
  const auto other = decisions::advise(build, {.samples = 128, .cures = 1, .run = backwards});
  REQUIRE(forwards.judged.all.findings.size() == other.judged.all.findings.size());
  for (std::size_t i = 0; i < forwards.judged.all.findings.size(); ++i) {
    const auto &one = forwards.judged.all.findings[i], &two = other.judged.all.findings[i];
    CHECK(one.verdict == two.verdict);
    for (std::size_t k = 0; k < one.numbers.size(); ++k) CHECK(one.numbers[k].value.low == two.numbers[k].value.low);
  }
}
