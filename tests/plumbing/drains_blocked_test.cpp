// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <limits>
#include <tankwright/plumbing/drains_blocked.hpp>

#include "support/check.hpp"
#include "support/refusals.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace tp = tankwright::plumbing;

namespace {

const evidence by_hand{"tankwright::plumbing::all_drains_blocked", kind::identity, "volumes by hand"};

/// A display of 2 m2 over two chambers; no doubts.
tp::drains_blocked_input system() {
  tp::drains_blocked_input in{
      .system = {.display = {.surface = square_metres(2.0),
                             .edge = tp::full_width_edge{.width = metres(0.5), .crest_height = metres(0.6)}},
                 .sump = {.rim = metres(0.45),
                          .running_level = metres(0.20),
                          .chambers = {{.label = "drains", .horizontal_area = square_metres(0.3)},
                                       {.label = "pump", .horizontal_area = square_metres(0.4)}},
                          .baffles = {{.crest = metres(0.30), .width = metres(0.5)}}},
                 .returns = {{.label = "return", .flow = litres_per_hour(6000.0), .outlet_below_edge = metres(-0.02)}},
                 .edge_above_floor = metres(1.5)},
      .edge_to_rim = metres(0.10)};
  in.system.area_uncertainty = percent(0.0);
  in.system.level_uncertainty = metres(0.0);
  return in;
}

double by_weir() {
  const auto in = system();
  return tp::head_over(in.system.display.edge, litres_per_hour(6000.0)).head.central.value();
}

}  // namespace

TEST_CASE("all drains blocked: what the sump loses stands on the display") {
  auto in = system();
  in.inlet = tp::pump_inlet{.above_floor = metres(0.05), .bore = tp::pipe_bore{millimetres(40.0)}};
  const auto answer = tp::all_drains_blocked(in);
  // The head over the baffle of the same width and flow: the crest is lower, which Rehbock's formula hardly feels.
  const double over_baffle =
      tp::running_levels(in.system.sump, litres_per_hour(6000.0)).chambers[0].level.central.value() - 0.30;
  const double delivered = 0.4 * 0.15 + 0.3 * over_baffle;
  TW_CHECK(by_hand, answer.delivered.central.value(), delivered, relative(1e-9));
  TW_CHECK(by_hand, answer.over_edge.central.value(), by_weir() + delivered / 2.0, within(1e-9));
  TW_CHECK(by_hand, answer.margin.central.value(), 0.10 - by_weir() - delivered / 2.0, within(1e-9));
  CHECK(answer.on_the_floor.central.value() == 0.0);
  TW_CHECK(by_hand, answer.until_dry.value(), delivered / (6.0 / 3600.0), relative(1e-9));
  // At the worst end air comes in only at the bottom of the inlet, 20 mm lower, and a little more stands on the baffle.
  TW_CHECK(by_hand, (answer.delivered.high - answer.delivered.central).value(), 0.4 * 0.02, within(5e-4));

  in.top_off = litres(100.0);
  const auto topped = tp::all_drains_blocked(in);
  TW_CHECK(by_hand, (topped.delivered.central - answer.delivered.central).value(), 0.1, within(1e-12));
  TW_CHECK(by_hand, topped.until_dry, answer.until_dry, relative(1e-9));
  in.edge_to_rim = metres(0.02);
  const auto flood = tp::all_drains_blocked(in);
  TW_CHECK(by_hand, flood.on_the_floor.central.value(), -2.0 * flood.margin.central.value(), relative(1e-12));
}

TEST_CASE("all drains blocked: chambers that are joined by a gap are drawn down together") {
  auto in = system();
  in.system.sump.baffles[0].gap = metres(0.05);
  const auto answer = tp::all_drains_blocked(in);
  const auto running = tp::running_levels(in.system.sump, litres_per_hour(6000.0));
  TW_CHECK(by_hand, answer.delivered.central.value(), 0.4 * 0.20 + 0.3 * running.chambers[0].level.central.value(),
           relative(1e-9));
}

