// SPDX-License-Identifier: BSL-1.0
// The day of the plumbing, in the failures that its questions name.
#include <algorithm>
#include <cmath>
#include <numbers>
#include <tankwright/decisions/plumbing/drain_blocked.hpp>
#include <tankwright/decisions/plumbing/drains.hpp>
#include <tankwright/decisions/plumbing/drains_blocked.hpp>
#include <tankwright/decisions/plumbing/overflow_head.hpp>
#include <tankwright/decisions/plumbing/pipe_velocity.hpp>
#include <tankwright/decisions/plumbing/return_flow.hpp>
#include <tankwright/decisions/plumbing/surge.hpp>

#include "decisions/asked.hpp"
#include "plan/basin.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

evidence by_hand(const char* answer) { return {answer, kind::identity, "volumes by hand"}; }

constexpr double g = 9.80665;

/// Circle of a bore.
double opening(double d) { return 0.25 * std::numbers::pi * d * d; }

/// The basin with a siphon and an emergency drain, each able to take the whole flow.
plan::build siphon_and_emergency() {
  plan::build build = basin();
  give(build, {{"plumbing.drain[1].label", "siphon"},
               {"plumbing.drain[1].bore", "57 mm"},
               {"plumbing.drain[1].runs_full", "true"},
               {"plumbing.drain[2].label", "emergency"},
               {"plumbing.drain[2].bore", "100 mm"},
               {"plumbing.drain[2].length", "1.3 m"},
               {"plumbing.drain[2].loss", "2"},
               {"plumbing.drain[2].drop", "0.95 m"},
               {"plumbing.drain[2].inlet_head", "80 mm"}});
  return build;
}

}  // namespace

TEST_CASE("a siphon that runs full is judged by its pipe, and no longer by the weir over its top") {
  // 57 mm of smooth pipe, 1.3 m long, K = 2 and the exit, under 0.95 m: Darcy and Weisbach with f = 0.0155.
  const double by_pipe = opening(0.057) * std::sqrt(2.0 * g * 0.95 / (3.0 + 0.0155 * 1.3 / 0.057));
  const auto gravity = answered(decisions::drains, basin(),
                                {{"plumbing.drain[1].bore", "57 mm"}, {"plumbing.drain[1].inlet_head", "20 mm"}});
  const auto siphon = answered(decisions::drains, basin(),
                               {{"plumbing.drain[1].bore", "57 mm"},
                                {"plumbing.drain[1].inlet_head", "20 mm"},
                                {"plumbing.drain[1].runs_full", "true"}});
  TW_CHECK(by_hand("tankwright::decisions::answer_drains"), number(siphon, "carry"), by_pipe, relative(0.03));
  CHECK(number(gravity, "carry") < 0.3 * by_pipe);
  CHECK(siphon.verdict == verdict::holds);
  CHECK(siphon.note.find("full of water, as a siphon") != std::string::npos);
  // An ordinary siphon with an emergency drain holds in each failure.
  CHECK(answered(decisions::drain_blocked, siphon_and_emergency()).verdict == verdict::holds);
}

TEST_CASE("all drains blocked: the display takes what the pump delivers until its chamber is dry") {
  const plan::build build = basin();  // one chamber of 0.9 m2 at 250 mm, display of 2.4 m2, no inlet given
  const double head = number(answered(decisions::overflow_head, build), "head");
  const auto f = answered(decisions::drains_blocked, build);
  TW_CHECK(by_hand("tankwright::decisions::answer_drains_blocked"), number(f, "delivered"), 0.9 * 0.25, relative(1e-9));
  TW_CHECK(by_hand("tankwright::decisions::answer_drains_blocked"), number(f, "left"), 0.05 - head - 0.9 * 0.25 / 2.4,
           within(1e-6));
  judged(f, verdict::does_not_hold, "left");
  TW_CHECK(by_hand("tankwright::decisions::answer_drains_blocked"), number(f, "floor"),
           2.4 * (head + 0.9 * 0.25 / 2.4 - 0.05), within(1e-6));
  // A pump that draws air 220 mm above the floor leaves 198 L there.
  const auto high_inlet =
      answered(decisions::drains_blocked, build,
               {{"plumbing.pump_inlet.above_floor", "220 mm"}, {"plumbing.pump_inlet.bore", "40 mm"}});
  TW_CHECK(by_hand("tankwright::decisions::answer_drains_blocked"), number(high_inlet, "delivered"), 0.9 * 0.03,
           relative(1e-9));
  // The top-off sees the level fall and adds its reservoir.
  plan::build topped = build;
  give(topped, {{"room.volume", "60 m3"}, {"room.top_off.reservoir", "60 L"}});
  TW_CHECK(by_hand("tankwright::decisions::answer_drains_blocked"),
           number(answered(decisions::drains_blocked, topped), "delivered"), 0.9 * 0.25 + 0.06, relative(1e-9));
  CHECK(answered(decisions::drains_blocked, build, {{"plumbing.edge_to_rim", "300 mm"}}).verdict == verdict::holds);
  plan::build no_rim = build;
  plan::clear(no_rim, "plumbing.edge_to_rim");
  CHECK(answered(decisions::drains_blocked, no_rim).verdict == verdict::not_enough_known);
}

