// SPDX-License-Identifier: BSL-1.0
#include <algorithm>
#include <tankwright/commissioning/joint.hpp>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twc = tankwright::commissioning;

namespace {

twc::plan plan_with_sump() {
  twc::plumbing_plan plumbing{
      .display = {.surface = square_metres(2.4),
                  .edge = tankwright::plumbing::full_width_edge{.width = metres(0.8), .crest_height = metres(0.8)}},
      .sump = {.rim = metres(0.45),
               .running_level = metres(0.25),
               .chambers = {{.label = "pump", .plan = square_metres(0.9)}}}};
  plumbing.circuit.sources = {{.label = "sump", .level = metres(0.25)}};
  plumbing.circuit.pumps = {{.label = "pump",
                             .from = "sump",
                             .to = "start",
                             .curve = tankwright::plumbing::curve_from_one_point(
                                 "pump", {.flow = litres_per_hour(6000.0), .head = metres(2.5)})}};
  plumbing.circuit.runs = {{.label = "pipe",
                            .from = "start",
                            .to = "return",
                            .bore = tankwright::plumbing::pipe_bore{millimetres(42.6)},
                            .length = metres(3.0)}};
  plumbing.circuit.outlets = {
      {.label = "return", .kind = tankwright::plumbing::outlet_kind::submerged, .level = metres(1.4)}};
  plumbing.returns = {{.label = "return", .below_edge = millimetres(20.0)}};
  twc::water_plan water{.temperature = celsius(24.0)};
  water.new_water = estimate<volume>{litres(2100.0), litres(2150.0), litres(2200.0), "tape measure"};
  water.older_tank = practical_salinity{35.0};
  return {.title = "lagoon", .plumbing = plumbing, .water = water};
}

bool has(const std::vector<std::string>& steps, std::string_view word) {
  return std::any_of(steps.begin(), steps.end(), [&](const auto& s) { return s.find(word) != std::string::npos; });
}

}  // namespace

TEST_CASE("outage: the findings of the sections, and the worst verdict") {
  const evidence by_hand{"tankwright::commissioning::assess_outage", kind::identity, "the sections called by hand"};
  auto plan = plan_with_sump();
  const auto cut = twc::assess_power_cut(*plan.plumbing, twc::state_of(plan));
  auto answer = twc::assess_outage(plan);
  REQUIRE(answer.findings.size() == 3);  // power cut, running level, outlet depth; no inlet, no room, no animals
  TW_CHECK(by_hand, answer.findings[0].numbers[0].value.central, cut[0].numbers[0].value.central, relative(0.0));
  TW_HOLDS(by_hand, answer.findings[0].id == "sump.power_cut");
  TW_HOLDS(by_hand, answer.says == twc::verdict::holds);
  plan.plumbing->returns[0].below_edge = millimetres(200.0);  // 480 L over a sump that holds 180 L more
  answer = twc::assess_outage(plan);
  TW_HOLDS(by_hand, answer.says == twc::verdict::does_not_hold);
  for (const auto& f : answer.findings) CHECK_FALSE(f.before_acting.empty());
}

TEST_CASE("changeover: steps in order, and one more for what does not hold yet") {
  const evidence by_hand{"tankwright::commissioning::assess_changeover", kind::identity, "the sections called by hand"};
  auto plan = plan_with_sump();
  plan.water->now = practical_salinity{35.2};
  auto answer = twc::assess_changeover(plan);
  TW_HOLDS(by_hand, answer.findings.size() == 1 && answer.findings[0].id == "salt.match");
  TW_HOLDS(by_hand, answer.says == twc::verdict::holds);
  TW_HOLDS(by_hand, !has(answer.steps, "correct the new water"));
  TW_HOLDS(by_hand, has(answer.steps, "challenge test"));
  plan.water->now = practical_salinity{33.0};
  answer = twc::assess_changeover(plan);
  TW_HOLDS(by_hand, answer.says == twc::verdict::does_not_hold);
  REQUIRE_FALSE(answer.steps.empty());
  TW_HOLDS(by_hand, answer.steps.front().find("correct the new water") == 0);
  const evidence practice{"tankwright::commissioning::assess_changeover", kind::common_practice,
                          "rock and fish move together, so that the bacteria keep their ammonia (no source)"};
  TW_HOLDS(practice, has(answer.steps, "bacteria keep their ammonia"));
}
