// SPDX-License-Identifier: BSL-1.0
#include <tankwright/commissioning/power_cut_plan.hpp>
#include <tankwright/plumbing/power_cut_limits.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "lagoon_plumbing.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twc = tankwright::commissioning;
namespace tp = tankwright::plumbing;

namespace {

const evidence by_hand{"tankwright::commissioning::assess_power_cut", kind::identity, "the same calls by hand"};

const twc::system_state state{.water = celsius(24.0), .salinity = practical_salinity{34.0}};
const water::liquid liquid = water::seawater(state.salinity, state.water);

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

twc::finding finding_of(const twc::plumbing_plan& plan, std::string_view id) {
  return find(twc::assess_power_cut(plan, state), id);
}

/// The power cut of a plan, put together again.
tp::power_cut_input input_by_hand(const twc::plumbing_plan& plan) {
  const auto solved = tp::operating_point(plan.circuit, liquid);
  tp::power_cut_input in{
      .display = plan.display, .sump = plan.sump, .returns = {}, .edge_above_floor = metres(0.0)};
  for (const auto& o : plan.circuit.outlets) {
    if (o.label == plan.returns.back().label) in.edge_above_floor = o.level;
  }
  in.drains_into = plan.drains_into;
  in.area_uncertainty = plan.area_uncertainty;
  in.level_uncertainty = plan.level_uncertainty;
  const auto delivered = [&](tp::losses l) { return tp::operating_point(plan.circuit, liquid, l).delivered.value(); };
  in.flow_uncertainty = fraction(0.5 * (delivered(tp::losses::least) - delivered(tp::losses::most)) /
                                 solved.delivered.value());
  in.reserve = plan.reserve;
  for (const auto& outlet : plan.returns) {
    in.returns.push_back({.label = outlet.label,
                          .flow = solved.outlet(outlet.label).flow,
                          .outlet_below_edge = outlet.below_edge,
                          .break_below_edge = outlet.siphon_break,
                          .pipe = outlet.pipe});
  }
  in.shared_pipes = {{.pipe = plan.shared_pipes.front()}};
  return in;
}

/// The lagoon with returns that need no siphon break.
twc::plumbing_plan without_breaks() {
  auto plan = lagoon_plumbing();
  plan.returns[0].below_edge = millimetres(6.0);
  plan.returns[0].siphon_break.reset();
  return plan;
}

/// With a sump whose rim leaves this much at the low, or in the middle, of the band.
twc::plumbing_plan with_margin(twc::plumbing_plan plan, length (*which)(const estimate<length>&), length margin) {
  plan.sump.rim = plan.sump.rim.get() + margin - which(tp::power_cut(input_by_hand(plan)).margin);
  return plan;
}
length low(const estimate<length>& e) { return e.low; }
length central(const estimate<length>& e) { return e.central; }

}  // namespace

TEST_CASE("power cut: the findings are power_cut and restart by hand") {
  const auto plan = lagoon_plumbing();
  const auto in = input_by_hand(plan);
  const auto cut = tp::power_cut(in);
  const auto all = twc::assess_power_cut(plan, state);
  const auto same = [&](const twc::finding& f, std::string_view label, const auto& e) {
    const amount expected = amount_of(e);
    const amount actual = number(f, label);
    CHECK(actual.quantity == expected.quantity);
    TW_CHECK(by_hand, actual.low, expected.low, relative(1e-13));
    TW_CHECK(by_hand, actual.central, expected.central, relative(1e-13));
    TW_CHECK(by_hand, actual.high, expected.high, relative(1e-13));
  };
  const auto& floor = find(all, "sump.power_cut");
  same(floor, "left below the rim of the sump", cut.margin);
  same(floor, "wanted at least", plan.reserve);
  same(floor, "comes down", cut.falls.total);
  same(floor, "of it over the edge", cut.falls.over_edge);
  same(floor, "of it by back-siphon", cut.falls.back_siphon);
  same(floor, "the sump still holds", cut.spare);
  auto blocked = in;
  blocked.breaks_blocked = true;
  const length blocked_margin = tp::power_cut(blocked).margin.low;
  same(floor, "left if the siphon breaks are blocked", blocked_margin);
  same(find(all, "sump.running_level"), "it runs at", metres(0.25));
  same(find(all, "sump.running_level"), "may run at", tp::highest_safe_running_level(in).value());
  same(find(all, "sump.outlet_depth"), "deepest, left, below the edge", millimetres(35.0));
  same(find(all, "sump.outlet_depth"), "draws air last, left, at", millimetres(6.0));
  same(find(all, "sump.outlet_depth"), "may sit below the edge", tp::deepest_safe_outlet(in).value());
  const auto again = tp::restart({.system = in, .inlet = *plan.inlet});
  same(find(all, "sump.restart"), "over what keeps a vortex away", again.margin);
  same(find(all, "sump.restart"), "lowest level of the pump chamber", again.lowest_level);
  same(find(all, "sump.restart"), "until water runs over the edge again", again.until_it_runs_over);

  for (const auto& f : all) CHECK_FALSE(f.before_acting.empty());
  CHECK(floor.before_acting == tp::power_cut_caution.text);
  CHECK(find(all, "sump.restart").before_acting == tp::restart_caution.text);
  for (const auto& f : all) CHECK_FALSE(f.sources.empty());
}

