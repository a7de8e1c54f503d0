// SPDX-License-Identifier: BSL-1.0
#include <tankwright/commissioning/dry_floor.hpp>

#include <algorithm>
#include <cmath>
#include <string>
#include <tankwright/numerics/monte_carlo.hpp>

#include "lagoon_plumbing.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twc = tankwright::commissioning;
namespace tp = tankwright::plumbing;

namespace {

const std::string name = "tankwright::commissioning::chance_of_dry_floor";

/// A system with everything in it; the first return is the deepest.
tp::power_cut_input lagoon() {
  const auto plan = lagoon_plumbing();
  tp::power_cut_input in{
      .display = plan.display, .sump = plan.sump, .returns = {}, .edge_above_floor = metres(1.5)};
  in.display.drains.clear();
  const tp::pipe_run fitting{.label = "fitting", .bore = tp::pipe_bore{millimetres(34.0)}, .fittings = tp::known_loss(4.0)};
  in.returns = {
      {.label = "left", .flow = litres_per_hour(7000.0), .outlet_below_edge = millimetres(6.0), .pipe = fitting},
      {.label = "right", .flow = litres_per_hour(2500.0), .outlet_below_edge = millimetres(-10.0), .pipe = fitting}};
  in.area_uncertainty = percent(3.0);
  in.level_uncertainty = millimetres(3.0);
  in.flow_uncertainty = percent(6.0);
  return in;
}

double edge_part(const tp::power_cut_input& in) {
  const auto passes = tp::flow_over(in.display.edge, tp::power_cut(in).head_over_edge.central, extrapolate).flow;
  return 0.5 * (passes.high - passes.low).value() / passes.central.value();
}

/// The margin with every area, length and flow of the plan written anew, by the public function.
length margin_by_hand(const tp::power_cut_input& in, double display, double sump, double flow, length level,
                      length outlets, length box) {
  tp::power_cut_input moved = in;
  moved.area_uncertainty = moved.flow_uncertainty = fraction(0.0);
  moved.level_uncertainty = length{};
  for (auto& c : moved.sump.chambers) {
    c.plan = c.plan.at(length{}) * sump;
    c.gear *= sump;
  }
  moved.display.surface = moved.display.surface.get() * display;
  if (moved.display.box) {
    moved.display.box->plan = moved.display.box->plan.get() * display;
    moved.display.box->falls_by = std::max(length{}, moved.display.box->falls_by.get() + box);
  }
  moved.sump.running_level = moved.sump.running_level.get() + level;
  for (auto& line : moved.returns) {
    line.flow = line.flow.get() * flow;
    line.outlet_below_edge = line.outlet_below_edge.get() + outlets;
    if (line.break_below_edge) line.break_below_edge = *line.break_below_edge + outlets;
  }
  return tp::power_cut(moved).margin.central;
}

}  // namespace

