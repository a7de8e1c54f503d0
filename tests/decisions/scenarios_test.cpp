// SPDX-License-Identifier: BSL-1.0
#include <algorithm>
#include <string_view>
#include <tankwright/decisions/scenarios.hpp>

#include "decisions/moving_in_plan.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::finding;
using decisions::scenario;
using decisions::verdict;

namespace {

bool has(const std::vector<std::string>& steps, std::string_view words) {
  return std::any_of(steps.begin(), steps.end(), [&](const auto& s) { return s.find(words) != std::string::npos; });
}

/// The same finding, from the assessment of the whole plan.
bool same(const finding& a, const finding& b) {
  if (a.id != b.id || a.verdict != b.verdict || a.numbers.size() != b.numbers.size()) return false;
  for (std::size_t i = 0; i < a.numbers.size(); ++i) {
    if (a.numbers[i].value.central != b.numbers[i].value.central) return false;
  }
  return true;
}

}  // namespace

TEST_CASE("a power failure: the findings of its day and what else the power keeps alive, as the whole plan has them") {
  const evidence about{"tankwright::decisions::power_failure", kind::wiring, "the whole plan assessed"};
  const plan::build b = moving_in();
  const scenario answer = decisions::power_failure(b);
  const auto whole = decisions::assess(b);
  std::size_t expected = 0;
  for (const finding& f : whole.findings) {
    const bool belongs = f.day == decisions::day::power_cut || f.id == "life.power_cut" || f.id == "room.outage";
    expected += belongs;
    const auto there =
        std::find_if(answer.findings.begin(), answer.findings.end(), [&](const finding& g) { return same(f, g); });
    TW_HOLDS(about, belongs == (there != answer.findings.end()));
  }
  TW_HOLDS(about, expected >= 1 && answer.findings.size() == expected);
  TW_HOLDS(about, answer.verdict == decisions::worst_of(answer.findings));
  TW_HOLDS(about, answer.steps.empty());
  plan::build bad = b;
  plan::set(bad, "life.room.width", "3 m");
  CHECK_THROWS_AS((void)decisions::power_failure(bad), plan::invalid_plan);
}

TEST_CASE("a changeover: steps in order, and one more for what does not hold yet") {
  const evidence about{"tankwright::decisions::changeover", kind::wiring, "the whole plan assessed"};
  const plan::build b = moving_in();
  const scenario answer = decisions::changeover(b);
  // Without a volume of water the filter is not known, and the arrivals do not fit.
  const auto of = [&](std::string_view id) {
    const auto it =
        std::find_if(answer.findings.begin(), answer.findings.end(), [&](const auto& f) { return f.id == id; });
    REQUIRE_MESSAGE(it != answer.findings.end(), std::string{id});
    return it->verdict;
  };
  TW_HOLDS(about, of("life.filter_today") == verdict::not_enough_known);
  TW_HOLDS(about, of("life.arrivals") == verdict::does_not_hold);
  TW_HOLDS(about, answer.verdict == verdict::does_not_hold);
  TW_HOLDS(about, has(answer.steps, "hold the animals back"));
  TW_HOLDS(about, has(answer.steps, "clean water of their own salinity"));
  TW_HOLDS(about, !has(answer.steps, "correct the new water"));
  TW_HOLDS(about, answer.steps.front().starts_with("bring the new water"));
  TW_HOLDS(about, answer.steps.back().starts_with("move the animals"));
  const evidence practice{"tankwright::decisions::changeover", kind::common_practice,
                          "rock and fish move together, so that the bacteria keep their ammonia (no source)"};
  TW_HOLDS(practice, has(answer.steps, "bacteria keep their ammonia"));

  plan::build quiet;
  plan::set(quiet, "life.room.run", "2 m");
  plan::set(quiet, "life.room.width", "1 m");
  const scenario nothing = decisions::changeover(quiet);
  TW_HOLDS(about, nothing.findings.empty() && nothing.verdict == verdict::for_information);
  TW_HOLDS(about, !has(nothing.steps, "hold the animals back") && has(nothing.steps, "challenge test"));
}
