// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/power_cut_failures.hpp>

#include "support/check.hpp"
#include "support/refusals.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tp = tankwright::plumbing;

namespace {

const evidence by_hand{"tankwright::plumbing::power_cut_failures", kind::identity, "worked by hand"};

/// 1 m2 of display over 0.5 m2 of sump, so that 10 mm more of back-siphon are 20 mm of sump. Nothing is uncertain but
/// the weir of the standpipe, which passes 6000 L/h at 25 mm.
tp::power_cut_input system() {
  const auto fitting = [](const char* label) {
    return tp::pipe_run{.label = label, .bore = tp::pipe_bore{millimetres(34.0)}, .fittings = tp::known_loss(4.0)};
  };
  return {.display = {.surface = square_metres(1.0), .edge = tp::standpipe{tp::pipe_bore{millimetres(100.0)}}},
          .sump = {.rim = metres(0.4),
                   .running_level = metres(0.25),
                   .chambers = {{.label = "sump", .horizontal_area = square_metres(0.5)}}},
          .returns = {{.label = "left",
                       .flow = litres_per_hour(6000.0),
                       .outlet_below_edge = millimetres(60.0),
                       .break_below_edge = millimetres(5.0),
                       .pipe = fitting("left"),
                       .check_valve = true},
                      {.label = "right",
                       .flow = litres_per_hour(0.0),
                       .outlet_below_edge = millimetres(30.0),
                       .break_below_edge = millimetres(8.0),
                       .pipe = fitting("right"),
                       .check_valve = true}},
          .edge_above_floor = metres(1.5),
          .area_uncertainty = percent(0.0),
          .level_uncertainty = metres(0.0)};
}

const tp::power_cut_failure_case& find(const std::vector<tp::power_cut_failure_case>& all, tp::power_cut_failure what,
                                       std::string_view label = {}) {
  for (const auto& c : all) {
    if (c.failure == what && c.label == label) return c;
  }
  FAIL("no such case");
  return all.front();
}

}  // namespace

TEST_CASE("power cut failures: each judged in itself") {
  using failure = tp::power_cut_failure;
  const auto all = tp::power_cut_failures(system(), litres(30.0));
  CHECK(all.size() == 7);
  // 25 L over the edge and 8 L to the deeper break: 66 mm, 84 mm left.
  TW_CHECK(by_hand, find(all, failure::none).margin.central, millimetres(84.0), within(millimetres(1e-6)));
  // The left one blocked: 60 L; the right one: 30 L; both: the left one, 60 mm.
  TW_CHECK(by_hand, find(all, failure::siphon_break_blocked, "left").margin.central, millimetres(150.0 - 170.0),
           within(millimetres(0.01)));
  TW_CHECK(by_hand, find(all, failure::siphon_break_blocked, "right").margin.central, millimetres(150.0 - 110.0),
           within(millimetres(1e-6)));
  TW_CHECK(by_hand, find(all, failure::all_breaks_blocked).margin.central, millimetres(-20.0),
           within(millimetres(0.01)));
  // 10 L more than the sump holds.
  TW_CHECK(by_hand, find(all, failure::all_breaks_blocked).on_the_floor.central, litres(10.0), within(litres(1e-3)));
  CHECK(find(all, failure::all_breaks_blocked).floods_after.has_value());
  const auto breaks = tp::power_cut_breaks_blocked(system());
  const evidence of_breaks{"tankwright::plumbing::power_cut_breaks_blocked", kind::identity, "worked by hand"};
  REQUIRE(breaks.size() == 3);
  TW_CHECK(of_breaks, breaks[0].margin.central, millimetres(150.0 - 170.0), within(millimetres(0.01)));
  TW_CHECK(of_breaks, breaks[1].margin.central, millimetres(150.0 - 110.0), within(millimetres(1e-6)));
  const auto valves = tp::power_cut_check_valves(system());
  const evidence of_valves{"tankwright::plumbing::power_cut_check_valves", kind::identity, "worked by hand"};
  REQUIRE(valves.size() == 2);
  TW_CHECK(of_valves, valves[0].margin.central, millimetres(84.0), within(millimetres(1e-6)));
  TW_CHECK(of_valves, valves[1].margin.central, millimetres(100.0), within(millimetres(1e-6)));
  // Leaking ends as failing does; holding keeps all that is below the edge.
  TW_CHECK(by_hand, find(all, failure::check_valve_leaks).margin.central, millimetres(84.0), within(millimetres(1e-6)));
  TW_CHECK(by_hand, find(all, failure::check_valve_holds).margin.central, millimetres(100.0),
           within(millimetres(1e-6)));
  // 30 L of top-off are 60 mm of sump.
  TW_CHECK(by_hand, find(all, failure::top_off_stuck).margin.central, millimetres(24.0), within(millimetres(1e-5)));
  for (const auto& c : all) CHECK((c.margin.low <= c.margin.central && c.margin.central <= c.margin.high));
}

