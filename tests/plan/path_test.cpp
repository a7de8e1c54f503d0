// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <string>
#include <tankwright/plan/path.hpp>

#include "plan/every_key.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

evidence about(const char* function) {
  return {std::string{"tankwright::plan::"} + function, kind::identity, "by hand"};
}

/// Two returns, one labelled.
plan::build two_returns() {
  plan::build build;
  plan::set(build, "plumbing.return[1].label", "left");
  plan::set(build, "plumbing.return[1].below_edge", "35 mm");
  plan::set(build, "plumbing.return[2].below_edge", "40 mm");
  return build;
}

}  // namespace

TEST_CASE("a path is names joined by points, with a label or a number in brackets") {
  const auto steps = plan::steps_of("plumbing.return[left. side].below_edge");
  REQUIRE(steps.size() == 3);
  TW_HOLDS(about("steps_of"), (steps[0] == plan::path_step{"plumbing"}));
  TW_HOLDS(about("steps_of"), (steps[1] == plan::path_step{"return", "left. side"}));
  TW_HOLDS(about("steps_of"), (steps[2] == plan::path_step{"below_edge"}));
  for (const std::string_view wrong : {"", ".", "a.", ".a", "a..b", "a[", "a[]", "a[b]c", "a[b", "[a]", "a[b][c]"}) {
    CAPTURE(wrong);
    CHECK_THROWS_AS((void)plan::steps_of(wrong), invalid_input);
  }
}

TEST_CASE("a key is set from text and read back as it was written") {
  plan::build build;
  const auto there_and_back = [&](std::string_view path, std::string_view text) {
    plan::set(build, path, text);
    TW_HOLDS(about("set"), plan::get(build, path) == text);
  };
  there_and_back("life.room.run", "2 m");
  there_and_back("life.room.run", "78.7 in");
  there_and_back("life.room.run", "2 m +/- 0.02 m");
  there_and_back("life.ph", "8.1 +/- 0.1");
  there_and_back("life.arrivals.temperature", "22.5 degC");
  there_and_back("life.food[1].kind", "wet");
  there_and_back("life.forecast", "false");
  there_and_back("title", "A lagoon, and \"more\"");
  there_and_back("plumbing.pump.flows", "0 L/h, 1000 L/h, 2000 L/h");
  there_and_back("plumbing.pump.flows[2]", "1500 L/h");
  TW_HOLDS(about("get"), plan::get(build, "plumbing.pump.flows") == "0 L/h, 1500 L/h, 2000 L/h");
  TW_CHECK(about("get_si"), plan::get_si(build, "life.room.run"), 2.0, relative(1e-15));
  TW_CHECK(about("get_si"), plan::get_si(build, "life.arrivals.temperature"), 295.65, relative(1e-15));
  TW_HOLDS(about("get_si"), std::isnan(plan::get_si(build, "life.room.width")));                // nobody said
  TW_CHECK(about("get_si"), plan::get_si(build, "life.arrivals.step"), 0.25, relative(1e-15));  // taken by default
  TW_HOLDS(about("get"), plan::get(build, "life.arrivals.step").empty());
}

TEST_CASE("a search moves the number, and unit and doubt stay") {
  plan::build build;
  plan::set(build, "life.room.run", "200 cm +/- 2 cm");
  plan::set_si(build, "life.room.run", 1.5);
  TW_HOLDS(about("set_si"), plan::get(build, "life.room.run") == "150 cm +/- 2 cm");
  plan::set(build, "life.room.run", metres(3.0));
  TW_CHECK(about("set_si"), plan::get_si(build, "life.room.run"), 3.0, relative(1e-15));
  CHECK_THROWS_WITH_AS(plan::set(build, "life.room.run", litres(3.0)), "life.room.run: holds a length, not a volume",
                       invalid_input);
  CHECK_THROWS_AS(plan::set_si(build, "life.forecast", 1.0), invalid_input);
  CHECK_THROWS_AS(plan::set_si(build, "life.food", 1.0), invalid_input);
  CHECK_THROWS_AS((void)plan::get_si(build, "life.forecast"), invalid_input);
}

