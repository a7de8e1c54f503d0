// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <limits>
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

const evidence ordered{"tankwright::decisions::measure_first", kind::identity, "the order written out by hand"};

estimate<double> between(double low, double central, double high) { return {low, central, high, "test"}; }

finding named(std::string_view id, consequence at_stake = consequence::money) {
  finding f;
  f.id = id;
  f.question = id;
  f.consequence = at_stake;
  f.measure_next = {"measure " + std::string{id}};
  return f;
}
finding answering(std::string_view id, const estimate<double>& n) { return named(id).answer("n", "n", n); }
finding judged(std::string_view id, const estimate<double>& n, consequence c = consequence::money) {
  return named(id, c).margin("left", "left", n, 0.0);
}
finding unknown(std::string_view id) {
  finding f = named(id);
  f.verdict = verdict::not_enough_known;
  return f;
}

std::vector<std::string> ids(const std::vector<decisions::next_measurement>& all) {
  std::vector<std::string> names;
  for (const auto& m : all) names.emplace_back(m.id);
  return names;
}
using names = std::vector<std::string>;

}  // namespace

TEST_CASE("measure first: what may turn out either way, what is unknown, what is thin, what is wide") {
  decisions::assessment all{.title = "plan"};
  finding thin = named("thin").margin("left", "left", between(0.1, 0.2, 0.3), 1.0);
  all.findings = {answering("wide", between(1.0, 2.0, 9.0)),
                  thin,
                  answering("narrow", between(1.0, 1.01, 1.02)),
                  unknown("unknown"),
                  judged("hardly", between(-9.0, -5.0, 1.0)),
                  judged("either", between(-4.0, 1.0, 6.0))};
  CHECK(all.findings[1].verdict == verdict::thin_margin);
  TW_HOLDS(ordered, (ids(measure_first(all, 10)) == names{"either", "hardly", "unknown", "thin", "wide", "narrow"}));
  const auto three = measure_first(all);
  TW_HOLDS(ordered, (ids(three) == names{"either", "hardly", "unknown"}));
  CHECK(three[0].what == "measure either");
  CHECK(three[0].verdict == verdict::thin_margin);
  CHECK(measure_first(all, 0).empty());
}

TEST_CASE("measure first: of equally open findings the graver consequence, then the earlier one") {
  decisions::assessment all{.title = "plan"};
  all.findings = {judged("money", between(-1.0, 0.5, 1.0)), judged("animals", between(-1.0, 0.5, 1.0), consequence::animals),
                  judged("flood", between(-1.0, 0.5, 1.0), consequence::flood), judged("later", between(-1.0, 0.5, 1.0))};
  TW_HOLDS(ordered, (ids(measure_first(all, 10)) == names{"flood", "animals", "money", "later"}));
}

TEST_CASE("measure first: only the margin that decides counts, not its neighbours") {
  decisions::assessment all{.title = "plan"};
  finding f = named("f");
  f.margin("a", "a", between(-3.0, -2.0, -1.0), 0.0).margin("b", "b", between(-1.0, 1.0, 3.0), 0.0);
  all.findings = {unknown("unknown"), f};
  TW_HOLDS(ordered, (ids(measure_first(all, 10)) == names{"unknown", "f"}));
}

TEST_CASE("measure first: nothing twice, nothing without a measurement, and bands that are no numbers") {
  decisions::assessment all{.title = "plan"};
  CHECK(measure_first(all).empty());
  const double infinite = std::numeric_limits<double>::infinity();
  all.findings = {unknown("a"), unknown("b"), answering("c", between(0.0, 1.0, infinite)),
                  named("d").margin("left", "left", amount{"number", std::nan(""), std::nan(""), 1.0}, 0.0)};
  all.findings[1].measure_next = all.findings[0].measure_next;
  all.findings[2].measure_next.clear();
  TW_HOLDS(ordered, (ids(measure_first(all)) == names{"a", "d"}));
}