TEST_CASE("all drains blocked: what cannot be is refused, and doubts only widen") {
  auto in = system();
  in.system.area_uncertainty = percent(5.0);
  in.system.level_uncertainty = millimetres(5.0);
  const auto answer = tp::all_drains_blocked(in), sharp = tp::all_drains_blocked(system());
  CHECK(answer.margin.low < sharp.margin.low);
  CHECK(answer.margin.high > sharp.margin.high);
  CHECK(answer.margin.central == sharp.margin.central);
  in.edge_to_rim = metres(std::numeric_limits<double>::quiet_NaN());
  CHECK_THROWS_AS((void)tp::all_drains_blocked(in), invalid_input);
  in = system();
  in.top_off = litres(-1.0);
  CHECK_THROWS_AS((void)tp::all_drains_blocked(in), invalid_input);
  in = system();
  in.system.returns[0].flow = litres_per_hour(0.0);
  CHECK_THROWS_AS((void)tp::all_drains_blocked(in), invalid_input);
}

TEST_CASE("all drains blocked: both ends of the band, by hand") {
  // One chamber, so that nothing stands on a baffle: 0.4 m2 that run at 200 mm, drawn down to an inlet of 50 mm whose bore
  // of 40 mm draws 20 mm deeper at the worst; 5 % of the areas, 5 mm of the level, 10 % of the flow; 1 L in a drain pipe.
  auto in = system();
  in.system.display.edge = tp::standpipe{tp::pipe_bore{millimetres(100.0)}};  // 6000 L/h stand 25 mm high
  in.system.display.drains = {
      {.label = "d", .bore = tp::pipe_bore{metres(std::sqrt(0.004 / 3.14159265358979323846))}, .length = metres(1.0)}};
  in.system.sump.chambers = {{.label = "pump", .horizontal_area = square_metres(0.4)}};
  in.system.sump.baffles.clear();
  in.system.area_uncertainty = percent(5.0);
  in.system.level_uncertainty = millimetres(5.0);
  in.system.flow_uncertainty = percent(10.0);
  in.inlet = tp::pump_inlet{.above_floor = metres(0.05), .bore = tp::pipe_bore{millimetres(40.0)}};
  in.edge_to_rim = metres(0.05);
  const auto answer = tp::all_drains_blocked(in);
  const auto head = [](double flow_part, double weir) {
    return std::pow(flow_part / weir, 2.0 / 3.0) * 0.025;
  };  // h^1.5
  const double worst = 0.001 + 1.05 * 0.4 * (0.205 - 0.03), middle = 0.001 + 0.4 * 0.15,
               mild = 0.001 + 0.95 * 0.4 * (0.195 - 0.07);
  TW_CHECK(by_hand, answer.delivered.high.value(), worst, relative(1e-9));
  TW_CHECK(by_hand, answer.delivered.central.value(), middle, relative(1e-9));
  TW_CHECK(by_hand, answer.delivered.low.value(), mild, relative(1e-9));
  const double high = head(1.1, 0.85) + worst / 1.9, central = 0.025 + middle / 2.0, low = head(0.9, 1.15) + mild / 2.1;
  TW_CHECK(by_hand, answer.over_edge.high.value(), high, relative(1e-9));
  TW_CHECK(by_hand, answer.over_edge.central.value(), central, relative(1e-9));
  TW_CHECK(by_hand, answer.over_edge.low.value(), low, relative(1e-9));
  TW_CHECK(by_hand, answer.margin.low.value(), 0.05 - high, within(1e-10));
  TW_CHECK(by_hand, answer.margin.high.value(), 0.05 - low, within(1e-10));
  TW_CHECK(by_hand, answer.on_the_floor.high.value(), (high - 0.05) * 1.9, relative(1e-8));
  TW_CHECK(by_hand, answer.on_the_floor.central.value(), (central - 0.05) * 2.0, relative(1e-8));
  TW_CHECK(by_hand, answer.on_the_floor.low.value(), std::fmax(low - 0.05, 0.0) * 2.1, within(1e-9));
  TW_CHECK(by_hand, answer.until_dry.value(), middle / (1.1 * 6.0 / 3600.0), relative(1e-9));
  CHECK(answer.caution.text == tp::drains_blocked_caution.text);
  // An inlet at the floor: all of it goes.
  in.inlet.reset();
  TW_CHECK(by_hand, tp::all_drains_blocked(in).delivered.central.value(), 0.001 + 0.4 * 0.2, relative(1e-9));
}

