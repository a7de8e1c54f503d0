// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <numbers>
#include <tankwright/decisions/bottom/net_water.hpp>
#include <tankwright/decisions/plumbing/drain_blocked.hpp>
#include <tankwright/decisions/plumbing/drains.hpp>
#include <tankwright/decisions/plumbing/overflow_head.hpp>
#include <tankwright/decisions/plumbing/pipe_velocity.hpp>
#include <tankwright/decisions/plumbing/return_flow.hpp>
#include <tankwright/decisions/plumbing/sump_runs_over.hpp>
#include <tankwright/decisions/plumbing/turnover.hpp>

#include "decisions/asked.hpp"
#include "plan/basin.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

evidence by_hand(const char* answer) { return {answer, kind::identity, "worked by hand"}; }

constexpr double g = 9.80665;
const double bore_area = 0.25 * std::numbers::pi * 0.057 * 0.057;

/// What 57 mm of smooth pipe, 1.6 m long, with a loss of 5 and its exit ask for: Swamee and Jain 1976 for f.
double losses(double flow) {
  const double v = flow / bore_area;
  const double reynolds = v * 0.057 / 0.96e-6;
  const double f = 0.25 / std::pow(std::log10(0.0000015 / 0.057 / 3.7 + 5.74 / std::pow(reynolds, 0.9)), 2.0);
  return (f * 1.6 / 0.057 + 5.0 + 1.0) * v * v / (2.0 * g);
}

}  // namespace

TEST_CASE("return flow: the pump's head is the lift and what the pipe asks for") {
  const auto f = answered(decisions::return_flow, basin());
  const double flow = number(f, "total");
  CHECK(f.verdict == verdict::for_information);
  TW_CHECK(by_hand("tankwright::decisions::answer_return_flow"), number(f, "head", "pump"), 1.2 + losses(flow),
           relative(0.01));
  TW_CHECK(by_hand("tankwright::decisions::answer_return_flow"), number(f, "flow", "return"), flow, relative(1e-12));
}

TEST_CASE("return flow: a pump that lifts nothing is an answer") {
  const auto f = answered(decisions::return_flow, basin(), {{"plumbing.pump.heads", "1.1 m, 0.8 m, 0.2 m"}});
  CHECK(f.verdict == verdict::does_not_hold);
  CHECK(f.note.find("lifts nothing") != std::string::npos);
}

TEST_CASE("pipe velocity: flow over area, against the recommendation from both sides") {
  const double flow = number(answered(decisions::return_flow, basin()), "total");
  const auto f = answered(decisions::pipe_velocity, basin());
  TW_CHECK(by_hand("tankwright::decisions::answer_pipe_velocity"), number(f, "fastest"), flow / bore_area,
           relative(1e-12));
  TW_CHECK(by_hand("tankwright::decisions::answer_pipe_velocity"), number(f, "left"), 1.5 - flow / bore_area,
           relative(1e-9));
  CHECK(f.recommendation);
  CHECK(f.verdict == verdict::holds);
  const auto narrow = answered(decisions::pipe_velocity, basin(), {{"plumbing.return[1].bore", "34 mm"}});
  CHECK(narrow.verdict == verdict::does_not_hold);
  CHECK(decisions::verdict_words(narrow) == "past what is recommended");
}

TEST_CASE("turnover: flow over the net water of the display") {
  plan::build build = lagoon();
  build.plumbing = basin().plumbing;
  const double flow = number(answered(decisions::return_flow, build), "total");
  const double held = number(answered(decisions::net_water, build), "net");
  const auto f = answered(decisions::turnover, build, {{"plumbing.wanted_turnover", "3 1/h"}});
  TW_CHECK(by_hand("tankwright::decisions::answer_turnover"), number(f, "turns"), flow / held, relative(1e-12));
  CHECK(f.verdict == verdict::holds);
  CHECK(answered(decisions::turnover, build, {{"plumbing.wanted_turnover", "30 1/h"}}).verdict ==
        verdict::does_not_hold);
  CHECK(answered(decisions::turnover, basin()).verdict == verdict::not_enough_known);
}

TEST_CASE("overflow head: the plain weir formula within its band, and the verdict on both sides") {
  const double flow = number(answered(decisions::return_flow, basin()), "total");
  const double plain = std::pow(flow / (2.0 / 3.0 * 0.62 * std::sqrt(2.0 * g) * 0.8), 2.0 / 3.0);
  const auto f = answered(decisions::overflow_head, basin());
  TW_CHECK(by_hand("tankwright::decisions::answer_overflow_head"), number(f, "head"), plain, relative(0.1));
  TW_CHECK(by_hand("tankwright::decisions::answer_overflow_head"), number(f, "left"), 0.05 - number(f, "head"),
           relative(1e-9));
  CHECK(f.verdict == verdict::holds);
  CHECK(answered(decisions::overflow_head, basin(), {{"plumbing.edge_to_rim", "8 mm"}}).verdict ==
        verdict::does_not_hold);
}

TEST_CASE("drains: what they carry less what comes; the only one blocked carries nothing") {
  const auto f = answered(decisions::drains, basin());
  TW_CHECK(by_hand("tankwright::decisions::answer_drains"), number(f, "left"),
           number(f, "carry") - number(f, "brought"), relative(1e-9));
  CHECK(f.verdict == verdict::holds);
  const auto narrow = answered(decisions::drains, basin(), {{"plumbing.drain[1].bore", "20 mm"}});
  CHECK(narrow.verdict == verdict::does_not_hold);
  CHECK(narrow.happens.find("run over the rim") != std::string::npos);
  const auto blocked = answered(decisions::drain_blocked, basin());
  TW_CHECK(by_hand("tankwright::decisions::answer_drain_blocked"), number(blocked, "left", "drain"),
           -number(blocked, "brought"), relative(1e-12));
  CHECK(blocked.verdict == verdict::does_not_hold);
}

TEST_CASE("drain blocked: each is judged without the one that is blocked") {
  plan::build build = basin();
  give(build, {{"plumbing.drain[2].label", "small"},
               {"plumbing.drain[2].bore", "20 mm"},
               {"plumbing.drain[2].length", "1.3 m"},
               {"plumbing.drain[2].drop", "0.95 m"},
               {"plumbing.drain[2].inlet_head", "80 mm"}});
  const auto f = answered(decisions::drain_blocked, build);
  CHECK(f.verdict == verdict::does_not_hold);
  REQUIRE(f.margin() != nullptr);
  CHECK(f.margin()->place == "drain");  // the large one blocked leaves the small one
  CHECK(f.find("left", "small")->value.central > 0.0);
}

TEST_CASE("sump while it runs: rim less level; at the rim it does not hold") {
  const auto f = answered(decisions::sump_runs_over, basin());
  TW_CHECK(by_hand("tankwright::decisions::answer_sump_runs_over"), number(f, "left", "pump"), 0.2, relative(1e-9));
  CHECK(f.verdict == verdict::holds);
  CHECK(answered(decisions::sump_runs_over, basin(), {{"plumbing.sump.running_level", "450 mm"}}).verdict ==
        verdict::does_not_hold);
}
