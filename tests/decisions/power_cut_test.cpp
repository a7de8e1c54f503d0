// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <numbers>
#include <tankwright/decisions/plumbing/overflow_head.hpp>
#include <tankwright/decisions/power_cut/break_blocked.hpp>
#include <tankwright/decisions/power_cut/check_valve_leaks.hpp>
#include <tankwright/decisions/power_cut/dry_floor.hpp>
#include <tankwright/decisions/power_cut/outlet_depth.hpp>
#include <tankwright/decisions/power_cut/pump_restart.hpp>
#include <tankwright/decisions/power_cut/running_level.hpp>
#include <tankwright/decisions/power_cut/top_off_stuck_power_cut.hpp>

#include "decisions/asked.hpp"
#include "plan/basin.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

evidence by_hand(const char* answer) { return {answer, kind::identity, "volumes by hand, one chamber"}; }

/// What comes down into one chamber of 0.9 m2 and how far it rises: water over the edge, down to the opening, and the
/// pipe, which stands full.
double margin_by_hand(double head, double opening) {
  const double pipe = 0.25 * std::numbers::pi * 0.057 * 0.057 * 1.6;
  return 0.45 - 0.25 - (2.4 * (head + opening) + pipe) / 0.9;
}

double head_over_edge() { return number(answered(decisions::overflow_head, basin()), "head"); }

}  // namespace

TEST_CASE("dry floor: the margin by volumes, and the verdict on both sides") {
  const auto f = answered(decisions::dry_floor, basin());
  // 0.3 mm: a thin film stays on the edge while the levels settle.
  TW_CHECK(by_hand("tankwright::decisions::answer_dry_floor"), number(f, "left"),
           margin_by_hand(head_over_edge(), 0.020), within(1.5e-3));
  CHECK(f.verdict == verdict::holds);
  const auto deep = answered(decisions::dry_floor, basin(), {{"plumbing.return[1].below_edge", "200 mm"}});
  CHECK(deep.verdict == verdict::does_not_hold);
  TW_CHECK(by_hand("tankwright::decisions::answer_dry_floor"), number(deep, "floor"),
           -0.9 * margin_by_hand(head_over_edge(), 0.200), relative(0.02));
  CHECK(deep.happens.find("run onto the floor") != std::string::npos);
  CHECK(deep.consequence == decisions::consequence::flood);
}

TEST_CASE("break blocked: judged without the break, as if it were not there") {
  plan::build build = basin();
  give(build, {{"plumbing.return[1].below_edge", "200 mm"}, {"plumbing.return[1].siphon_break", "6 mm"}});
  CHECK(answered(decisions::dry_floor, build).verdict == verdict::holds);
  const auto f = answered(decisions::break_blocked, build);
  CHECK(f.verdict == verdict::does_not_hold);
  TW_CHECK(by_hand("tankwright::decisions::answer_break_blocked"), f.margin()->value.central,
           margin_by_hand(head_over_edge(), 0.200), within(3e-3));
  CHECK(asked(decisions::break_blocked, basin()).empty());
}

TEST_CASE("check valve that leaks: asked only where there is one, and no better than one that holds") {
  CHECK(asked(decisions::check_valve_leaks, basin()).empty());
  plan::build build = basin();
  give(build, {{"plumbing.return[1].check_valve", "true"}, {"plumbing.return[1].below_edge", "200 mm"}});
  const auto f = answered(decisions::check_valve_leaks, build);
  REQUIRE(f.margin() != nullptr);
  // With a valve that holds, only what stands over the edge comes down.
  TW_CHECK(by_hand("tankwright::decisions::answer_check_valve_leaks"), number(f, "if_tight"),
           0.45 - 0.25 - 2.4 * head_over_edge() / 0.9, within(2e-3));
  CHECK(f.margin()->value.central <= number(f, "if_tight"));
}

TEST_CASE("top-off stuck before a power cut: its reservoir stands in the sump already") {
  plan::build build = basin();
  CHECK(asked(decisions::top_off_stuck_power_cut, build).empty());
  give(build, {{"room.volume", "60 m3"}, {"room.top_off.reservoir", "60 L"}});
  const auto f = answered(decisions::top_off_stuck_power_cut, build);
  TW_CHECK(by_hand("tankwright::decisions::answer_top_off_stuck_power_cut"), number(f, "left"),
           number(answered(decisions::dry_floor, build), "left") - 0.060 / 0.9, within(5e-4));
}

TEST_CASE("running level and outlet depth: at the limit the worst case keeps the reserve") {
  const auto level = answered(decisions::running_level, basin());
  plan::build build = basin();
  plan::set_si(build, "plumbing.sump.running_level", number(level, "most"));
  const auto at_limit = answered(decisions::dry_floor, build);
  TW_CHECK(by_hand("tankwright::decisions::answer_running_level"), at_limit.margin()->value.low, 0.020, within(5e-4));
  const auto depth = answered(decisions::outlet_depth, basin());
  build = basin();
  plan::set_si(build, "plumbing.return[1].below_edge", number(depth, "most"));
  TW_CHECK(by_hand("tankwright::decisions::answer_outlet_depth"),
           answered(decisions::dry_floor, build).margin()->value.low, 0.020, within(5e-4));
}

TEST_CASE("restart: with nothing held up the pump's chamber stays at its running level") {
  plan::build build = basin();
  give(build, {{"plumbing.pump_inlet.above_floor", "30 mm"},
               {"plumbing.pump_inlet.bore", "80 mm"},
               {"plumbing.surge", "0 mm"}});
  const auto f = answered(decisions::pump_restart, build);
  TW_CHECK(by_hand("tankwright::decisions::answer_pump_restart"), number(f, "lowest"), 0.250, within(1e-6));
  CHECK(f.verdict == verdict::holds);
  // Thirty seconds of the whole flow out of 0.9 m2 take more than stands over the inlet where the sump runs low.
  plan::clear(build, "plumbing.surge");
  plan::set(build, "plumbing.sump.running_level", "100 mm");
  const auto low = answered(decisions::pump_restart, build);
  CHECK(low.verdict == verdict::does_not_hold);
  CHECK(!low.happens.empty());
}
