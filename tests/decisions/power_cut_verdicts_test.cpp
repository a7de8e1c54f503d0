// SPDX-License-Identifier: BSL-1.0
// The power-cut test: the worst moment, small margins, and the restart.
#include <cmath>
#include <tankwright/decisions/plumbing/return_flow.hpp>
#include <tankwright/decisions/plumbing/sump_runs_over.hpp>
#include <tankwright/decisions/power_cut/dry_floor.hpp>
#include <tankwright/decisions/power_cut/pump_restart.hpp>

#include "decisions/asked.hpp"
#include "plan/basin.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

evidence by_hand(const char* answer) { return {answer, kind::identity, "volumes by hand"}; }
evidence behaves(const char* answer) { return {answer, kind::property, "judged at its worst moment"}; }

/// Three chambers that pass the first rush slowly: two drain pipes let 9 L go with the first fall of the display.
plan::build three_chambers() {
  plan::build build = basin();
  give(build, {{"plumbing.overflow.surface", "1 m2 +/- 0 %"},
               {"plumbing.overflow.width", "0.5 m"},
               {"plumbing.pump.flows", "0 L/h, 8000 L/h, 8100 L/h"},
               {"plumbing.pump.heads", "9 m, 8 m, 0.1 m"},
               {"plumbing.drain[1].bore", "52 mm"},
               {"plumbing.drain[1].length", "2.2 m"},
               {"plumbing.drain[1].runs_full", "true"},
               {"plumbing.drain[2].label", "second"},
               {"plumbing.drain[2].bore", "52 mm"},
               {"plumbing.drain[2].length", "2.2 m"},
               {"plumbing.drain[2].loss", "2"},
               {"plumbing.drain[2].drop", "0.95 m"},
               {"plumbing.drain[2].inlet_head", "80 mm"},
               {"plumbing.drain[2].runs_full", "true"},
               {"plumbing.return[1].below_edge", "-10 mm"},
               {"plumbing.return[1].kind", "open"},
               {"plumbing.reserve", "0 mm"}});
  give(build, {{"plumbing.sump.rim", "345 mm"},
               {"plumbing.sump.running_level", "120 mm +/- 0 mm"},
               {"plumbing.sump.chamber[1].label", "drains"},
               {"plumbing.sump.chamber[1].area", "0.10 m2"},
               {"plumbing.sump.chamber[2].label", "middle"},
               {"plumbing.sump.chamber[2].area", "0.20 m2"},
               {"plumbing.sump.chamber[3].label", "pump"},
               {"plumbing.sump.chamber[3].area", "0.40 m2"},
               {"plumbing.sump.baffle[1].crest", "300 mm"},
               {"plumbing.sump.baffle[1].width", "250 mm"},
               {"plumbing.sump.baffle[2].crest", "250 mm"},
               {"plumbing.sump.baffle[2].width", "400 mm"}});
  return build;
}

}  // namespace

TEST_CASE("the margin of a power cut is that of its worst moment, not of the rest") {
  const auto f = answered(decisions::dry_floor, three_chambers());
  // At rest the sump would still hold some litres; on the way a chamber stands higher than it ends.
  CHECK(number(f, "spare") > 0.0);
  REQUIRE(f.find("worst_at") != nullptr);
  TW_HOLDS(behaves("tankwright::decisions::answer_dry_floor"), number(f, "worst_at") < 60.0);
  TW_HOLDS(behaves("tankwright::decisions::answer_dry_floor"), number(f, "left") < number(f, "spare") / 0.70);
}

TEST_CASE("a fraction of a millimetre left is thin, whatever reserve is wanted") {
  plan::build build = basin();
  give(build, {{"plumbing.reserve", "0 mm"},
               {"plumbing.sump.running_level", "250 mm +/- 0 mm"},
               {"plumbing.overflow.surface", "2.4 m2 +/- 0 %"}});
  const double left = answered(decisions::dry_floor, build).margin()->value.low;
  const auto at = [&](double more) {
    plan::build moved = build;
    plan::set_si(moved, "plumbing.sump.rim", 0.45 - left + more);
    return answered(decisions::dry_floor, moved);
  };
  judged(at(0.0005), verdict::thin_margin, "left");
  judged(at(0.0030), verdict::holds, "left");
  CHECK(at(-0.0200).verdict == verdict::does_not_hold);
}

TEST_CASE("chambers before the one that the drains lead to carry nothing") {
  plan::build build = three_chambers();
  plan::set(build, "plumbing.drains_into", "3");
  const auto f = answered(decisions::sump_runs_over, build);
  TW_CHECK(by_hand("tankwright::decisions::answer_sump_runs_over"), number(f, "level", "drains"), 0.300, within(1e-9));
  TW_CHECK(by_hand("tankwright::decisions::answer_sump_runs_over"), number(f, "level", "middle"), 0.250, within(1e-9));
}

TEST_CASE("a chamber that runs over its rim while the pump runs does not hold, and is no mistake") {
  plan::build build = three_chambers();
  give(build, {{"plumbing.sump.rim", "320 mm"}});
  const auto f = answered(decisions::sump_runs_over, build);
  judged(f, verdict::does_not_hold, "left", "drains");
}

TEST_CASE("half a minute of priming takes more out of a small pump chamber than it has") {
  plan::build build = basin();
  give(build, {{"plumbing.pump_inlet.above_floor", "50 mm"},
               {"plumbing.pump_inlet.bore", "80 mm"},
               {"plumbing.drain[1].bore", "57 mm"},
               {"plumbing.drain[1].runs_full", "true"},
               {"plumbing.sump.chamber[1].area", "0.33 m2"}});  // 66 L above the inlet
  const auto f = answered(decisions::pump_restart, build);
  const double flow = number(answered(decisions::return_flow, build), "total");
  const double quiet = 0.3 * 0.25 * 3.14159265358979 * 0.057 * 0.057 * std::sqrt(9.80665 * 0.057);
  TW_CHECK(by_hand("tankwright::decisions::answer_pump_restart"), number(f, "held_up"), 30.0 * (flow - quiet),
           relative(1e-6));
  judged(f, verdict::does_not_hold, "left");
  // A verdict never contradicts the sign of its margin, also where the chamber runs dry at the worst end alone.
  for (double area = 0.2; area < 1.2; area += 0.05) {
    plan::set_si(build, "plumbing.sump.chamber[1].area", area);
    const auto one = answered(decisions::pump_restart, build);
    TW_HOLDS(behaves("tankwright::decisions::answer_pump_restart"),
             (one.verdict == verdict::does_not_hold) == !(one.margin()->value.central > 0.0));
  }
}