TEST_CASE("power cut: what stands in the pipes comes down, the trunk's water too") {
  const auto plan = lagoon_plumbing();
  const auto contents = [](double bore_mm, double length_m) {
    return 0.25 * std::numbers::pi * bore_mm * bore_mm * 1e-6 * length_m;
  };
  const auto cut = tp::power_cut(input_by_hand(plan));
  const double pipes = contents(57.0, 1.8) + contents(57.0, 1.6) + contents(34.0, 3.2) + contents(81.4, 1.3);
  TW_CHECK(by_hand, number(finding_of(plan, "sump.power_cut"), "comes down").central,
           2.40 * (cut.head_over_edge.central.value() + 0.006) + 0.06 * 0.120 + pipes, relative(1e-12));
}

TEST_CASE("power cut: the chance of a dry floor, and the measurement that narrows it most") {
  const auto plan = with_margin(without_breaks(), central, millimetres(7.0));
  const auto dry = twc::chance_of_dry_floor(input_by_hand(plan));
  const auto floor = finding_of(plan, "sump.power_cut");
  const amount chance = number(floor, "chance of a dry floor");
  TW_CHECK(by_hand, chance.central, dry.chance.central.value(), relative(1e-13));
  CHECK(chance.low < chance.central);  // no digits that the method does not have
  REQUIRE_FALSE(floor.measure_next.empty());
  const auto& outlets = dry.doubts[5];
  CHECK(outlets.of == twc::margin_doubt::outlet_depth);
  for (const auto& d : dry.doubts) CHECK(d.share <= outlets.share);
  CHECK(floor.measure_next.front() == "measure the depth of the return outlets better: it makes " +
                                          std::to_string(static_cast<int>(std::round(100.0 * outlets.share))) +
                                          " % of the doubt");
  // Where nothing is in doubt there is nothing to measure better.
  auto sure = plan;
  sure.area_uncertainty = fraction(0.0);
  sure.level_uncertainty = length{};
  CHECK(finding_of(sure, "sump.power_cut").measure_next.front().find("flow") == std::string::npos);
}

TEST_CASE("power cut: a siphon break is as uncertain in its height as an outlet") {
  auto with_break = without_breaks();
  with_break.returns[0].below_edge = millimetres(40.0);
  with_break.returns[0].siphon_break = millimetres(6.0);
  const auto chance = [](const twc::plumbing_plan& plan, std::string_view label) {
    return number(finding_of(plan, "sump.power_cut"), label).central;
  };
  const auto thin = with_margin(without_breaks(), central, millimetres(8.0));
  with_break.sump.rim = thin.sump.rim;
  TW_CHECK(by_hand, chance(with_break, "chance of a dry floor if they work"), chance(thin, "chance of a dry floor"),
           relative(1e-12));
}

