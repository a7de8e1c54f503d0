// SPDX-License-Identifier: BSL-1.0
#include <tankwright/commissioning/assess.hpp>

#include <algorithm>
#include <vector>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twc = tankwright::commissioning;

namespace {

const evidence by_hand{"tankwright::commissioning::assess", kind::identity, "the sections called by hand"};
const evidence shared{"tankwright::commissioning::state_of", kind::identity, "the sections' own figures"};

twc::water_plan lagoon_water() {
  twc::water_plan plan{.temperature = celsius(24.0)};
  plan.new_water = estimate<volume>{litres(2100.0), litres(2150.0), litres(2200.0), "tape measure"};
  plan.target = practical_salinity{35.0};
  return plan;
}

twc::plumbing_plan lagoon_plumbing() {
  twc::plumbing_plan plan{
      .display = {.surface = square_metres(2.4),
                  .edge = tankwright::plumbing::full_width_edge{.width = metres(0.8), .crest_height = metres(0.8)}},
      .sump = {.rim = metres(0.45), .running_level = metres(0.25), .chambers = {{.label = "pump", .plan = square_metres(0.9)}}}};
  plan.returns = {{.label = "return", .below_edge = millimetres(20.0)}};
  return plan;
}

/// Every number of two findings, for comparison.
std::vector<double> numbers(const std::vector<twc::finding>& all) {
  std::vector<double> flat;
  for (const auto& f : all) {
    for (const auto& e : f.numbers) flat.insert(flat.end(), {e.value.low, e.value.central, e.value.high});
  }
  return flat;
}

}  // namespace

TEST_CASE("assess: nothing in, nothing out") { CHECK(twc::assess({.title = "empty"}).findings.empty()); }

TEST_CASE("assess: the sections in the order of the job, identical to calling them") {
  const twc::plan plan{.title = "two sections", .plumbing = lagoon_plumbing(), .water = lagoon_water()};
  const auto all = twc::assess(plan);
  const auto state = twc::state_of(plan);
  std::vector<twc::finding> expected = twc::assess_plumbing(*plan.plumbing, state);
  for (auto& f : twc::assess_power_cut(*plan.plumbing, state)) expected.push_back(std::move(f));
  for (auto& f : twc::assess_water(*plan.water)) expected.push_back(std::move(f));
  REQUIRE(all.findings.size() == expected.size());
  for (std::size_t i = 0; i < expected.size(); ++i) CHECK(all.findings[i].id == expected[i].id);
  const auto got = numbers(all.findings);
  const auto wanted = numbers(expected);
  REQUIRE(got.size() == wanted.size());
  for (std::size_t i = 0; i < wanted.size(); ++i) TW_CHECK(by_hand, got[i], wanted[i], relative(0.0));
}

TEST_CASE("assess: one net volume feeds the sections") {
  twc::plan plan{.title = "shared", .plumbing = lagoon_plumbing(), .water = lagoon_water()};
  const auto state = twc::state_of(plan);
  REQUIRE(state.display_water);
  REQUIRE(state.sump_water);
  // The sump: 0.9 m2 at 0.25 m; the display has the rest of the new water.
  TW_CHECK(shared, state.sump_water->central, litres(225.0), relative(1e-9));
  TW_CHECK(shared, state.display_water->central, litres(2150.0 - 225.0), relative(1e-9));
  TW_CHECK(shared, state.all_water()->central, litres(2150.0), relative(1e-9));
  TW_CHECK(shared, state.salinity, practical_salinity{35.0}, relative(1e-15));
  // And where the plan does not say how much water to make, salt is reckoned for what is there.
  plan.water->new_water.reset();
  const auto findings = twc::assess(plan).findings;
  const auto mix = std::find_if(findings.begin(), findings.end(), [](const auto& f) { return f.id == "salt.mix"; });
  REQUIRE(mix != findings.end());
  CHECK(mix->says == twc::verdict::not_enough_known);  // neither vessel nor volume is given
}

TEST_CASE("assess: ids are unique, and what is not enough known says what it needs") {
  const auto findings = twc::assess({.title = "all", .plumbing = lagoon_plumbing(), .water = lagoon_water()}).findings;
  for (std::size_t i = 0; i < findings.size(); ++i) {
    for (std::size_t j = i + 1; j < findings.size(); ++j) CHECK(findings[i].id != findings[j].id);
    if (findings[i].says == twc::verdict::not_enough_known) CHECK_FALSE(findings[i].measure_next.empty());
    CHECK_FALSE(findings[i].question.empty());
  }
}
