// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/restart.hpp>

#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tp = tankwright::plumbing;

namespace {

const evidence by_hand{"tankwright::plumbing::restart", kind::identity, "worked by hand"};

/// The system of the power cut's hand case: 43.298672 L fall into 0.5 m2 that runs at 250 mm.
tp::restart_input system() {
  return {
      .system =
          {.display = {.surface = square_metres(1.0),
                       .edge = tp::standpipe{tp::pipe_bore{millimetres(100.0)}},
                       .box = tp::overflow_box{.horizontal_area = square_metres(0.05), .falls_by = millimetres(100.0)},
                       .drains = {{.label = "drain", .bore = tp::pipe_bore{millimetres(40.0)}, .length = metres(1.5)}}},
           .sump = {.rim = metres(0.4),
                    .running_level = metres(0.25),
                    .chambers = {{.label = "sump", .horizontal_area = square_metres(0.5)}}},
           .returns = {{.label = "return A",
                        .flow = litres_per_hour(6000.0),
                        .outlet_below_edge = millimetres(10.0),
                        .pipe =
                            tp::pipe_run{
                                .label = "return A", .bore = tp::pipe_bore{millimetres(30.0)}, .length = metres(2.0)}}},
           .edge_above_floor = metres(1.5),
           .area_uncertainty = percent(0.0),
           .level_uncertainty = metres(0.0)},
      .inlet = {.above_floor = millimetres(50.0), .bore = tp::pipe_bore{millimetres(40.0)}},
      .surge = millimetres(40.0)};
}

}  // namespace

TEST_CASE("restart: reference table") {
  const auto submergence = [](const reference_row& row) {
    return in_inches(tp::vortex_submergence(tp::pipe_bore{inches(row["D"])}, us_gallons_per_minute(row["Q"])).high);
  };
  check_rows(reference_rows("plumbing/restart.csv"), {{"tankwright::plumbing::vortex_submergence", submergence}});
}

TEST_CASE("restart: submergence") {
  // 6000 L/h through 40 mm: V = 0.00166667/0.00125664 = 1.326291 m/s; Gordon 0.54 x 1.326291 x 0.2 = 143.2395 mm and
  // 0.72 x ... = 190.9859 mm; Fr = 1.326291/sqrt(9.80665 x 0.04) = 2.117612, S = 40 (1 + 2.3 x 2.117612) = 234.8203 mm.
  const evidence gordon{"tankwright::plumbing::vortex_submergence", kind::identity, "worked by hand"};
  const auto s = tp::vortex_submergence(tp::pipe_bore{millimetres(40.0)}, litres_per_hour(6000.0));
  TW_CHECK(gordon, s.low, millimetres(143.2395), within(millimetres(1e-3)));
  TW_CHECK(gordon, s.central, millimetres(190.9859), within(millimetres(1e-3)));
  TW_CHECK(gordon, s.high, millimetres(234.8203), within(millimetres(1e-3)));
  const evidence order{"tankwright::plumbing::vortex_submergence", kind::property, "low <= central <= high"};
  for (double q = 0.0; q < 20000.0; q += 500.0) {
    for (const double d : {15.0, 40.0, 110.0}) {
      const auto e = tp::vortex_submergence(tp::pipe_bore{millimetres(d)}, litres_per_hour(q));
      TW_HOLDS(order, (e.low <= e.central && e.central <= e.high));
    }
  }
}