TEST_CASE("power cut: verdicts on both sides of each limit") {
  using enum twc::verdict;
  SUBCASE("margin") {
    const auto at = [](length (*which)(const estimate<length>&), double millimetres_left) {
      const auto plan = with_margin(without_breaks(), which, millimetres(millimetres_left));
      return finding_of(plan, "sump.power_cut").says;
    };
    CHECK(at(low, 20.001) == holds);
    CHECK(at(low, 19.999) == thin_margin);
    CHECK(at(central, 0.001) == thin_margin);
    CHECK(at(central, -0.001) == does_not_hold);
  }
  SUBCASE("margin that hangs on a siphon break") {
    auto plan = with_margin(lagoon_plumbing(), low, millimetres(20.001));
    CHECK(number(finding_of(plan, "sump.power_cut"), "left if the siphon breaks are blocked").central < 0.0);
    CHECK(finding_of(plan, "sump.power_cut").says == thin_margin);
  }
  SUBCASE("running level") {
    auto plan = with_margin(without_breaks(), low, millimetres(10.0));
    const auto safe = tp::highest_safe_running_level(input_by_hand(plan));
    REQUIRE(safe);
    REQUIRE(*safe < metres(0.28));
    const auto runs_at = [&](length level) {
      plan.sump.running_level = level;
      return finding_of(plan, "sump.running_level").says;
    };
    CHECK(runs_at(*safe - metres(1e-6)) == holds);
    CHECK(runs_at(*safe + metres(1e-6)) == thin_margin);  // the floor stays dry in the middle of the band
    plan.sump.running_level = metres(0.25);
    CHECK(finding_of(with_margin(plan, central, metres(-0.001)), "sump.running_level").says == does_not_hold);
    plan.sump.rim = metres(0.32);
    plan.reserve = millimetres(40.0);  // above the baffles that keep the first chambers full
    plan.sump.baffles = {{.crest = metres(0.29), .width = metres(0.58)}, {.crest = metres(0.28), .width = metres(0.58)}};
    const auto small = finding_of(plan, "sump.running_level");
    CHECK(small.says == does_not_hold);
    CHECK(small.note.find("No level is safe") != std::string::npos);
  }
  SUBCASE("depth of the outlets") {
    auto plan = without_breaks();
    const auto safe = tp::deepest_safe_outlet(input_by_hand(plan));
    REQUIRE(safe);
    const auto outlet_at = [&](length below_edge, std::optional<length> siphon_break = std::nullopt) {
      plan.returns[0].below_edge = below_edge;
      plan.returns[0].siphon_break = siphon_break;
      return finding_of(plan, "sump.outlet_depth");
    };
    CHECK(outlet_at(*safe - metres(1e-6)).says == holds);
    CHECK(outlet_at(*safe + metres(1e-6)).says == thin_margin);
    CHECK(outlet_at(*safe + metres(0.1)).says == does_not_hold);
    const auto by_break_alone = outlet_at(*safe + metres(0.1), *safe - metres(1e-6));
    CHECK(by_break_alone.says == thin_margin);
    CHECK(by_break_alone.note.find("siphon break") != std::string::npos);
    // A hole below the opening, or too deep itself, is no siphon break.
    CHECK(outlet_at(*safe + metres(0.1), *safe + metres(0.2)).says == does_not_hold);
    CHECK(outlet_at(*safe + metres(0.2), *safe + metres(0.1)).says == does_not_hold);
    // Another return, without one, decides.
    plan.returns[1].below_edge = *safe + metres(0.1);
    const auto other = outlet_at(*safe + metres(0.2), millimetres(6.0));
    CHECK(other.says == does_not_hold);
    CHECK(other.note.empty());
    CHECK(compare(number(other, "draws air last, right, at").central, (*safe + metres(0.1)).value(), relative(1e-12)).good);
  }
  SUBCASE("restart") {
    auto plan = lagoon_plumbing();
    CHECK(finding_of(plan, "sump.restart").says == holds);
    plan.inlet->above_floor = millimetres(100.0);
    CHECK(finding_of(plan, "sump.restart").says == thin_margin);
    plan.inlet->above_floor = millimetres(240.0);
    CHECK(finding_of(plan, "sump.restart").says == does_not_hold);
    plan.inlet->above_floor = millimetres(20.0);
    plan.surge = metres(2.0);  // of the box: 120 L out of a chamber of 75 L
    CHECK(finding_of(plan, "sump.restart").says == does_not_hold);
  }
}

TEST_CASE("power cut: what is missing is said, never taken as no water") {
  const auto needs = [](const twc::plumbing_plan& plan, std::string_view what) {
    const auto all = twc::assess_power_cut(plan, state);
    REQUIRE(all.size() == 1);
    const auto& f = find(all, "sump.power_cut");
    CHECK(f.says == twc::verdict::not_enough_known);
    CHECK(f.before_acting == tp::power_cut_caution.text);
    REQUIRE_FALSE(f.measure_next.empty());
    CHECK(f.measure_next.front().find(what) != std::string::npos);
  };
  auto plan = lagoon_plumbing();
  plan.returns.clear();
  needs(plan, "each return");
  plan = lagoon_plumbing();
  plan.circuit = {};
  needs(plan, "pump's curve");
  plan = lagoon_plumbing();
  for (auto& outlet : plan.circuit.outlets) outlet.level = metres(6.0);
  needs(plan, "a pump that lifts");
  plan = lagoon_plumbing();
  plan.inlet.reset();
  const auto all = twc::assess_power_cut(plan, state);
  CHECK(std::none_of(all.begin(), all.end(), [](const auto& f) { return f.id == "sump.restart"; }));
}

TEST_CASE("power cut: the sump is drawn to scale") {
  const auto plan = lagoon_plumbing();
  const auto figures = twc::figures_of(plan, state);
  REQUIRE(figures.size() == 2);
  CHECK(figures[0].id == "plumbing.flow");
  CHECK(figures[1].id == "sump.power_cut");
  double rise = 0.0, wide = 0.0;
  for (const auto& plate : figures[1].plates) {
    if (plate.fill == "rise") rise += plate.width * plate.height;
    if (plate.fill == "room") wide += plate.width;
  }
  TW_CHECK(by_hand, wide, 0.9 / 0.58, relative(1e-12));
  // What rises in the picture, over the depth that it is drawn with, is what comes down: less the share of the gear.
  const auto cut = tp::power_cut(input_by_hand(plan));
  double risen = 0.0;
  const double areas[] = {0.24, 0.36, 0.30};
  for (std::size_t i = 0; i < 3; ++i) {
    risen += areas[i] * (cut.settled[i].level.central - cut.running[i].level.central).value();
  }
  TW_CHECK(by_hand, rise * 0.58, risen, relative(1e-12));
}
