// SPDX-License-Identifier: BSL-1.0
#include <tankwright/commissioning/plumbing_plan.hpp>

#include <algorithm>

#include "lagoon_plumbing.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twc = tankwright::commissioning;
namespace tp = tankwright::plumbing;

namespace {

const evidence by_hand{"tankwright::commissioning::assess_plumbing", kind::identity, "the same calls by hand"};
const evidence described{"tankwright::commissioning::describe", kind::identity, "the same calls by hand"};

twc::finding find(const std::vector<twc::finding>& all, std::string_view id) {
  const auto found = std::find_if(all.begin(), all.end(), [&](const auto& f) { return f.id == id; });
  REQUIRE_MESSAGE(found != all.end(), id);
  return *found;
}

amount number(const twc::finding& f, std::string_view label) {
  const auto found = std::find_if(f.numbers.begin(), f.numbers.end(), [&](const auto& e) { return e.label == label; });
  REQUIRE_MESSAGE(found != f.numbers.end(), label);
  return found->value;
}

/// The lagoon with all that a turnover needs.
twc::system_state lagoon_state() {
  twc::system_state state{.water = celsius(24.0), .salinity = practical_salinity{34.0}};
  state.display_water = estimate<volume>{litres(1700.0), litres(1750.0), litres(1800.0), "rock and sand"};
  return state;
}

const twc::system_state state = lagoon_state();
const water::liquid liquid = water::seawater(state.salinity, state.water);

tp::circuit_solution solved(const twc::plumbing_plan& plan, tp::losses which) {
  return tp::operating_point(plan.circuit, liquid, which);
}

twc::verdict verdict_of(const twc::plumbing_plan& plan, std::string_view id) {
  return find(twc::assess_plumbing(plan, state), id).says;
}

}  // namespace

TEST_CASE("plumbing day: flow, velocity and turnover are the circuit solved by hand") {
  auto plan = lagoon_plumbing();
  plan.wanted_turnover = per_hour(4.0);
  const auto all = twc::assess_plumbing(plan, state);
  const auto least = solved(plan, tp::losses::most), central = solved(plan, tp::losses::central),
             most = solved(plan, tp::losses::least);

  const auto& flow = find(all, "plumbing.flow");
  CHECK(flow.says == twc::verdict::for_information);
  TW_CHECK(by_hand, number(flow, "all returns together").low, least.delivered.value(), relative(1e-15));
  TW_CHECK(by_hand, number(flow, "all returns together").central, central.delivered.value(), relative(1e-15));
  TW_CHECK(by_hand, number(flow, "all returns together").high, most.delivered.value(), relative(1e-15));
  TW_CHECK(by_hand, number(flow, "left").central, central.outlet("left").flow.value(), relative(1e-15));
  TW_CHECK(by_hand, number(flow, "head of return pump").central, central.pump("return pump").head.value(),
           relative(1e-15));
  CHECK(flow.before_acting == tp::circuit_caution.text);
  CHECK_FALSE(flow.measure_next.empty());

  const auto& fast = number(find(all, "plumbing.velocity"), "fastest, in trunk");
  TW_CHECK(by_hand, fast.low, least.run("trunk").velocity.value(), relative(1e-15));
  TW_CHECK(by_hand, fast.central, central.run("trunk").velocity.value(), relative(1e-15));
  TW_CHECK(by_hand, fast.high, most.run("trunk").velocity.value(), relative(1e-15));

  const auto& turns = number(find(all, "plumbing.turnover"), "turns");
  TW_CHECK(by_hand, turns.low, least.delivered.value() / 1.800, relative(1e-14));
  TW_CHECK(by_hand, turns.central, central.delivered.value() / 1.750, relative(1e-14));
  TW_CHECK(by_hand, turns.high, most.delivered.value() / 1.700, relative(1e-14));
}

TEST_CASE("plumbing day: the overflow is head_over by hand") {
  const auto plan = lagoon_plumbing();
  const auto& over = find(twc::assess_plumbing(plan, state), "plumbing.overflow");
  const auto head = [&](tp::losses which) { return tp::head_over(plan.display.edge, solved(plan, which).delivered).head; };
  const amount number_over = number(over, "over the edge");
  TW_CHECK(by_hand, number_over.low, head(tp::losses::most).low.value(), relative(1e-15));
  TW_CHECK(by_hand, number_over.central, head(tp::losses::central).central.value(), relative(1e-15));
  TW_CHECK(by_hand, number_over.high, head(tp::losses::least).high.value(), relative(1e-15));
  TW_CHECK(by_hand, number(over, "left below the rim").central, 0.050 - head(tp::losses::central).central.value(),
           relative(1e-14));
  TW_CHECK(by_hand, number(over, "left below the rim").low, 0.050 - head(tp::losses::least).high.value(),
           relative(1e-14));
  CHECK(over.before_acting == tp::circuit_caution.text);
}