TEST_CASE("all drains blocked: chambers before the pump stop at their crests") {
  plan::build build = basin();
  give(build, {{"plumbing.sump.chamber[1].label", "drains"},
               {"plumbing.sump.chamber[1].area", "0.3 m2"},
               {"plumbing.sump.chamber[2].label", "pump"},
               {"plumbing.sump.chamber[2].area", "0.2 m2"},
               {"plumbing.sump.baffle[1].crest", "300 mm"},
               {"plumbing.sump.baffle[1].width", "500 mm"}});
  const auto f = answered(decisions::drains_blocked, build);
  const double flow = number(answered(decisions::return_flow, build), "total");
  // Over the baffle by the plain weir formula, 0.62 and sqrt(2 g): within a tenth of its head.
  const double over = std::pow(flow / (2.0 / 3.0 * 0.62 * std::sqrt(2.0 * g) * 0.5), 2.0 / 3.0);
  TW_CHECK(by_hand("tankwright::decisions::answer_drains_blocked"), number(f, "delivered"), 0.2 * 0.25 + 0.3 * over,
           within(0.3 * 0.12 * over));
}

TEST_CASE("surge: what the siphon does not take in the first half minute stands in the display") {
  const plan::build build = siphon_and_emergency();
  plan::build alone = build;
  plan::clear(alone, "plumbing.drain[2]");
  const double flow = number(answered(decisions::return_flow, alone), "total");
  const double head = number(answered(decisions::overflow_head, alone), "head");
  // Air in the middle of 57 mm: J* = 0.3 (Hills 1983).
  const double quiet = 0.3 * opening(0.057) * std::sqrt(g * 0.057);
  const auto f = answered(decisions::surge, alone);
  TW_CHECK(by_hand("tankwright::decisions::answer_surge"), number(f, "taken"), quiet, relative(1e-9));
  TW_CHECK(by_hand("tankwright::decisions::answer_surge"), number(f, "held_up"), 30.0 * (flow - quiet), relative(1e-9));
  TW_CHECK(by_hand("tankwright::decisions::answer_surge"), number(f, "left"), 0.05 - head - 30.0 * (flow - quiet) / 2.4,
           within(1e-6));
  judged(answered(decisions::surge, alone, {{"plumbing.edge_to_rim", "20 mm"}}), verdict::does_not_hold, "left");
  // An emergency drain of gravity takes the rest from the first moment.
  const auto both = answered(decisions::surge, build);
  CHECK(number(both, "held_up") == 0.0);
  TW_CHECK(by_hand("tankwright::decisions::answer_surge"), number(both, "left"), 0.05 - head, within(1e-6));
  // What was seen counts: 5 mm over the display.
  const auto seen = answered(decisions::surge, alone, {{"plumbing.surge", "5 mm"}});
  TW_CHECK(by_hand("tankwright::decisions::answer_surge"), number(seen, "left"), 0.05 - head - 0.005, within(1e-6));
  // Without a siphon nothing has to be primed.
  CHECK(asked(decisions::surge, basin()).empty());
}

TEST_CASE("a pipe that is faster than recommended is advice, and not worded like a flood") {
  const auto f = answered(decisions::pipe_velocity, basin(), {{"plumbing.return[1].bore", "34 mm"}});
  CHECK(f.recommendation);
  CHECK(f.verdict == verdict::does_not_hold);
  CHECK(decisions::verdict_words(f) == "past what is recommended");
  CHECK(f.consequence != decisions::consequence::flood);
}