TEST_CASE("an element of a list is its label, or its number; a number is never taken for a label") {
  plan::build build = two_returns();
  TW_HOLDS(about("get"), plan::get(build, "plumbing.return[left].below_edge") == "35 mm");
  TW_HOLDS(about("get"), plan::get(build, "plumbing.return[1].below_edge") == "35 mm");
  TW_HOLDS(about("get"), plan::get(build, "plumbing.return[2].below_edge") == "40 mm");
  // The first is called "2": the path [2] still is the second, as every path that is printed has it.
  plan::set(build, "plumbing.return[left].label", "2");
  TW_HOLDS(about("get"), plan::get(build, "plumbing.return[2].below_edge") == "40 mm");
  plan::set(build, "plumbing.return[1].label", "left");
  CHECK_THROWS_WITH_AS((void)plan::get(build, "plumbing.return[3].below_edge"),
                       "plumbing.return[3].below_edge: no return is called 3; there are 2", invalid_input);
  CHECK_THROWS_WITH_AS(plan::set(build, "plumbing.area_uncertainty", "2 %"),
                       "plumbing.area_uncertainty: is no key any more; write it with each area: surface = \"2.4 m2 +/- "
                       "2 %\"",
                       invalid_input);
  CHECK_THROWS_WITH_AS((void)plan::get(build, "plumbing.return[lefd].below_edge"),
                       "plumbing.return[lefd].below_edge: no return is called lefd; did you mean left?", invalid_input);
  CHECK_THROWS_AS((void)plan::get(build, "plumbing.return.below_edge"), invalid_input);
  CHECK_THROWS_AS((void)plan::get(build, "plumbing.return[0].below_edge"), invalid_input);
  CHECK_THROWS_AS((void)plan::get(build, "plumbing.return[99999999999999999999].below_edge"), invalid_input);
  CHECK_THROWS_AS((void)plan::get(build, "plumbing[1].lift"), invalid_input);
  CHECK_THROWS_AS((void)plan::get(build, "plumbing.lift[1]"), invalid_input);
  CHECK_THROWS_AS((void)plan::get(build, "plumbing.lift.more"), invalid_input);
}

TEST_CASE("every label can stand in a path, or the path says the number") {
  plan::build build;
  const char* const labels[] = {"left", "a.b", "x[1]", "2", " ", "left", "Größe", "very] odd", ""};
  for (std::size_t i = 0; i < std::size(labels); ++i) {
    const std::string at = "plumbing.return[" + std::to_string(i + 1) + "]";
    plan::set(build, at + ".label", labels[i]);
    plan::set(build, at + ".length", std::to_string(i + 1) + " m");
  }
  std::size_t seen = 0;
  for (const auto& [path, text] : texts_of(build)) {
    TW_HOLDS(about("get"), plan::get(build, path) == text);
    seen += path.ends_with(".length");
  }
  CHECK(seen == std::size(labels));
}

TEST_CASE("missing tables are made by set, refused by get, and a failed set leaves none behind") {
  plan::build build;
  CHECK_THROWS_WITH_AS((void)plan::get(build, "life.room.run"), "life.room.run: the plan has no life", invalid_input);
  CHECK_THROWS_AS(plan::set(build, "life.room.run", "2 kg"), text_error);
  CHECK_FALSE(build.life.has_value());
  CHECK_THROWS_AS(plan::set(build, "life.food[1].amount", "2 m"), text_error);
  CHECK_FALSE(build.life.has_value());
  plan::set(build, "life.food[1].amount", "2 g/d");
  CHECK_THROWS_AS(plan::set(build, "life.food[2].amount", "2 m"), text_error);
  CHECK(build.life->food.size() == 1);
  CHECK_THROWS_AS(plan::set(build, "life.food[3].amount", "2 g/d"), invalid_input);  // not the next one
}