TEST_CASE("restart: by hand") {
  // The box rises 40 mm too far: 0.05 m2 x 40 mm = 2 L, 4 mm of the sump's 0.5 m2.
  const auto start = tp::restart(system());
  TW_CHECK(by_hand, start.lowest_level.central, millimetres(246.0), within(millimetres(1e-9)));
  TW_CHECK(by_hand, start.margin.central, millimetres(246.0 - 50.0 - 190.9859), within(millimetres(1e-3)));
  TW_CHECK(by_hand, start.margin.low, millimetres(246.0 - 50.0 - 234.8203), within(millimetres(1e-3)));
  // (10 + 1.413717) L at 6000 L/h until it runs over; (43.298672 + 2) L until all is as before.
  TW_CHECK(by_hand, start.until_it_runs_over, seconds(11.413717 / (6000.0 / 3600.0)), relative(1e-7));
  TW_CHECK(by_hand, start.until_steady, seconds(45.298672 / (6000.0 / 3600.0)), relative(1e-7));
  CHECK_FALSE(start.runs_dry);
  CHECK(start.caution.text.find("hand on the switch") != std::string_view::npos);

  // Without a box the display rises: 40 L, 80 mm. Without a surge the level is the running one.
  auto bare = system();
  bare.system.display.box.reset();
  TW_CHECK(by_hand, tp::restart(bare).lowest_level.central, millimetres(170.0), within(millimetres(1e-9)));
  bare.surge = metres(0.0);
  TW_CHECK(by_hand, tp::restart(bare).lowest_level.central, millimetres(250.0), tolerance{});

  // What ran over the rim is missing: at 380 mm 10 L have room, 33.298672 L are on the floor, 66.597345 mm.
  auto flood = system();
  flood.system.sump.running_level = metres(0.38);
  flood.surge = metres(0.0);
  TW_CHECK(by_hand, tp::restart(flood).lowest_level.central, millimetres(380.0 - 66.597345), within(millimetres(1e-5)));

  // A small pump chamber runs dry: 40 L out of 0.05 m2 at 250 mm are 12.5 L too much.
  auto small = bare;
  small.surge = millimetres(40.0);
  small.system.sump.chambers[0].horizontal_area = square_metres(0.1);
  small.system.sump.rim = metres(0.9);
  const auto dry = tp::restart(small);
  CHECK(dry.runs_dry);
  TW_CHECK(by_hand, dry.lowest_level.low, metres(0.0), tolerance{});
}

TEST_CASE("restart: unless said otherwise, drains take half a minute to find their siphon") {
  // 10 m3/h for 30 s are 83.33 L; a pump chamber with 66 L over its inlet runs dry.
  auto in = system();
  in.surge.reset();
  in.system.returns[0].flow = litres_per_hour(10000.0);
  in.system.sump.chambers[0].horizontal_area = square_metres(0.33);
  in.system.sump.rim = metres(0.9);
  const auto start = tp::restart(in);
  TW_CHECK(by_hand, start.held_up, litres(83.3333333), within(litres(1e-6)));
  CHECK(start.runs_dry);
  CHECK(start.margin.central < metres(0.0));
  in.system.sump.chambers[0].horizontal_area = square_metres(1.0);
  TW_CHECK(by_hand, tp::restart(in).lowest_level.central, metres(0.25 - 0.0833333333), within(metres(1e-9)));
  in.priming = seconds(0.0);
  TW_CHECK(by_hand, tp::restart(in).lowest_level.central, metres(0.25), within(metres(1e-12)));
  in.priming = seconds(std::numeric_limits<double>::quiet_NaN());
  CHECK_THROWS_AS((void)tp::restart(in), invalid_input);
  in.priming = seconds(1e100);
  CHECK_THROWS_AS((void)tp::restart(in), invalid_input);
}

TEST_CASE("restart: only the pump chamber falls, with what is joined to it; the band is in order") {
  auto in = system();
  in.system.sump.chambers = {{.label = "drains", .horizontal_area = square_metres(0.3)},
                             {.label = "trap", .horizontal_area = square_metres(0.05)},
                             {.label = "pump", .horizontal_area = square_metres(0.2)}};
  in.system.sump.baffles = {{.crest = metres(0.30), .width = metres(0.4)},
                            {.crest = metres(0.25), .width = metres(0.4)}};
  in.system.sump.running_level = metres(0.2);
  // 2 L out of 0.2 m2 are 10 mm; joined with the trap, out of 0.25 m2, 8 mm.
  TW_CHECK(by_hand, tp::restart(in).lowest_level.central, millimetres(190.0), within(millimetres(1e-9)));
  const evidence after{"tankwright::plumbing::restart_after", kind::identity, "volumes by hand"};
  TW_CHECK(after, tp::restart_after(tp::power_cut(in.system), in).lowest_level.central, millimetres(190.0),
           within(millimetres(1e-9)));
  in.system.sump.baffles[1].gap = metres(0.04);
  TW_CHECK(by_hand, tp::restart(in).lowest_level.central, millimetres(192.0), within(millimetres(1e-9)));

  const evidence order{"tankwright::plumbing::restart", kind::property, "low <= central <= high"};
  in.system.area_uncertainty = percent(5.0);
  in.system.level_uncertainty = millimetres(4.0);
  const auto band = tp::restart(in);
  TW_HOLDS(order,
           (band.lowest_level.low < band.lowest_level.central && band.lowest_level.central < band.lowest_level.high));
  TW_HOLDS(order, (band.margin.low < band.margin.central && band.margin.central < band.margin.high));
}

