// SPDX-License-Identifier: BSL-1.0
#include <tankwright/core/units.hpp>
#include <tankwright/decisions/assessment.hpp>
#include <tankwright/decisions/decision.hpp>
#include <tankwright/decisions/finding.hpp>
#include <tankwright/decisions/said.hpp>
#include <tankwright/decisions/situation.hpp>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::answers;
using decisions::decision;
using decisions::finding;
using decisions::verdict;

namespace {

const evidence about{"tankwright::decisions::verdict_words", kind::identity, "by hand"};
const evidence worst{"tankwright::decisions::worst_of", kind::identity, "the order of verdicts"};

estimate<length> band(double low, double central, double high) {
  return {metres(low), metres(central), metres(high), "test"};
}

void answer_badly(const decisions::situation&, answers& out);
constexpr decision throwing{.id = "test.throwing",
                            .day = decisions::day::plumbing,
                            .question = "Does it throw?",
                            .consequence = decisions::consequence::flood,
                            .caution = "careful",
                            .answer = &answer_badly};
void answer_badly(const decisions::situation&, answers& out) {
  out.ask(throwing).margin("left", "left", metres(1.0), metres(0.0)).next("measure it").happens = "something";
  core::check("tankwright::test::engine", {"depth", "m", {0.0, 1.0}, {0.0, 0.5}, "a source"}, 0.7);
}

}  // namespace

TEST_CASE("what is said in a sentence: number and unit, in the plan's units") {
  const evidence words{"tankwright::decisions::said", kind::wiring, "three digits, written out"};
  plan::build build;
  TW_HOLDS(words, decisions::said(decisions::situation{build}, litres(663.2)) == "663 L");
}

TEST_CASE("of several margins the gravest decides, among equals the smallest of its kind") {
  finding f;
  f.margin("a", "a", band(0.1, 0.2, 0.3), metres(0.0));
  TW_HOLDS(about, f.verdict == verdict::holds && f.margin()->id == "a");
  f.margin("b", "b", band(0.05, 0.1, 0.3), metres(0.0), "second");
  TW_HOLDS(about, f.verdict == verdict::holds && f.margin()->id == "b");
  f.margin("c", "c", band(0.3, 0.5, 0.7), metres(0.4));  // larger, and too little of it is of use
  TW_HOLDS(about, f.verdict == verdict::thin_margin && f.margin()->id == "c" && f.useful == 0.4);
  f.margin("d", "d", band(-0.2, -0.1, 0.3), metres(0.0));
  TW_HOLDS(about, f.verdict == verdict::does_not_hold && f.margin()->id == "d");
  f.margin("e", "e", band(-0.2, -0.15, 0.3), metres(0.0));
  TW_HOLDS(about, f.margin()->id == "e");
  f.margin("f", "f", -50.0, 0.0);  // of another kind: cannot be compared
  TW_HOLDS(about, f.margin()->id == "e");
  f.margin("g", "g", band(1.0, 2.0, 3.0), metres(0.0));
  TW_HOLDS(about, f.verdict == verdict::does_not_hold && f.margin()->id == "e");
}

TEST_CASE("numbers are found by their id, and by their place where there are several") {
  finding f;
  f.answer("flow", "left", litres_per_hour(1.0), "left").answer("flow", "right", litres_per_hour(2.0), "right");
  f.limit("most", "at most", litres_per_hour(3.0)).detail("head", "head", metres(1.0));
  TW_HOLDS(about, f.find("flow")->place == "left");
  TW_HOLDS(about, f.find("flow", "right")->label == "right");
  TW_HOLDS(about, f.find("flow", "middle") == nullptr && f.find("none") == nullptr);
  TW_HOLDS(about, f.find("most")->as == decisions::role::limit && f.find("head")->as == decisions::role::detail);
  TW_HOLDS(about, f.margin() == nullptr && f.verdict == verdict::for_information);
  f.unknown("give the pump");
  TW_HOLDS(about, f.verdict == verdict::not_enough_known && f.measure_next.front() == "give the pump");
}

TEST_CASE("a recommendation is not worded like a failure") {
  finding f;
  f.recommendation = true;
  const auto words = [&](verdict v) {
    f.verdict = v;
    return decisions::verdict_words(f);
  };
  TW_HOLDS(about, words(verdict::holds) == "as recommended");
  TW_HOLDS(about, words(verdict::thin_margin) == "close to what is recommended");
  TW_HOLDS(about, words(verdict::does_not_hold) == "past what is recommended");
  TW_HOLDS(about, words(verdict::not_enough_known) == "not enough known");
  f.recommendation = false;
  TW_HOLDS(about, words(verdict::does_not_hold) == "does not hold");
}

TEST_CASE("what an engine refuses silences one finding, and says why without the C++ in it") {
  answers out;
  const plan::build build;
  const decisions::situation s{build};
  out.run(throwing, s);
  const auto all = out.take();
  REQUIRE(all.size() == 1);
  const finding& f = all.front();
  TW_HOLDS(about, f.verdict == verdict::not_enough_known);
  TW_HOLDS(about, f.numbers.empty() && f.margin() == nullptr && f.happens.empty() && f.measure_next.empty());
  TW_HOLDS(about, f.caution == "careful");
  TW_HOLDS(about, f.note == "depth = 0.7 m is outside the published range 0 to 0.5 m (a source)");
}

TEST_CASE("the worst verdict of some findings, and a finding by its id") {
  const auto of = [](verdict v) {
    finding f;
    f.verdict = v;
    return f;
  };
  TW_HOLDS(worst, decisions::worst_of({}) == verdict::for_information);
  TW_HOLDS(worst, decisions::worst_of({of(verdict::holds), of(verdict::for_information)}) == verdict::holds);
  TW_HOLDS(worst,
           decisions::worst_of({of(verdict::thin_margin), of(verdict::not_enough_known)}) == verdict::not_enough_known);
  TW_HOLDS(worst,
           decisions::worst_of({of(verdict::does_not_hold), of(verdict::not_enough_known)}) == verdict::does_not_hold);
  decisions::assessment all{.title = "plan", .findings = {of(verdict::holds)}};
  all.findings[0].id = "a.b";
  TW_HOLDS(about, all.find("a.b") == &all.findings[0] && all.find("a") == nullptr);
  TW_HOLDS(about, &all.at("a.b") == &all.findings[0]);
  CHECK_THROWS_WITH_AS((void)all.at("a.c"), "the assessment has no finding a.c", invalid_input);
}

TEST_CASE("days and consequences have words, in their order") {
  using decisions::consequence;
  using decisions::day;
  TW_HOLDS(about, words(day::first_fill) == "First fill" && words(day::moving_in) == "Moving in");
  TW_HOLDS(about, words(day::running) == "Running");
  TW_HOLDS(about, consequence::injury < consequence::flood && consequence::flood < consequence::animals);
  TW_HOLDS(about, words(consequence::flood) == "water on the floor" && words(consequence::money) == "money");
}
