// SPDX-License-Identifier: BSL-1.0
/// @file
/// One case of a power cut at the ends of what it is asked: nothing falls, a half litre too much, a sump that is full.
#include <tankwright/plumbing/power_cut.hpp>

#include <algorithm>
#include <cmath>
#include <random>

#include "plumbing/random_power_cut.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tp = tankwright::plumbing;

namespace {

const evidence by_hand{"tankwright::plumbing::power_cut", kind::identity, "worked by hand"};
const evidence bounded{"tankwright::plumbing::power_cut", kind::property, "an unfinished course tells what bounds it"};

/// 1 m2 of display over a standpipe of 100 mm, 25 mm at 6000 L/h; a return that ends above its edge and holds nothing.
tp::power_cut_input system_of(std::vector<double> areas, std::vector<tp::baffle> baffles = {}, double running = 0.25) {
  tp::power_cut_input in{
      .display = {.surface = square_metres(1.0), .edge = tp::standpipe{tp::pipe_bore{millimetres(100.0)}}},
      .sump = {.rim = metres(0.4), .running_level = metres(running), .chambers = {}, .baffles = std::move(baffles)},
      .returns = {{.label = "A",
                   .flow = litres_per_hour(6000.0),
                   .outlet_below_edge = metres(-0.05),
                   .pipe =
                       tp::pipe_run{
                           .label = "A", .bore = tp::pipe_bore{millimetres(30.0)}, .fittings = tp::known_loss(4.0)}}},
      .edge_above_floor = metres(1.5),
      .area_uncertainty = percent(0.0),
      .level_uncertainty = metres(0.0)};
  const char* names[] = {"first", "second", "third"};
  for (std::size_t i = 0; i < areas.size(); ++i) {
    in.sump.chambers.push_back({.label = names[i], .horizontal_area = square_metres(areas[i])});
  }
  return in;
}

}  // namespace

TEST_CASE("power cut case: half a litre too much in the sump stands in it while the pump runs") {
  auto in = system_of({0.5});
  in.topped_up = litres(0.5);
  const auto one = tp::power_cut(in);
  TW_CHECK(by_hand, one.running[0].level.central, millimetres(251.0), within(millimetres(1e-6)));
  TW_CHECK(by_hand, one.settled[0].level.central, millimetres(301.0), within(millimetres(1e-6)));  // 25 L on 0.5 m2
  // Over a crest nothing stands higher in the chamber before: only the last one rises.
  auto two = system_of({0.3, 0.2}, {{.crest = metres(0.3), .width = metres(0.4)}});
  const double before = tp::power_cut(two).running[0].level.central.value();
  two.topped_up = litres(0.5);
  const auto raised = tp::power_cut(two);
  TW_CHECK(by_hand, raised.running[0].level.central, metres(before), within(millimetres(1e-9)));
  TW_CHECK(by_hand, raised.running[1].level.central, millimetres(252.5), within(millimetres(1e-6)));
  // As much as brings the pump chamber to the crest and beyond it stands in both.
  two.topped_up = litres(20.0);
  const auto above = tp::power_cut(two);
  const double first = above.running[0].level.central.value(), last = above.running[1].level.central.value();
  CHECK(last > 0.3);
  TW_CHECK(by_hand, 0.3 * first + 0.2 * last, 0.3 * before + 0.2 * 0.25 + 0.020, relative(1e-9));
}

TEST_CASE("power cut case: a box that falls by less than its doubt may hold nothing, and a display above its outlet") {
  auto in = system_of({0.5});
  in.level_uncertainty = millimetres(3.0);
  in.display.box = tp::overflow_box{.horizontal_area = square_metres(0.05), .falls_by = millimetres(2.0)};
  in.returns[0].outlet_below_edge = millimetres(-2.0);
  const auto cut = tp::power_cut(in);
  TW_CHECK(by_hand, cut.falls.box.low, litres(0.0), tolerance{});
  TW_CHECK(by_hand, cut.falls.box.central, litres(0.1), relative(1e-12));
  TW_CHECK(by_hand, cut.falls.box.high, litres(0.25), relative(1e-12));
  TW_CHECK(by_hand, cut.falls.back_siphon.low, litres(0.0), tolerance{});
  TW_CHECK(by_hand, cut.falls.back_siphon.central, litres(0.0), tolerance{});
  TW_CHECK(by_hand, cut.falls.back_siphon.high, litres(1.0), relative(1e-9));
  // Held back by a check valve nothing siphons, however deep it lies.
  in.returns[0].outlet_below_edge = millimetres(300.0);
  in.returns[0].check_valve = true;
  in.check_valves = tp::check_valve_state::hold;
  TW_CHECK(by_hand, tp::power_cut(in).falls.back_siphon.high, litres(0.0), tolerance{});
}

TEST_CASE("power cut case: the worst moment is the first of several, in the first of several chambers") {
  // Chambers of 0.3 and 0.2 m2 at rest make one: 25 L and what stands over the crest are told in the first of them.
  auto in = system_of({0.3, 0.2}, {{.crest = metres(0.2), .width = metres(0.4)}}, 0.2);
  const auto rest = tp::power_cut(in);
  CHECK_FALSE(rest.worst.at);
  CHECK(rest.worst.chamber == "first");
  TW_CHECK(by_hand, rest.settled[0].level.central, rest.settled[1].level.central, tolerance{});
  // What stands before the crest as the pump runs is the highest there is: at the moment when the power fails.
  auto small = system_of({0.1, 0.9}, {{.crest = metres(0.3), .width = metres(0.1)}}, 0.2);
  const auto cut = tp::power_cut(small);
  REQUIRE(cut.worst.at);
  TW_CHECK(by_hand, *cut.worst.at, seconds(0.0), tolerance{});
  CHECK(cut.worst.chamber == "first");
  TW_CHECK(by_hand, cut.margin.central, metres(0.4) - cut.running[0].level.central, within(metres(1e-15)));
  // An empty sump in which nothing falls stays at its level of nothing.
  auto dry = system_of({0.5}, {}, 0.0);
  dry.returns[0].flow = flow_rate{};
  const auto nothing = tp::power_cut(dry);
  TW_CHECK(by_hand, nothing.margin.central, metres(0.4), tolerance{});
  CHECK(nothing.worst.chamber == "first");
  REQUIRE(nothing.worst.at);
  TW_CHECK(by_hand, *nothing.worst.at, seconds(0.0), tolerance{});
}