TEST_CASE("restart: after a power cut that is worked out already it is the same") {
  const evidence same{"tankwright::plumbing::restart_after", kind::wiring,
                      "worked out with its power cut, and after it"};
  auto in = system();
  in.system.sump.running_level = metres(0.38);  // some of it runs onto the floor
  const auto cut = tp::power_cut(in.system);
  const auto after = tp::restart_after(cut, in), whole = tp::restart(in);
  CHECK(cut.on_the_floor.central > litres(0.0));
  TW_CHECK(same, after.lowest_level.low, whole.lowest_level.low, tolerance{});
  TW_CHECK(same, after.margin.central, whole.margin.central, tolerance{});
  TW_CHECK(same, after.until_steady, whole.until_steady, tolerance{});
  in.system.sump.chambers.emplace_back(in.system.sump.chambers.back());
  in.system.sump.baffles.push_back({.crest = metres(0.39), .width = metres(0.4)});
  CHECK_THROWS_WITH_AS((void)tp::restart_after(cut, in),
                       "tankwright::plumbing::restart: size of a span = 2 differs from the size of the first span, 1",
                       invalid_input);
  in.system.reserve = metres(-1.0);
  CHECK_THROWS_WITH_AS((void)tp::restart_after(cut, in), doctest::Contains("tankwright::plumbing::restart: reserve"),
                       invalid_input);
}

TEST_CASE("restart: what cannot be is refused by name") {
  auto in = system();
  in.inlet.bore = tp::pipe_bore{metres(0.0)};
  CHECK_THROWS_WITH_AS(
      (void)tp::restart(in),
      "tankwright::plumbing::vortex_submergence: bore of the inlet = 0 m is not possible; expected 0.0001 to 10 m",
      invalid_input);
  in = system();
  in.inlet.above_floor = metres(-0.1);
  CHECK_THROWS_WITH_AS(
      (void)tp::restart(in),
      "tankwright::plumbing::restart: above_floor of the inlet = -0.1 m is not possible; expected 0 to 20 m",
      invalid_input);
  in = system();
  in.surge = metres(-0.1);
  CHECK_THROWS_AS((void)tp::restart(in), invalid_input);
  in = system();
  in.system.returns[0].flow = litres_per_hour(0.0);
  CHECK_THROWS_WITH_AS((void)tp::restart(in),
                       "tankwright::plumbing::restart: display has returns without flow: nothing refills it",
                       invalid_input);
}