TEST_CASE("taken back: a key, a table, a list, one of a list") {
  plan::build build = two_returns();
  plan::set(build, "plumbing.reserve", "5 mm");
  plan::clear(build, "plumbing.reserve");
  TW_CHECK(about("clear"), plan::get_si(build, "plumbing.reserve"), 0.02, relative(1e-15));  // its default again
  plan::clear(build, "plumbing.return[left].below_edge");
  TW_HOLDS(about("clear"), plan::get(build, "plumbing.return[left].below_edge").empty());
  plan::clear(build, "plumbing.return[1]");
  TW_HOLDS(about("clear"), plan::get(build, "plumbing.return[1].below_edge") == "40 mm");
  plan::clear(build, "plumbing.return");
  TW_HOLDS(about("clear"), build.plumbing->returns.empty());
  plan::set(build, "plumbing.pump.flows", "0 L/h, 1000 L/h");
  plan::clear(build, "plumbing.pump.flows[1]");
  TW_HOLDS(about("clear"), plan::get(build, "plumbing.pump.flows") == "1000 L/h");
  plan::clear(build, "plumbing");
  TW_HOLDS(about("clear"), !build.plumbing.has_value());
  plan::clear(build, "plumbing");  // there is nothing left to take back
  CHECK_THROWS_AS(plan::clear(build, "plumbing.lift"), invalid_input);
}

TEST_CASE("added: a table, one more of a list") {
  plan::build build;
  TW_HOLDS(about("add"), plan::add(build, "life.room") == "life.room");
  TW_HOLDS(about("add"), build.life->room.has_value());
  TW_HOLDS(about("add"), plan::add(build, "life.food") == "life.food[1]");
  TW_HOLDS(about("add"), plan::add(build, "life.food") == "life.food[2]");
  TW_HOLDS(about("add"), build.life->food.size() == 2);
  CHECK_THROWS_AS(plan::add(build, "life.room.run"), invalid_input);
  CHECK_THROWS_AS(plan::add(build, "life.food[1]"), invalid_input);
}

TEST_CASE("an unknown key is told the nearest one") {
  plan::build build;
  CHECK_THROWS_WITH_AS(plan::set(build, "life.room.widht", "1 m"),
                       "life.room.widht: there is no key widht in room; did you mean width?", invalid_input);
  CHECK_THROWS_WITH_AS(plan::set(build, "lfe.room.run", "1 m"), "lfe.room.run: there is no key lfe; did you mean life?",
                       invalid_input);
  CHECK_THROWS_WITH_AS(plan::set(build, "life.zzzzzz", "1 m"), "life.zzzzzz: there is no key zzzzzz in life",
                       invalid_input);
}

TEST_CASE("500 plans drawn from the descriptions come back from their texts, every number to the last bit") {
  const evidence round_trip{"tankwright::plan::set", kind::property, "get and set undo each other"};
  for (std::uint64_t seed = 1; seed <= 500; ++seed) {
    CAPTURE(seed);
    const plan::build drawn = random_plan(seed);
    plan::build copy = drawn;
    for (const auto& [path, text] : texts_of(drawn)) plan::set(copy, path, text);
    const auto before = numbers_of(drawn), after = numbers_of(copy);
    std::size_t differing = before.size() != after.size();
    for (std::size_t i = 0; differing == 0 && i < before.size(); ++i) {
      if (before[i] == after[i]) continue;
      ++differing;
      CAPTURE(before[i].path);
      CHECK(before[i].si == after[i].si);
      CHECK(before[i].half_width == after[i].half_width);
    }
    TW_HOLDS(round_trip, differing == 0);
    // What is written now names its units, and is written the same again.
    plan::build again = copy;
    for (const auto& [path, text] : texts_of(copy)) plan::set(again, path, text);
    TW_HOLDS(round_trip, texts_of(again) == texts_of(copy));
  }
}