TEST_CASE("power cut case: a sump that takes the last drop is full and dry, one that does not is full too") {
  auto in = system_of({0.5}, {}, 0.35);  // 25 L on 0.5 m2 are 50 mm
  const auto full = tp::power_cut(in);
  TW_CHECK(by_hand, full.margin.central, metres(0.0), within(metres(1e-12)));
  TW_CHECK(by_hand, full.spare.central, litres(0.0), within(litres(1e-9)));
  TW_CHECK(by_hand, full.on_the_floor.central, litres(0.0), within(litres(1e-9)));
  in.sump.running_level = metres(0.36);
  const auto over = tp::power_cut(in);
  TW_CHECK(by_hand, over.margin.central, millimetres(-10.0), within(millimetres(1e-9)));
  TW_CHECK(by_hand, over.spare.central, litres(0.0), tolerance{});
  TW_CHECK(by_hand, over.on_the_floor.central, litres(5.0), within(litres(1e-9)));
  TW_CHECK(by_hand, over.settled[0].level.central, metres(0.4), tolerance{});
  REQUIRE(over.floods_after);
  CHECK(*over.floods_after > seconds(10.0));
  in.sump.running_level = metres(0.4);  // over from the first moment on
  TW_CHECK(by_hand, *tp::power_cut(in).floods_after, seconds(0.0), within(seconds(1e-9)));
  in.sump.running_level = metres(0.34);
  const auto spare = tp::power_cut(in);
  TW_CHECK(by_hand, spare.spare.central, litres(5.0), within(litres(1e-9)));
  CHECK_FALSE(spare.floods_after);
  in.sump.running_level = metres(0.36);
  // In the worst case 25 mm 0.85^(-2/3) = 27.861 mm stand over the edge: h = 27.861 mm/(1 + Q t/55.722 L)^2 has let 20 L
  // go, and the rim is met, at 55.722 L (sqrt(27.861/7.861) - 1)/Q = 29.508 s.
  TW_CHECK(by_hand, *over.floods_after, seconds(29.508), within(seconds(0.25)));
  // Where only the last trickle brings it over, it is told from when that began: a hundredth of the flow is left at a
  // head of 0.01^(2/3) of the first, after 55.722 L (0.01^(-1/3) - 1)/Q = 121.7 s.
  in.sump.running_level = metres(0.4 - 0.055722 + 0.00005);
  const auto trickle = tp::power_cut(in);
  TW_CHECK(by_hand, trickle.on_the_floor.high, litres(0.025), relative(1e-2));
  REQUIRE(trickle.floods_after);
  TW_CHECK(by_hand, *trickle.floods_after, seconds(121.7), within(seconds(8.0)));
}

TEST_CASE("power cut case: what stands above the rim as the power fails floods from that moment on") {
  // Nothing runs: half a litre more in the box than the 50 L that 0.5 m2 take from 0.3 m up to the rim comes at once.
  auto in = system_of({0.5}, {}, 0.3);
  in.returns[0].flow = flow_rate{};
  in.display.box = tp::overflow_box{.horizontal_area = square_metres(0.505), .falls_by = millimetres(100.0)};
  const auto still = tp::power_cut(in);
  TW_CHECK(by_hand, still.on_the_floor.central, litres(0.5), within(litres(1e-9)));
  REQUIRE(still.floods_after);
  TW_CHECK(by_hand, *still.floods_after, seconds(0.0), tolerance{});
  // A first chamber that runs over while the pump runs falls below its rim at once, and has flooded before.
  auto falls = system_of({0.02, 0.9}, {{.crest = metres(0.39), .width = metres(0.4)}}, 0.1);
  REQUIRE(tp::power_cut(falls).running[0].level.low > metres(0.4));
  TW_CHECK(by_hand, *tp::power_cut(falls).floods_after, seconds(0.0), tolerance{});
}

TEST_CASE("power cut case: a course that is given up tells the bound of all that could come") {
  constexpr unsigned seed = 20261201;
  MESSAGE("seed ", seed);
  std::mt19937 random{seed};
  int higher = 0;
  for (int seen = 0; seen < 60;) {
    const auto made = random_power_cut(random);
    if (!made) continue;
    ++seen;
    const auto highest_of = [&](int steps) {
      tp::detail::power_cut_engine engine{"here", made->in, steps};
      const std::size_t n = engine.shape().size();
      std::vector<double> numbers(2 * n);
      tp::detail::power_cut_case c{.running = {numbers.data(), n}, .settled = {numbers.data() + n, n}};
      engine.run_moved({}, c);
      engine.fall_moved({}, c);
      engine.follow({}, c);
      return c.highest;
    };
    const double all = highest_of(20'000), given_up = highest_of(3);
    TW_HOLDS(bounded, given_up >= all - 1e-5);
    higher += given_up > all + 1e-3;
  }
  CHECK(higher > 5);
}