TEST_CASE("plumbing day: the drains are drain_mode_for and one_drain_blocked by hand") {
  const auto plan = lagoon_plumbing();
  const auto all = twc::assess_plumbing(plan, state);
  const auto& drains = find(all, "plumbing.drains");
  const flow_rate flow = solved(plan, tp::losses::least).delivered;
  const auto one = tp::drain_mode_for(plan.drains[0], flow, liquid), other = tp::drain_mode_for(plan.drains[1], flow, liquid);
  TW_CHECK(by_hand, number(drains, "all drains carry").low, (one.surely + other.surely).value(), relative(1e-15));
  TW_CHECK(by_hand, number(drains, "all drains carry").central,
           (std::min(one.full.central, one.inlet.central) + std::min(other.full.central, other.inlet.central)).value(),
           relative(1e-15));
  TW_CHECK(by_hand, number(drains, "the returns bring at most").central, flow.value(), relative(1e-15));
  const auto blocked = tp::one_drain_blocked(plan.drains, flow, liquid);
  TW_CHECK(by_hand, number(drains, "with main drain blocked").central, blocked.cases[0].surely.value(),
           relative(1e-15));
  CHECK(drains.before_acting == tp::drain_caution.text);
}

TEST_CASE("plumbing day: describe hands flow, water and surface of the sump on") {
  const auto plan = lagoon_plumbing();
  auto told = state;
  twc::describe(told, plan);
  const flow_rate flow = solved(plan, tp::losses::central).delivered;
  const auto levels = tp::running_levels(plan.sump, flow);
  REQUIRE(told.flow);
  REQUIRE(told.sump_water);
  TW_CHECK(described, *told.flow, flow, relative(1e-15));
  TW_CHECK(described, told.sump_water->central, levels.water, relative(1e-15));
  TW_CHECK(described, told.sump_water->low, levels.water * 0.98, relative(1e-14));
  TW_CHECK(described, told.sump_water->high, levels.water * 1.02, relative(1e-14));
  TW_CHECK(described, *told.sump_surface, square_metres(0.24 + 0.36 - 0.04 + 0.30), relative(1e-14));
  TW_CHECK(described, *told.display_surface, square_metres(2.40), relative(1e-15));
  told.display_surface = square_metres(2.2);  // what the vessel told before stays
  twc::describe(told, plan);
  TW_CHECK(described, *told.display_surface, square_metres(2.2), relative(1e-15));

  auto without_pump = plan;
  without_pump.circuit = {};
  twc::system_state still;
  twc::describe(still, without_pump);
  CHECK_FALSE(still.flow);
  // At rest the chambers stand at their crests and the running level.
  TW_CHECK(described, still.sump_water->central, cubic_metres(0.24 * 0.32 + 0.32 * 0.28 + 0.30 * 0.25), relative(1e-12));
}

