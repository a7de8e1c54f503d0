// SPDX-License-Identifier: BSL-1.0
#include <tankwright/decisions.hpp>

#include <cmath>
#include <random>
#include <set>
#include <tankwright/plan/validate.hpp>

#include "decisions/asked.hpp"
#include "plan/basin.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

evidence property_of(const char* function, const char* which) { return {function, kind::property, which}; }
evidence wired(const char* function) { return {function, kind::wiring, "one decision asked alone, all together"}; }

/// The basin with a display that holds water, so that a whole day of findings is asked.
plan::build lagoon_with_sump() {
  plan::build build = lagoon();
  build.plumbing = basin().plumbing;
  return build;
}

}  // namespace

TEST_CASE("assess: each decision once, by itself as in the whole") {
  const auto all = decisions::all_decisions();
  std::set<std::string_view> ids;
  for (const auto* d : all) ids.insert(d->id);
  TW_HOLDS(property_of("tankwright::decisions::all_decisions", "no id twice"), ids.size() == all.size());
  CHECK(ids.size() >= 80);
  const plan::build build = lagoon_with_sump();
  const auto whole = decisions::assess(build);
  for (const auto& f : whole.findings) {
    const auto alone = decisions::assess_one(build, f.id);
    REQUIRE(alone.size() == 1);
    TW_HOLDS(wired("tankwright::decisions::assess_one"), alone.front().verdict == f.verdict);
    TW_HOLDS(wired("tankwright::decisions::assess"), alone.front().numbers.size() == f.numbers.size());
    for (const auto& n : f.numbers) CHECK((n.value.low <= n.value.central && n.value.central <= n.value.high));
  }
  CHECK_THROWS_AS((void)decisions::assess_one(build, "sump.power_cutt"), invalid_input);
  CHECK_THROWS_AS((void)decisions::assess(plan::build{}), plan::invalid_plan);
  CHECK(whole.find("sump.power_cut") != nullptr);
  CHECK_THROWS_AS((void)whole.at("none"), invalid_input);
}

TEST_CASE("assess: a value that one formula refuses silences its finding, not the report") {
  plan::build build = lagoon_with_sump();
  give(build, {{"water.temperature", "24 C"}, {"water.target", "60"}});  // beyond the published scales
  const auto all = decisions::assess(build);
  CHECK(all.at("plumbing.drains").verdict != verdict::for_information);
  bool silenced = false;
  for (const auto& f : all.findings) silenced = silenced || f.verdict == verdict::not_enough_known;
  CHECK(silenced);
}

TEST_CASE("first screen: by verdict, the gravest consequence first, recommendations apart") {
  decisions::assessment all;
  const auto add = [&](std::string_view id, verdict v, decisions::consequence c, bool advice = false) {
    decisions::finding& f = all.findings.emplace_back();
    f.id = id, f.verdict = v, f.consequence = c, f.recommendation = advice;
  };
  add("money", verdict::does_not_hold, decisions::consequence::money);
  add("injury", verdict::does_not_hold, decisions::consequence::injury);
  add("advice", verdict::does_not_hold, decisions::consequence::comfort, true);
  add("fine", verdict::holds, decisions::consequence::flood);
  const auto screen = decisions::screen_of(all);
  TW_HOLDS(property_of("tankwright::decisions::screen_of", "the order of the page"), screen.does_not_hold.size() == 2);
  TW_HOLDS(property_of("tankwright::decisions::screen_of", "the order of the page"),
           screen.does_not_hold.front()->id == "injury");
  TW_HOLDS(property_of("tankwright::decisions::screen_of", "the order of the page"),
           screen.recommendations.front()->id == "advice");
  TW_HOLDS(property_of("tankwright::decisions::screen_of", "the order of the page"), screen.hold == 1);
  decisions::finding f;
  f.margin("left", "left", metres(1.0), metres(0.0)).answer("found", "found", metres(2.0));
  TW_HOLDS(property_of("tankwright::decisions::headline_of", "the answer before the margin"),
           decisions::headline_of(f)->id == "found");
}

TEST_CASE("verdict by chance: at 50 and 97.5 %, and at the smallest useful room") {
  const evidence rule{"tankwright::decisions::judge_by_chance", kind::identity,
                      "the rule as it is stated, case by case"};
  TW_HOLDS(rule, decisions::judge_by_chance(0.4999, 1.0, 0.0) == verdict::does_not_hold);
  TW_HOLDS(rule, decisions::judge_by_chance(0.5, 1.0, 0.0) == verdict::thin_margin);
  TW_HOLDS(rule, decisions::judge_by_chance(0.9749, 1.0, 0.0) == verdict::thin_margin);
  TW_HOLDS(rule, decisions::judge_by_chance(0.975, 1.0, 0.5) == verdict::holds);
  TW_HOLDS(rule, decisions::judge_by_chance(1.0, 0.5, 0.5) == verdict::thin_margin);
  TW_HOLDS(rule, decisions::judge_by_chance(std::nan(""), 0.5, 0.5) == verdict::not_enough_known);
}

