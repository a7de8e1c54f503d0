// SPDX-License-Identifier: BSL-1.0
// Parts that a plan does not have, as cures: each really makes the finding hold, the size before it does not; and why
// nothing does.
#include <algorithm>
#include <cmath>
#include <fstream>
#include <iterator>
#include <tankwright/decisions/assess.hpp>
#include <tankwright/decisions/bands.hpp>
#include <tankwright/decisions/cure_words.hpp>
#include <tankwright/decisions/missing_parts.hpp>
#include <tankwright/decisions/would_hold.hpp>
#include <tankwright/exchange/read.hpp>
#include <tankwright/plan/path.hpp>

#include "decisions/asked.hpp"
#include "decisions/some_room.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

const evidence done{"tankwright::decisions::what_would_hold", kind::property, "the cure done, and assessed anew"};

plan::build example(const std::string& name) {
  std::ifstream file{std::string{TANKWRIGHT_SOURCE_DIR} + "/examples/commission/" + name + ".toml"};
  const std::string text{std::istreambuf_iterator<char>{file}, {}};
  return exchange::read_plan(text, exchange::notation::toml).build;
}

verdict after(const plan::build& build, std::string_view id) {
  return decisions::assess_with_doubts(build).all.at(id).verdict;
}

plan::build with(const plan::build& build, const decisions::cure& c) {
  plan::build cured = build;
  for (const auto& one : c.changes) plan::set(cured, one.path, one.to);
  return cured;
}

/// The cures of a finding that add a part whose words begin so; each is done and assessed anew.
std::vector<decisions::cure> parts_that_hold(const plan::build& build, std::string_view id, std::string_view words) {
  std::vector<decisions::cure> found;
  for (const auto& c : decisions::what_would_hold(build, id, {.most = 20}).cures) {
    if (c.part.empty() || !c.part.starts_with(words)) continue;
    const std::string said = decisions::sentence_of(c, text::unit_system::si);
    CHECK_MESSAGE(said.find('%' + std::string{"v"}) == std::string::npos, said);
    CHECK(c.chance >= 0.975);
    CHECK_MESSAGE(after(with(build, c), id) == verdict::holds, said);
    TW_HOLDS(done, after(with(build, c), id) == verdict::holds);
    found.push_back(c);
  }
  return found;
}

}  // namespace

TEST_CASE("missing parts: a dehumidifier of the smallest size that holds the air") {
  plan::build build = some_room();
  plan::clear(build, "room.dehumidifier");
  REQUIRE(after(build, "room.humidity") != verdict::holds);
  const auto found = parts_that_hold(build, "room.humidity", "add a dehumidifier");
  REQUIRE(found.size() == 1);
  const auto& size = found[0].changes.front();
  CHECK(size.path == "room.dehumidifier.capacity");
  CHECK(size.from.empty());
  const double litre_a_day = 1e-3 / 86400.0;
  const double sold[] = {10, 12, 16, 20, 25, 30, 40, 50, 70, 90};
  const auto* at = std::find_if(std::begin(sold), std::end(sold),
                                [&](double l) { return std::fabs(*size.is / litre_a_day - l) < 1e-6; });
  REQUIRE(at != std::end(sold));
  if (at != std::begin(sold)) {
    plan::build less = with(build, found[0]);
    plan::set_si(less, size.path, at[-1] * litre_a_day);
    TW_HOLDS(done, after(less, "room.humidity") != verdict::holds);
  }
}

