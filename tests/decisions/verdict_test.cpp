// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <limits>
#include <tankwright/decisions/verdict.hpp>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::judge;
using decisions::verdict;

namespace {

const evidence rule{"tankwright::decisions::judge", kind::identity, "the rule as it is stated, case by case"};

amount between(double low, double central, double high) { return {"length", low, central, high, "test"}; }
double above(double x) { return std::nextafter(x, HUGE_VAL); }
double below(double x) { return std::nextafter(x, -HUGE_VAL); }

}  // namespace

TEST_CASE("a margin at zero does not hold; a step above it does") {
  TW_HOLDS(rule, judge(between(0.0, 0.0, 0.0), 0.0) == verdict::does_not_hold);
  TW_HOLDS(rule, judge(between(above(0.0), above(0.0), above(0.0)), 0.0) == verdict::holds);
  TW_HOLDS(rule, judge(between(below(0.0), below(0.0), below(0.0)), 0.0) == verdict::does_not_hold);
  TW_HOLDS(rule, judge(between(-1.0, 0.0, 1.0), 0.0) == verdict::does_not_hold);
  TW_HOLDS(rule, judge(between(-1.0, above(0.0), 1.0), 0.0) == verdict::thin_margin);
  TW_HOLDS(rule, judge(between(-0.0, -0.0, -0.0), 0.0) == verdict::does_not_hold);
}

TEST_CASE("the low end at zero is thin; a step above it holds") {
  TW_HOLDS(rule, judge(between(0.0, 1.0, 2.0), 0.0) == verdict::thin_margin);
  TW_HOLDS(rule, judge(between(above(0.0), 1.0, 2.0), 0.0) == verdict::holds);
  TW_HOLDS(rule, judge(between(below(0.0), 1.0, 2.0), 0.0) == verdict::thin_margin);
}

TEST_CASE("the smallest useful room: at it thin, a step more holds") {
  const double useful = 0.002;
  TW_HOLDS(rule, judge(between(useful, 0.005, 0.008), useful) == verdict::thin_margin);
  TW_HOLDS(rule, judge(between(above(useful), 0.005, 0.008), useful) == verdict::holds);
  TW_HOLDS(rule, judge(between(below(useful), 0.005, 0.008), useful) == verdict::thin_margin);
  TW_HOLDS(rule, judge(between(0.001, 0.001, 0.001), useful) == verdict::thin_margin);  // positive, and of no use
}

TEST_CASE("what is no number, or a band upside down, is not enough known") {
  const double nan = std::nan(""), inf = HUGE_VAL;
  for (const amount& a : {between(nan, 1.0, 2.0), between(1.0, nan, 2.0), between(inf, inf, inf),
                          between(-inf, 1.0, 2.0), between(1.0, inf, inf), between(2.0, 1.0, 3.0)}) {
    TW_HOLDS(rule, judge(a, 0.0) == verdict::not_enough_known);
  }
}

TEST_CASE("a verdict never contradicts the sign of its margin") {
  const evidence property{"tankwright::decisions::judge", kind::property, "all orders of five values"};
  const double values[] = {-1.0, -1e-300, 0.0, 1e-300, 1.0};
  for (const double low : values) {
    for (const double central : values) {
      for (const double high : values) {
        if (!(low <= central && central <= high)) continue;
        const verdict v = judge(between(low, central, high), 0.0);
        TW_HOLDS(property, (v == verdict::does_not_hold) == !(central > 0.0));
        TW_HOLDS(property, v != verdict::holds || low > 0.0);
      }
    }
  }
}

TEST_CASE("the order of verdicts, and their words") {
  const evidence order{"tankwright::decisions::worse_of", kind::identity, "the order as it is stated"};
  const evidence said{"tankwright::decisions::words", kind::identity, "the words as documented"};
  using enum verdict;
  const verdict ranked[] = {for_information, holds, thin_margin, not_enough_known, does_not_hold};
  for (std::size_t i = 0; i < std::size(ranked); ++i) {
    for (std::size_t j = 0; j < std::size(ranked); ++j) {
      TW_HOLDS(order, decisions::worse_of(ranked[i], ranked[j]) == ranked[i > j ? i : j]);
    }
  }
  TW_HOLDS(said, decisions::words(holds) == "holds");
  TW_HOLDS(said, decisions::words(thin_margin) == "thin margin");
  TW_HOLDS(said, decisions::words(does_not_hold) == "does not hold");
  TW_HOLDS(said, decisions::words(not_enough_known) == "not enough known");
  TW_HOLDS(said, decisions::words(for_information) == "for information");
}