TEST_CASE("bands: the doubts of a plan, and a band that holds 95 of 100 plain random draws") {
  plan::build build = basin();
  plan::set(build, "plumbing.return[1].below_edge", "20 mm +/- 10 mm");
  const auto doubts = decisions::doubts_of(build);
  const auto outlet = std::find_if(doubts.begin(), doubts.end(),
                                   [](const auto& d) { return d.path == "plumbing.return[return].below_edge"; });
  REQUIRE(outlet != doubts.end());
  TW_CHECK(wired("tankwright::decisions::doubts_of"), outlet->half_width, 0.010, relative(1e-12));
  CHECK_FALSE(outlet->assumed);
  const auto banded = decisions::assess_with_doubts(build, {.samples = 1024});
  const auto again = decisions::assess_with_doubts(build, {.samples = 1024});
  const auto& number = *banded.all.at("sump.running").find("left", "pump");
  CHECK(number.value.low == again.all.at("sump.running").find("left", "pump")->value.low);  // the same every time
  // Rim and running level, each even within its doubt (3 mm and 4 mm): 20,000 draws of the standard library.
  std::mt19937_64 random{20261128};
  std::uniform_real_distribution<double> even{-1.0, 1.0};
  int inside = 0;
  for (int i = 0; i < 20000; ++i) {
    const double left = 0.45 + 0.003 * even(random) - (0.25 + 0.004 * even(random));
    inside += left >= number.value.low && left <= number.value.high;
  }
  const evidence coverage{"tankwright::decisions::assess_with_doubts", kind::identity, "plain random draws"};
  TW_CHECK(coverage, inside / 20000.0, 0.95, within(0.02));
}

TEST_CASE("what would hold: an outlet that is too deep is raised, and one step less does not do") {
  plan::build build = basin();
  plan::set(build, "plumbing.return[1].below_edge", "150 mm");
  const decisions::search quick{.grid = 16, .samples = 256};
  const auto found = decisions::what_would_hold(build, "sump.power_cut", quick);
  REQUIRE(!found.cures.empty());
  for (const auto& cure : found.cures) {
    plan::build changed = build;
    for (const auto& c : cure.changes) plan::set(changed, c.path, c.to);
    const auto after = decisions::assess_with_doubts(changed, {.samples = 256});
    CHECK(cure.changes.front().is.has_value());
    TW_HOLDS(property_of("tankwright::decisions::what_would_hold", "every cure holds"),
             after.all.at("sump.power_cut").verdict == verdict::holds);
  }
  const auto raised = decisions::value_that_holds(build, "plumbing.return[return].below_edge", "sump.power_cut", quick);
  REQUIRE(raised.has_value());
  plan::build less = build;
  plan::set(less, "plumbing.return[return].below_edge", raised->changes.front().to);
  const double at = plan::get_si(less, "plumbing.return[return].below_edge");
  plan::set_si(less, "plumbing.return[return].below_edge", at + 0.003);
  TW_HOLDS(property_of("tankwright::decisions::value_that_holds", "one step less does not hold"),
           decisions::assess_with_doubts(less, {.samples = 256}).all.at("sump.power_cut").verdict != verdict::holds);
  CHECK_THROWS_AS((void)decisions::value_that_holds(build, "plumbing.sump.rim", "sump.power_cut", quick),
                  invalid_input);
  CHECK_THROWS_AS((void)decisions::value_that_holds(build, "plumbing.reserve", "sump.power_cut", quick), invalid_input);
  CHECK_THROWS_AS((void)decisions::what_would_hold(build, "salt.mix", quick), invalid_input);
  const auto fine = decisions::what_would_hold(basin(), "sump.power_cut", quick);
  CHECK(fine.cures.empty());
  CHECK(fine.holds);
  // Bad questions: of a key that is no number, that does nothing for it, and of a finding that is none.
  CHECK_THROWS_AS((void)decisions::value_that_holds(build, "plumbing.return[return].label", "sump.power_cut", quick),
                  invalid_input);
  CHECK_THROWS_AS(
      (void)decisions::value_that_holds(build, "plumbing.return[return].below_ege", "sump.power_cut", quick),
      invalid_input);
  CHECK_THROWS_AS((void)decisions::what_would_hold(build, "sump.power_cutt", quick), invalid_input);
}

TEST_CASE("while a key runs, and two plans side by side") {
  const auto course = decisions::finding_while(basin(), "plumbing.return[1].below_edge", 0.0, 0.2, 5, "sump.power_cut");
  REQUIRE(course.size() == 5);
  for (std::size_t i = 1; i < course.size(); ++i) {
    TW_HOLDS(property_of("tankwright::decisions::finding_while", "a deeper outlet leaves less"),
             course[i].answer->margin()->value.central < course[i - 1].answer->margin()->value.central);
  }
  CHECK_THROWS_AS((void)decisions::finding_while(basin(), "plumbing.lift", 0.0, 1.0, 1, "sump.power_cut"),
                  invalid_input);
  plan::build deeper = basin();
  plan::set(deeper, "plumbing.return[1].below_edge", "200 mm");
  const auto apart = decisions::compare(basin(), deeper);
  REQUIRE(apart.changed.size() == 1);
  TW_HOLDS(property_of("tankwright::decisions::compare", "what was changed, and no more"),
           apart.changed.front().from == "20 mm");
  TW_HOLDS(property_of("tankwright::decisions::compare", "what was changed, and no more"), !apart.moved.empty());
}
