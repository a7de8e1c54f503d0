// SPDX-License-Identifier: BSL-1.0
// Every cure of the demo, done to the plan and assessed anew: it holds, and one step less does not.
#include <algorithm>
#include <cmath>
#include <fstream>
#include <iterator>
#include <tankwright/decisions/assess.hpp>
#include <tankwright/decisions/bands.hpp>
#include <tankwright/decisions/cure_words.hpp>
#include <tankwright/decisions/would_hold.hpp>
#include <tankwright/exchange/read.hpp>
#include <tankwright/plan/keys.hpp>
#include <tankwright/plan/path.hpp>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

const evidence done{"tankwright::decisions::what_would_hold", kind::property, "the cure done, and assessed anew"};

plan::build demo() {
  std::ifstream file{std::string{TANKWRIGHT_SOURCE_DIR} + "/examples/commission/demo.toml"};
  const std::string text{std::istreambuf_iterator<char>{file}, {}};
  return exchange::read_plan(text, exchange::notation::toml).build;
}

/// The step and the sizes of a key, by its path without labels.
plan::key_row row_of(const std::string& path) {
  std::string pattern;
  bool inside = false;
  for (const char c : path) {
    if (c == ']') inside = false;
    if (!inside) pattern += c;
    if (c == '[') inside = true;
  }
  for (const auto& row : plan::all_keys().keys) {
    if (row.path == pattern) return row;
  }
  FAIL("no key " << pattern);
  throw 0;
}

verdict after(const plan::build& build, std::string_view id) {
  return decisions::assess_with_doubts(build).all.at(id).verdict;
}

}  // namespace

TEST_CASE("cures of the demo: each really holds, and one step less does not") {
  // What nothing that can still be chosen mends: the room over the edge, a heater as large as winter needs, a cold house.
  constexpr std::string_view without[] = {"plumbing.drains_blocked", "room.heater_sticks", "room.outage_rate"};
  const plan::build build = demo();
  const auto judged = decisions::assess_with_doubts(build);
  const auto all = decisions::what_would_hold(build, judged, {.most = 2});
  REQUIRE(all.size() >= 3);
  std::size_t mended = 0;
  for (const auto& of : all) {
    const bool none = std::find(std::begin(without), std::end(without), of.id) != std::end(without);
    CHECK_MESSAGE(of.cures.empty() == none, of.id, none ? " has no cure" : " has a cure");
    mended += !of.cures.empty();
    for (const auto& c : of.cures) {
      const std::string said = decisions::sentence_of(c, text::unit_system::si);
      CHECK(said.find('%' + std::string{"v"}) == std::string::npos);
      CHECK(c.chance >= 0.975);
      const auto& change = c.changes.front();
      if (change.path.find("[]") != std::string::npos) continue;
      plan::build cured = build;
      for (const auto& one : c.changes) plan::set(cured, one.path, one.to);
      const bool holds = after(cured, of.id) == verdict::holds;
      CHECK_MESSAGE(holds, said);
      TW_HOLDS(done, holds);
      if (!c.part.empty() || c.changes.size() > 1) continue;  // parts: missing_parts_test.cpp
      const plan::key_row row = row_of(change.path);
      const auto& key = row.about;
      if (!change.was || !key.sizes.empty() || !(key.step > 0.0)) continue;
      const double less = *change.is + (*change.is > *change.was ? -key.step : key.step);
      plan::build nearly = build;
      plan::set_si(nearly, change.path, less);
      const bool holds_with_less = after(nearly, of.id) == verdict::holds;
      CHECK_MESSAGE(!holds_with_less, said, ", one step less");
      TW_HOLDS(done, !holds_with_less);
    }
  }
  CHECK(mended >= 2);
}

TEST_CASE("cures: every key that can be searched has words, or is left out on purpose") {
  int with = 0;
  for (const auto& row : plan::all_keys().keys) {
    if (!row.about.searched || row.about.set_by != plan::set_by::chosen) continue;
    const bool left_out = row.path.starts_with("life.start_up.") || row.path.starts_with("life.moved_rock.food") ||
                          row.path == "life.food[].every" || row.path == "life.quarantine.food[].every" ||
                          row.path == "room.heating.wall[].thickness";
    CHECK_MESSAGE(decisions::detail::words_of_cure(row.path).empty() == left_out, row.path);
    with += !left_out;
  }
  CHECK(with > 30);
}

TEST_CASE("cures in words: up, down, above the edge, of a whole list, two at once, in both sets of units") {
  const evidence words{"tankwright::decisions::sentence_of", kind::identity, "the sentence written out"};
  decisions::cure c;
  c.changes = {{"plumbing.return[left].below_edge", "35 mm", "10 mm", "length", 0.035, 0.010}};
  TW_HOLDS(words,
           decisions::sentence_of(c, text::unit_system::si) == "Raise the outlet of the left to 10 mm below the edge");
  c.changes[0].is = -0.005;
  TW_HOLDS(words,
           decisions::sentence_of(c, text::unit_system::si) == "Raise the outlet of the left to 5 mm above the edge");
  c.changes[0] = {"plumbing.return[].below_edge", "35 mm", "25.4 mm", "length", 0.035, 0.0254};
  TW_HOLDS(words, decisions::sentence_of(c, text::unit_system::us) ==
                      "Raise the outlets of all returns to 1 in below the edge");
  c.changes.push_back({"plumbing.sump.running_level", "250 mm", "200 mm", "length", 0.25, 0.2});
  TW_HOLDS(words,
           decisions::sentence_of(c, text::unit_system::si) ==
               "Raise the outlets of all returns to 25.4 mm below the edge and lower the running level to 200 mm");
}