TEST_CASE("power cut failures: the top-off and the cut hold each alone and overflow together") {
  auto in = system();
  in.sump.chambers = {{.label = "drains", .horizontal_area = square_metres(0.12)},
                      {.label = "skimmer", .horizontal_area = square_metres(0.25)},
                      {.label = "pump", .horizontal_area = square_metres(0.18)}};
  in.sump.baffles = {{.crest = metres(0.30), .width = metres(0.4)}, {.crest = metres(0.26), .width = metres(0.4)}};
  in.sump.running_level = metres(0.15);
  const auto all = tp::power_cut_failures(in, litres(60.0));
  CHECK(find(all, tp::power_cut_failure::none).margin.low > metres(0.0));
  CHECK(find(all, tp::power_cut_failure::top_off_stuck).margin.high < metres(0.0));
  auto running = in;
  running.topped_up = litres(60.0);
  const auto cut = tp::power_cut(running);
  for (const auto& c : cut.running) CHECK(c.level.high < in.sump.rim.get());
  // All 60 L stand in the sump before: the pump chamber takes 0.18 m2 x 110 mm = 19.8 L to its crest, then drowns it.
  std::vector<length> before, after;
  for (const auto& c : tp::power_cut(in).running) before.push_back(c.level.central);
  for (const auto& c : cut.running) after.push_back(c.level.central);
  TW_CHECK(by_hand, tp::water_in_sump(in.sump, after), tp::water_in_sump(in.sump, before) + litres(60.0),
           within(litres(1e-3)));
  CHECK(after[2] > metres(0.26));
}

TEST_CASE("power cut failures: what there is not is not asked") {
  auto in = system();
  for (auto& r : in.returns) r.check_valve = false, r.break_below_edge.reset();
  CHECK(tp::power_cut_failures(in).size() == 1);
  CHECK(tp::power_cut_breaks_blocked(in).empty());
  CHECK(tp::power_cut_check_valves(in).empty());
  CHECK_THROWS_AS((void)tp::power_cut_failures(in, litres(-1.0)), invalid_input);
  CHECK_THROWS_AS((void)tp::power_cut_failures(in, cubic_metres(std::numeric_limits<double>::quiet_NaN())),
                  invalid_input);
  CHECK_THROWS_AS((void)tp::power_cut_failures(in, cubic_metres(1e100)), invalid_input);
}

TEST_CASE("power cut failures: one break is one case, one valve of a shared pipe is two, half a litre is asked") {
  auto in = system();
  in.returns[1].break_below_edge.reset();
  const auto breaks = tp::power_cut_breaks_blocked(in);
  REQUIRE(breaks.size() == 1);
  CHECK(breaks[0].label == "left");
  for (auto& r : in.returns) r.check_valve = false;
  CHECK(tp::power_cut_check_valves(in).empty());
  in.shared_pipes = {{.pipe = *in.returns[0].pipe}};
  in.shared_pipes[0].pipe.label = "riser";
  CHECK(tp::power_cut_check_valves(in).empty());
  in.shared_pipes[0].check_valve = true;
  CHECK(tp::power_cut_check_valves(in).size() == 2);
  CHECK(tp::power_cut_failures(in, litres(0.5)).back().failure == tp::power_cut_failure::top_off_stuck);
  CHECK(tp::power_cut_failures(in).back().failure == tp::power_cut_failure::check_valve_holds);
}

TEST_CASE("power cut failures: each question refuses in its own name") {
  auto bad = system();
  bad.reserve = metres(-1.0);
  check_refusals({
      TW_REFUSED("plumbing::power_cut_breaks_blocked", "reserve", tp::power_cut_breaks_blocked(bad)),
      TW_REFUSED("plumbing::power_cut_check_valves", "reserve", tp::power_cut_check_valves(bad)),
      TW_REFUSED("plumbing::power_cut_failures", "top_off", tp::power_cut_failures(system(), cubic_metres(10001.0))),
  });
}