TEST_CASE("plumbing day: verdicts on both sides of each limit") {
  using enum twc::verdict;
  auto plan = lagoon_plumbing();
  const auto least = solved(plan, tp::losses::most), central = solved(plan, tp::losses::central),
             most = solved(plan, tp::losses::least);
  SUBCASE("velocity") {
    CHECK(most.run("trunk").velocity < tp::recommended_velocity);
    CHECK(verdict_of(plan, "plumbing.velocity") == holds);
    auto& trunk = plan.circuit.runs[0];
    const auto with_bore = [&](double mm) {
      trunk.bore = tp::pipe_bore{millimetres(mm)};
      const auto speed = [&](tp::losses which) { return solved(plan, which).run("trunk").velocity; };
      const auto says = verdict_of(plan, "plumbing.velocity");
      if (says == thin_margin) {
        CHECK(speed(tp::losses::central) <= tp::recommended_velocity);
        CHECK(speed(tp::losses::least) > tp::recommended_velocity);
      }
      if (says == does_not_hold) CHECK(speed(tp::losses::central) > tp::recommended_velocity);
      return says;
    };
    CHECK(with_bore(54.0) == thin_margin);
    CHECK(with_bore(45.0) == does_not_hold);
  }
  SUBCASE("turnover") {
    const auto wanted = [&](double times_a_second) {
      plan.wanted_turnover = rate::from_value(times_a_second);
      return verdict_of(plan, "plumbing.turnover");
    };
    CHECK(verdict_of(plan, "plumbing.turnover") == for_information);
    CHECK(wanted(0.999999 * least.delivered.value() / 1.8) == holds);
    CHECK(wanted(1.000001 * least.delivered.value() / 1.8) == thin_margin);
    CHECK(wanted(0.999999 * central.delivered.value() / 1.75) == thin_margin);
    CHECK(wanted(1.000001 * central.delivered.value() / 1.75) == does_not_hold);
  }
  SUBCASE("rim of the display") {
    const double highest = tp::head_over(plan.display.edge, most.delivered).head.high.value();
    const double middle = tp::head_over(plan.display.edge, central.delivered).head.central.value();
    const auto rim_at = [&](double above_edge) {
      plan.edge_to_rim = metres(above_edge);
      return verdict_of(plan, "plumbing.overflow");
    };
    CHECK(rim_at(highest + 0.020 + 1e-6) == holds);
    CHECK(rim_at(highest + 0.020 - 1e-6) == thin_margin);
    CHECK(rim_at(middle + 1e-6) == thin_margin);
    CHECK(rim_at(middle - 1e-6) == does_not_hold);
    plan.edge_to_rim.reset();
    CHECK(verdict_of(plan, "plumbing.overflow") == for_information);
  }
  SUBCASE("drains") {
    const auto carries = [&](const tp::drain& drain) { return tp::drain_mode_for(drain, most.delivered, liquid); };
    CHECK(verdict_of(plan, "plumbing.drains") == holds);
    plan.drains[1].inlet_head = millimetres(20.0);  // enough together, not enough alone
    CHECK(carries(plan.drains[0]).surely + carries(plan.drains[1]).surely > most.delivered);
    CHECK(carries(plan.drains[1]).surely < most.delivered);
    CHECK(verdict_of(plan, "plumbing.drains") == thin_margin);
    plan.drains.pop_back();
    CHECK(verdict_of(plan, "plumbing.drains") == thin_margin);  // enough, and no second drain
    plan.drains[0].inlet_head = millimetres(20.0);
    CHECK(carries(plan.drains[0]).inlet.central < most.delivered);
    CHECK(verdict_of(plan, "plumbing.drains") == does_not_hold);
  }
  SUBCASE("a pump that lifts nothing") {
    for (auto& outlet : plan.circuit.outlets) outlet.level = metres(6.0);
    const auto flow = find(twc::assess_plumbing(plan, state), "plumbing.flow");
    CHECK(flow.says == does_not_hold);
    CHECK(flow.note.find("return pump lifts nothing") != std::string::npos);
    CHECK(flow.note.find("Nothing comes out of left") != std::string::npos);
  }
}

TEST_CASE("plumbing day: what is missing is said") {
  const auto needs = [](const twc::plumbing_plan& plan, const twc::system_state& known, std::string_view id,
                        std::string_view what) {
    const auto all = twc::assess_plumbing(plan, known);
    const auto& f = find(all, id);
    CHECK(f.says == twc::verdict::not_enough_known);
    REQUIRE_FALSE(f.measure_next.empty());
    CHECK(f.measure_next.front().find(what) != std::string::npos);
    return f;
  };
  auto plan = lagoon_plumbing();
  needs(plan, twc::system_state{}, "plumbing.turnover", "net volume");
  plan.drains.clear();
  CHECK_FALSE(needs(plan, state, "plumbing.drains", "each drain").before_acting.empty());
  plan.circuit.outlets.clear();
  CHECK_FALSE(needs(plan, state, "plumbing.flow", "returns").before_acting.empty());
  plan.circuit.pumps.clear();
  CHECK_FALSE(needs(plan, state, "plumbing.flow", "pump's curve").before_acting.empty());
}

TEST_CASE("plumbing day: the figure meets itself") {
  const auto plan = lagoon_plumbing();
  const auto curves = twc::detail::flow_figure(plan, twc::detail::solve_band(plan, liquid), liquid).curves;
  REQUIRE(curves.size() == 3);
  const auto& gives = curves[0];
  const auto& here = curves[2];
  TW_CHECK(by_hand, here.x[0], solved(plan, tp::losses::central).pump("return pump").flow.value(), relative(1e-15));
  TW_CHECK(by_hand, gives.y.front(), 4.6, relative(1e-15));
  TW_CHECK(by_hand, gives.y.back(), 0.6, relative(1e-12));
}

TEST_CASE("plumbing day: a mistake names the culprit") {
  auto plan = lagoon_plumbing();
  plan.circuit.runs[1].bore = tp::pipe_bore{metres(0.0)};
  CHECK_THROWS_WITH_AS((void)twc::assess_plumbing(plan, state),
                       "tankwright::plumbing::operating_point: left pipe: bore = 0 m is not possible; expected more than 0 m",
                       invalid_input);
}