TEST_CASE("missing parts: another drain, and a check valve, where the plan has none") {
  // Narrow drains: they carry less than the returns bring.
  plan::build build = example("demo");
  plan::set(build, "plumbing.drain[1].bore", "28 mm");
  plan::set(build, "plumbing.drain[2].bore", "28 mm");
  REQUIRE(after(build, "plumbing.drains") != verdict::holds);
  const auto more = parts_that_hold(build, "plumbing.drains", "add another drain");
  CHECK(!more.empty());
  for (const auto& c : more) CHECK(c.changes.size() > 4);
  const auto all = decisions::detail::missing_parts(build);
  const auto has = [&](std::string_view words) {
    return std::any_of(all.begin(), all.end(), [&](const auto& p) { return p.words.starts_with(words); });
  };
  CHECK(has("put a check valve into the left return"));
  CHECK(has("add another drain like the"));
  CHECK(!has("add a dehumidifier"));  // the demo has one
  plan::set(build, "plumbing.return[left return].check_valve", "true");
  for (const auto& p : decisions::detail::missing_parts(build))
    CHECK(p.words != "put a check valve into the left return");
  // A check valve brings the question whether it leaks: that is said with the cure.
  plan::build deep = example("demo_flood");
  REQUIRE(after(deep, "sump.power_cut") != verdict::holds);
  for (const auto& c : parts_that_hold(deep, "sump.power_cut", "put a check valve")) {
    CHECK(std::any_of(c.worse.begin(), c.worse.end(), [](const auto& m) { return m.id == "sump.check_valve_leaks"; }));
  }
}

TEST_CASE("missing parts: a candidate pump in place of the one that is there") {
  // The candidate is the pump of the demo; the pump that is there moves half of it.
  plan::build build = example("demo");
  const std::string flows = plan::get(build, "plumbing.pump.flows"), heads = plan::get(build, "plumbing.pump.heads");
  plan::set(build, "plumbing.candidate[1].label", "large pump");
  plan::set(build, "plumbing.candidate[1].flows", flows);
  plan::set(build, "plumbing.candidate[1].heads", heads);
  for (std::size_t i = 2; i <= build.plumbing->pump->flows.size(); ++i) {
    const std::string flow = "plumbing.pump.flows[" + std::to_string(i) + "]";
    plan::set_si(build, flow, 0.5 * plan::get_si(build, flow));
  }
  REQUIRE(after(build, "plumbing.turnover") != verdict::holds);
  const auto found = parts_that_hold(build, "plumbing.turnover", "take the large pump");
  REQUIRE(found.size() == 1);
  CHECK(decisions::sentence_of(found[0], text::unit_system::si) == "Take the large pump in place of the return pump");
}

TEST_CASE("cures: where nothing does it, what comes nearest is said, and how near") {
  const evidence said{"tankwright::decisions::sentence_of", kind::identity, "the sentence written out"};
  decisions::why_none why;
  TW_HOLDS(said, decisions::sentence_of(why, text::unit_system::si) ==
                     "Nothing you can still change does it, and nothing brings it nearer");
  why.changes = {{"plumbing.return[left].below_edge", "35 mm", "10 mm", "length", 0.035, 0.010}};
  why.from = {"volume", -0.663, -0.663, -0.663};
  why.to = {"volume", -0.410, -0.410, -0.410};
  TW_HOLDS(said, decisions::sentence_of(why, text::unit_system::si) ==
                     "Nothing you can still change does it; what helps most: raise the outlet of the left to 10 mm "
                     "below the edge, margin from -663 L to -410 L");
  const plan::build build = example("demo");
  const auto judged = decisions::assess_with_doubts(build);
  int without = 0;
  for (const auto& of : decisions::what_would_hold(build, judged, {.most = 2})) {
    CHECK_MESSAGE(of.why_none.has_value() == of.cures.empty(), of.id);
    if (!of.why_none) continue;
    ++without;
    const auto& w = *of.why_none;
    const auto* margin = judged.all.find(of.id)->margin();
    TW_CHECK(done, w.from.central, margin->value.central, within(1e-12));
    if (w.changes.empty()) continue;
    plan::build moved = build;
    for (const auto& one : w.changes) {
      if (one.path.find("[]") == std::string::npos) plan::set(moved, one.path, one.to);
    }
    if (w.changes.front().path.find("[]") != std::string::npos) continue;
    const auto all = decisions::assess(moved);
    TW_CHECK(done, all.find(of.id)->margin()->value.central, w.to.central, relative(1e-9));
    CHECK(w.to.central > w.from.central);
    CHECK(after(moved, of.id) != verdict::holds);
  }
  CHECK(without >= 1);
}