TEST_CASE("restart: both ends of the band, by hand") {
  // 5 % of the areas, 3 mm of the level, 10 % of the flow; 6000 L/h for 30 s are 50 L, of which the drains take 10, 20
  // or 30 (most where it is mild). The worst: 55 - 10 L out of 0.95 x 0.5 m2 that run at 247 mm; the mild: 45 - 30 L.
  auto in = system();
  in.surge.reset();
  in.system.area_uncertainty = percent(5.0);
  in.system.level_uncertainty = millimetres(3.0);
  in.system.flow_uncertainty = percent(10.0);
  const auto taken = [](double litre) { return flow_rate::from_value(litre * 1e-3 / 30.0); };
  in.taken = estimate<flow_rate>{taken(10.0), taken(20.0), taken(30.0), "by hand"};
  const auto start = tp::restart(in);
  TW_CHECK(by_hand, start.lowest_level.low, metres(0.247 - 0.045 / 0.475), within(metres(1e-12)));
  TW_CHECK(by_hand, start.lowest_level.central, metres(0.25 - 0.030 / 0.5), within(metres(1e-12)));
  TW_CHECK(by_hand, start.lowest_level.high, metres(0.253 - 0.015 / 0.525), within(metres(1e-12)));
  TW_CHECK(by_hand, start.held_up, litres(30.0), relative(1e-12));
  // 43.298672 L of the power cut's middle, and the 30 L, at 6000 L/h.
  TW_CHECK(by_hand, start.until_steady, seconds(73.298672 / (6000.0 / 3600.0)), relative(1e-7));
  TW_CHECK(by_hand, start.margin.low, start.lowest_level.low - millimetres(50.0) - start.submergence.high,
           within(metres(1e-12)));
  TW_CHECK(by_hand, start.margin.high, start.lowest_level.high - millimetres(50.0) - start.submergence.low,
           within(metres(1e-12)));
  // Seen as a surge, the area of the box is as uncertain as the sump's: 2.1 L out of 0.475 m2, 1.9 L out of 0.525 m2.
  in.surge = millimetres(40.0);
  const auto seen = tp::restart(in);
  TW_CHECK(by_hand, seen.lowest_level.low, metres(0.247 - 0.0021 / 0.475), within(metres(1e-12)));
  TW_CHECK(by_hand, seen.lowest_level.high, metres(0.253 - 0.0019 / 0.525), within(metres(1e-12)));
  // Drains that take more than comes hold nothing up.
  in.surge.reset();
  in.taken = estimate<flow_rate>{taken(90.0)};
  CHECK(tp::restart(in).held_up == litres(0.0));
}

TEST_CASE("restart: the last millimetre of the pump chamber is water, and what lacks half of one is dry") {
  // 0.5 m2 at 250 mm hold 125 L; the box of 0.05 m2 takes 0.05 m3 a metre.
  const auto lowest = [](double litre) {
    auto in = system();
    in.surge = metres(litre * 1e-3 / 0.05);
    return tp::restart(in);
  };
  TW_CHECK(by_hand, lowest(124.75).lowest_level.low, millimetres(0.5), within(millimetres(1e-9)));
  CHECK_FALSE(lowest(124.75).runs_dry);
  TW_CHECK(by_hand, lowest(125.0).lowest_level.low, metres(0.0), within(millimetres(1e-9)));
  TW_CHECK(by_hand, lowest(125.25).lowest_level.low, metres(0.0), tolerance{});
  CHECK(lowest(125.25).runs_dry);
  TW_CHECK(by_hand, lowest(1.0).lowest_level.central, millimetres(248.0), within(millimetres(1e-9)));
  auto shallow = system();
  shallow.system.sump.running_level = millimetres(0.5);
  shallow.surge = metres(0.0);
  TW_CHECK(by_hand, tp::restart(shallow).lowest_level.low, millimetres(0.5), tolerance{});
  CHECK_FALSE(tp::restart(shallow).runs_dry);
}

TEST_CASE("restart: a chamber joined by a gap stands higher by its head, and falls with the pump chamber") {
  // Under the baffle v = Q/(0.61 x 10 mm x 0.4 m): it stands h = v^2/2g = 23.8 mm higher, between walls that lean,
  // A = 0.05 + 0.5 z. 2 L come out of both, each lower by x: 0.2 x + 0.05 x + 0.25 (z^2 - (z - x)^2), z = 0.2 + h.
  auto in = system();
  in.system.sump.chambers = {
      {.label = "trap",
       .horizontal_area = tp::area_profile{{metres(0.0), square_metres(0.05)}, {metres(0.4), square_metres(0.25)}}},
      {.label = "pump", .horizontal_area = square_metres(0.2)}};
  in.system.sump.baffles = {{.crest = metres(0.38), .width = metres(0.4), .gap = metres(0.01)}};
  in.system.sump.running_level = metres(0.2);
  const double v = (6.0 / 3600.0) / (0.61 * 0.01 * 0.4), z = 0.2 + v * v / (2.0 * 9.80665);
  const double b = 0.25 + 0.5 * z, x = (b - std::sqrt(b * b - 0.002)) / 0.5;
  TW_CHECK(by_hand, tp::restart(in).lowest_level.central, metres(0.2 - x), within(metres(1e-9)));
}
