// SPDX-License-Identifier: BSL-1.0
#include <tankwright/commissioning/measure_first.hpp>

#include <cmath>
#include <limits>
#include <string>
#include <vector>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twc = tankwright::commissioning;

namespace {

const evidence ordered{"tankwright::commissioning::measure_first", kind::identity, "the order written out by hand"};

amount between(double low, double central, double high) { return {"number", low, central, high, "test"}; }

twc::finding finding_with(std::string_view id, twc::verdict says, std::vector<twc::entry> numbers) {
  twc::finding f{.id = id, .day = "Some day", .question = id, .says = says, .numbers = std::move(numbers)};
  f.measure_next = {"measure " + std::string{id}};
  return f;
}

std::vector<std::string> ids(const std::vector<twc::next_measurement>& all) {
  std::vector<std::string> names;
  for (const auto& m : all) names.emplace_back(m.id);
  return names;
}

}  // namespace

TEST_CASE("measure first: what may turn out either way, what is unknown, what is thin, what is wide") {
  using enum twc::verdict;
  using enum twc::role;
  twc::assessment all{.title = "plan"};
  all.findings = {finding_with("wide", for_information, {{"n", between(1.0, 2.0, 9.0), answer}}),
                  finding_with("thin", thin_margin, {{"left", between(0.1, 0.2, 0.3), margin}}),
                  finding_with("narrow", holds, {{"n", between(1.0, 1.01, 1.02), answer}}),
                  finding_with("unknown", not_enough_known, {}),
                  finding_with("hardly", does_not_hold, {{"left", between(-9.0, -5.0, 1.0), margin}}),
                  finding_with("either", thin_margin, {{"left", between(-4.0, 1.0, 6.0), margin}})};
  const std::vector<std::string> by_hand{"either", "hardly", "unknown", "thin", "wide", "narrow"};
  const auto order = ids(twc::measure_first(all, 10));
  REQUIRE(order.size() == by_hand.size());
  for (std::size_t i = 0; i < by_hand.size(); ++i) TW_HOLDS(ordered, order[i] == by_hand[i]);
  const auto three = twc::measure_first(all);
  CHECK(ids(three) == std::vector<std::string>{"either", "hardly", "unknown"});
  CHECK(three[0].what == "measure either");
  CHECK(three[0].says == thin_margin);
  CHECK(twc::measure_first(all, 0).empty());
}

TEST_CASE("measure first: nothing twice, nothing without a measurement, and bands that are no numbers") {
  using enum twc::verdict;
  twc::assessment all{.title = "plan"};
  CHECK(twc::measure_first(all).empty());
  const double infinite = std::numeric_limits<double>::infinity();
  all.findings = {finding_with("a", not_enough_known, {}), finding_with("b", not_enough_known, {}),
                  finding_with("c", for_information, {{"n", between(0.0, 1.0, infinite), twc::role::answer}}),
                  finding_with("d", for_information, {{"n", between(std::nan(""), std::nan(""), 1.0), twc::role::margin}})};
  all.findings[1].measure_next = all.findings[0].measure_next;
  all.findings[2].measure_next.clear();
  CHECK(ids(twc::measure_first(all)) == std::vector<std::string>{"a", "d"});
}
