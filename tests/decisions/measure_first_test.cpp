// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <string>
#include <tankwright/decisions/measure_first.hpp>
#include <vector>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::consequence;
using decisions::finding;
using decisions::verdict;

namespace {

const evidence ordered{"tankwright::decisions::measure_first", kind::identity, "the order and the normal law by hand"};

/// A margin that a doubt `path` moves evenly by +-half, and others by a spread of their own.
struct made {
  decisions::banded_assessment judged{};
  std::vector<decisions::shares_of_finding> shares{};
  plan::build build{};

  void add(std::string_view id, double mean, double half, double rest, verdict v, consequence at_stake,
           std::string path) {
    finding& f = judged.all.findings.emplace_back();
    f.id = id, f.question = id, f.consequence = at_stake;
    f.margin("left", "left", amount{"length", mean - half, mean, mean + half, "test"}, 0.0);
    f.verdict = v;
    const double own = half * half / 3.0, all = own + rest * rest;
    judged.sampled.push_back({.id = id, .chance = 0.8, .samples = 1024, .mean = mean, .spread = std::sqrt(all)});
    judged.doubts.push_back({path, half, true, "a length", "length", 1.0});
    const double node = half * 0.7745966692414834;
    shares.push_back({id, "left", {}, {{std::move(path), false, own / all, mean - node, mean, mean + node}}, rest * rest / all});
  }
};

}  // namespace

TEST_CASE("measure first: the chance that a verdict turns, by hand") {
  made m;
  // Even between -1 and 3 mm with next to nothing else: known exactly, it does not hold for a quarter of its values, is
  // thin only near zero, and holds for nearly three quarters: the thin verdict turns nearly always.
  m.add("thin", 0.001, 0.002, 1e-6, verdict::thin_margin, consequence::money, "a.b");
  const auto first = decisions::measure_first(m.build, m.judged, m.shares);
  REQUIRE(first.size() == 1);
  TW_CHECK(ordered, first[0].turns, 1.0, within(0.01));
  CHECK(first[0].path == "a.b");
  CHECK(first[0].what == "Measure more closely: a length (a.b, taken as good to 2 mm)");
  // The same margin that does not hold: it turns where it is positive, three quarters of the way.
  m.judged.all.findings[0].verdict = verdict::does_not_hold;
  TW_CHECK(ordered, decisions::measure_first(m.build, m.judged, m.shares)[0].turns, 0.75, within(0.01));
}

TEST_CASE("measure first: the graver consequence before the greater chance, none twice, none that turns nothing") {
  made m;
  m.add("money", 0.001, 0.002, 1e-6, verdict::thin_margin, consequence::money, "a.b");
  m.add("flood", 0.001, 0.002, 0.001, verdict::thin_margin, consequence::flood, "c.d");
  m.add("far", -1.0, 0.002, 0.001, verdict::does_not_hold, consequence::injury, "e.f");
  m.add("holds", 0.001, 0.002, 1e-6, verdict::holds, consequence::injury, "g.h");
  m.add("again", 0.001, 0.002, 1e-6, verdict::thin_margin, consequence::comfort, "c.d");
  const auto first = decisions::measure_first(m.build, m.judged, m.shares, 10);
  std::vector<std::string> ids;
  for (const auto& one : first) ids.emplace_back(one.id);
  TW_HOLDS(ordered, (ids == std::vector<std::string>{"flood", "money"}));
  CHECK(decisions::measure_first(m.build, m.judged, m.shares, 0).empty());
}