TEST_CASE("dry floor: the chance is that of a simulation, whichever doubt dominates") {
  const evidence by_drawing{name, kind::identity, "simulation of the same margin, written anew, JCGM 101"};
  struct doubts {
    double area_percent, level_mm, flow_percent;
  };
  double worst = 0.0;
  for (const auto& d : {doubts{3.0, 3.0, 6.0}, doubts{6.0, 0.5, 2.0}, doubts{0.5, 6.0, 1.0}, doubts{1.0, 1.0, 30.0}}) {
    for (const bool with_break : {false, true}) {
      tp::power_cut_input in = lagoon();
      in.area_uncertainty = percent(d.area_percent);
      in.level_uncertainty = millimetres(d.level_mm);
      in.flow_uncertainty = percent(d.flow_percent);
      if (with_break) {
        in.returns[0].outlet_below_edge = millimetres(35.0);
        in.returns[0].break_below_edge = millimetres(4.0);  // within its doubt of the edge: below it nothing runs back
      }
      const auto area = rectangular(1.0, in.area_uncertainty.value());
      const auto level = rectangular(length{}, in.level_uncertainty);
      const auto drawn = tankwright::numerics::simulate(
          {.samples = 20'000, .seed = 20},
          [&](double display, double sump, double flow, double edges, length running, length outlets, length box) {
            return margin_by_hand(in, display, sump, flow / edges, running, outlets, box);
          },
          area, area, rectangular(1.0, in.flow_uncertainty.value()), rectangular(1.0, edge_part(in)), level, level,
          level);
      const length rim = in.sump.rim, margin = tp::power_cut(in).margin.central;
      for (const double millimetres_left : {-12.0, -8.0, -4.0, -2.0, 0.0, 2.0, 4.0, 8.0, 12.0}) {
        CAPTURE(d.area_percent);
        CAPTURE(d.flow_percent);
        CAPTURE(with_break);
        CAPTURE(millimetres_left);
        in.sump.rim = rim - margin + millimetres(millimetres_left);  // moves the margin, and nothing else
        const double expected = 1.0 - drawn.probability_below(margin - millimetres(millimetres_left));
        const double got = twc::chance_of_dry_floor(in).chance.central.value();
        TW_CHECK(by_drawing, got, expected, tolerance{.absolute = 0.015});
        worst = std::fmax(worst, std::fabs(got - expected));
      }
    }
  }
  MESSAGE("largest difference from the simulation: ", worst);
}

TEST_CASE("dry floor: the uncertainty and its shares in one chamber, by hand") {
  const evidence by_gum{name, kind::identity, "slopes of one chamber worked out by hand, JCGM 100"};
  tp::power_cut_input in = lagoon();
  in.sump.chambers = {{.label = "all", .plan = square_metres(0.9)}};
  in.sump.baffles.clear();
  in.display.box.reset();
  const flow_rate flow = litres_per_hour(9500.0);
  const double head = tp::head_over(in.display.edge, flow).head.central.value();
  const auto head_at = [&](double part) { return tp::head_over(in.display.edge, flow * part).head.central.value(); };
  const auto half = [&](double part) { return 0.5 * (head_at(1.0 + part) - head_at(1.0 - part)); };
  // level = running level + A (h + depth) / sump
  const double ratio = 2.40 / 0.9, rise = ratio * (head + 0.006);
  const double effects[] = {rise * 0.03,
                            0.5 * rise * (1.0 / 0.97 - 1.0 / 1.03),
                            ratio * half(0.06),
                            ratio * half(edge_part(in)),
                            0.003,
                            ratio * 0.003,
                            0.0};
  double variance = 0.0;
  for (const double effect : effects) variance += effect * effect / 3.0;
  const auto dry = twc::chance_of_dry_floor(in);
  TW_CHECK(by_gum, dry.uncertainty, metres(std::sqrt(variance)), relative(1e-9));
  for (std::size_t i = 0; i < 7; ++i) {
    TW_CHECK(by_gum, dry.doubts[i].half_width, metres(effects[i]), tolerance{.absolute = 1e-12});
    TW_CHECK(by_gum, dry.doubts[i].share, effects[i] * effects[i] / 3.0 / variance, tolerance{.absolute = 1e-9});
  }
}

TEST_CASE("dry floor: certain both ways, and without any doubt") {
  const evidence property{name, kind::property, "certain beyond all doubts, monotonic in the rim"};
  tp::power_cut_input in = lagoon();
  in.sump.chambers = {{.label = "all", .plan = square_metres(0.9)}};
  in.sump.baffles.clear();
  const length margin = tp::power_cut(in).margin.central, rim = in.sump.rim;
  double before = 0.0;
  for (double left = -60.0; left <= 60.0; left += 1.0) {
    in.sump.rim = rim - margin + millimetres(left);
    const auto chance = twc::chance_of_dry_floor(in).chance;
    TW_HOLDS(property, chance.central.value() >= before - 1e-12);
    TW_HOLDS(property, chance.low.value() >= 0.0 && chance.high.value() <= 1.0);
    before = chance.central.value();
    if (left == -60.0) TW_HOLDS(property, before == 0.0);
  }
  TW_HOLDS(property, before == 1.0);
  in.area_uncertainty = in.flow_uncertainty = fraction(0.0);
  in.level_uncertainty = length{};
  in.display.edge = tp::full_width_edge{.width = metres(0.80), .crest_height = metres(0.80)};
  const auto almost = twc::chance_of_dry_floor(in);  // the band of the weir formula is still there
  CHECK(almost.doubts[3].share == 1.0);
}

TEST_CASE("dry floor: mistakes are those of the power cut, in its own name") {
  tp::power_cut_input in = lagoon();
  in.flow_uncertainty = percent(100.0);
  CHECK_THROWS_WITH_AS((void)twc::chance_of_dry_floor(in),
                       "tankwright::commissioning::chance_of_dry_floor: flow_uncertainty = 1 is not possible; expected "
                       "at least 0 and below 1",
                       invalid_input);
  in = lagoon();
  in.returns.clear();
  CHECK_THROWS_AS((void)twc::chance_of_dry_floor(in), invalid_input);
}