TEST_CASE("all drains blocked: a narrow gap joins chambers as a wide one does") {
  auto in = system();
  in.system.sump.baffles[0].gap = millimetres(0.5);
  const auto running = tp::running_levels(in.system.sump, litres_per_hour(6000.0));
  TW_CHECK(by_hand, tp::all_drains_blocked(in).delivered.central.value(),
           0.4 * 0.20 + 0.3 * running.chambers[0].level.central.value(), relative(1e-9));
}

TEST_CASE("all drains blocked: an inlet at the floor draws all, at either end") {
  auto in = system();
  in.system.sump.chambers = {{.label = "pump", .horizontal_area = square_metres(0.4)}};
  in.system.sump.baffles.clear();
  in.system.level_uncertainty = millimetres(5.0);
  const auto all = tp::all_drains_blocked(in);
  TW_CHECK(by_hand, all.delivered.low.value(), 0.4 * 0.195, relative(1e-9));
  TW_CHECK(by_hand, all.delivered.high.value(), 0.4 * 0.205, relative(1e-9));
  // A bore wider than it lies high draws down to the floor at the worst end, and no deeper.
  in.inlet = tp::pump_inlet{.above_floor = metres(0.01), .bore = tp::pipe_bore{millimetres(40.0)}};
  TW_CHECK(by_hand, tp::all_drains_blocked(in).delivered.high.value(), 0.4 * 0.205, relative(1e-9));
}

TEST_CASE("all drains blocked: what stands over a baffle is that of the flow at the end of its band") {
  auto in = system();
  in.system.flow_uncertainty = percent(10.0);
  const auto answer = tp::all_drains_blocked(in);
  const auto& sump = in.system.sump;
  const double high = tp::running_levels(sump, litres_per_hour(6600.0)).chambers[0].level.high.value(),
               low = tp::running_levels(sump, litres_per_hour(5400.0)).chambers[0].level.low.value();
  TW_CHECK(by_hand, answer.delivered.high.value(), 0.4 * 0.20 + 0.3 * (high - 0.30), relative(1e-9));
  TW_CHECK(by_hand, answer.delivered.low.value(), 0.4 * 0.20 + 0.3 * (low - 0.30), relative(1e-9));
  // Drains that end in the pump chamber leave the one before it at its crest.
  in.system.drains_into = 1;
  TW_CHECK(by_hand, tp::all_drains_blocked(in).delivered.central.value(), 0.4 * 0.20, relative(1e-12));
}

TEST_CASE("all drains blocked: refused in its own name") {
  const auto message = [](const tp::drains_blocked_input& in) {
    return message_of<invalid_input>([&] { (void)tp::all_drains_blocked(in); });
  };
  auto in = system();
  in.system.returns[0].flow = litres_per_hour(0.0);
  CHECK(message(in) == "tankwright::plumbing::all_drains_blocked: display has returns without flow: nothing fills it");
  in = system();
  in.system.reserve = metres(-1.0);
  CHECK(message(in).find("tankwright::plumbing::all_drains_blocked: reserve = -1 m") == 0);
  in = system();
  in.edge_to_rim = metres(-0.01);
  CHECK(message(in).find("tankwright::plumbing::all_drains_blocked: edge_to_rim = -0.01 m") == 0);
  in = system();
  in.inlet = tp::pump_inlet{.above_floor = metres(-0.01), .bore = tp::pipe_bore{millimetres(40.0)}};
  CHECK(message(in).find("tankwright::plumbing::all_drains_blocked: above_floor of the inlet = -0.01 m") == 0);
}
