// SPDX-License-Identifier: BSL-1.0
// The demo plan, whole: what `assess` says of it against the sections called by hand with one state of the system.
#include <algorithm>
#include <set>
#include <string>
#include <vector>

#include "demo_plan.hpp"
#include "plan_file.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twc = tankwright::commissioning;

namespace {

const evidence by_hand{"tankwright::commissioning::assess", kind::identity, "the sections called by hand"};

twc::plan demo() { return plan_file::read_text(demo_plan, "demo plan").build; }

const twc::finding& find(const twc::assessment& all, std::string_view id) {
  const auto found = std::find_if(all.findings.begin(), all.findings.end(), [&](const auto& f) { return f.id == id; });
  REQUIRE_MESSAGE(found != all.findings.end(), id);
  return *found;
}

const amount& number(const twc::assessment& all, std::string_view id, std::string_view label) {
  const auto& numbers = find(all, id).numbers;
  const auto found = std::find_if(numbers.begin(), numbers.end(), [&](const auto& e) { return e.label == label; });
  REQUIRE_MESSAGE(found != numbers.end(), label);
  return found->value;
}

void check_same(const twc::finding& got, const twc::finding& wanted) {
  CAPTURE(wanted.id);
  CHECK(got.id == wanted.id);
  CHECK(got.day == wanted.day);
  CHECK(got.says == wanted.says);
  CHECK(got.note == wanted.note);
  CHECK(got.before_acting == wanted.before_acting);
  CHECK(got.measure_next == wanted.measure_next);
  REQUIRE(got.numbers.size() == wanted.numbers.size());
  for (std::size_t i = 0; i < wanted.numbers.size(); ++i) {
    CHECK(got.numbers[i].label == wanted.numbers[i].label);
    TW_CHECK(by_hand, got.numbers[i].value.low, wanted.numbers[i].value.low, relative(0.0));
    TW_CHECK(by_hand, got.numbers[i].value.central, wanted.numbers[i].value.central, relative(0.0));
    TW_CHECK(by_hand, got.numbers[i].value.high, wanted.numbers[i].value.high, relative(0.0));
  }
}

}  // namespace

TEST_CASE("whole plan: every section, in the order of the job, as if called by hand") {
  const twc::plan plan = demo();
  REQUIRE((plan.hold && plan.vessel && plan.plumbing && plan.water && plan.room && plan.life));
  const auto state = twc::state_of(plan);
  std::vector<twc::finding> wanted;
  const auto add = [&](const std::vector<twc::finding>& some) { wanted.insert(wanted.end(), some.begin(), some.end()); };
  add(twc::assess_first_fill(*plan.vessel, state));
  add(twc::assess_hold(*plan.hold));
  add(twc::assess_plumbing(*plan.plumbing, state));
  add(twc::assess_power_cut(*plan.plumbing, state));
  add(twc::assess_bottom(*plan.vessel, state));
  auto water = *plan.water;
  if (!water.new_water) water.new_water = state.all_water();
  add(twc::assess_water(water));
  add(twc::assess_closing(twc::closing_of(*plan.vessel), state));
  add(twc::assess_room(*plan.room, state));
  add(twc::assess_life(*plan.life, state));
  const auto all = twc::assess(plan);
  REQUIRE(all.findings.size() == wanted.size());
  CHECK(wanted.size() > 45);
  for (std::size_t i = 0; i < wanted.size(); ++i) check_same(all.findings[i], wanted[i]);
}

TEST_CASE("whole plan: one net volume, one flow and one temperature behind the sections") {
  const twc::plan plan = demo();
  const auto state = twc::state_of(plan);
  const auto all = twc::assess(plan);
  const evidence one{"tankwright::commissioning::assess", kind::identity, "the same quantity in two sections"};
  REQUIRE(state.display_water);
  REQUIRE(state.flow);
  TW_CHECK(one, number(all, "vessel.water", find(all, "vessel.water").numbers[0].label).central,
           state.display_water->central.value(), relative(1e-12));
  TW_CHECK(one, number(all, "plumbing.flow", "all returns together").central, state.flow->value(), relative(1e-12));
  TW_CHECK(one, number(all, "plumbing.turnover", "turns").central,
           state.flow->value() / state.display_water->central.value(), relative(1e-12));
  // More rock leaves less water for the salt, more turns, and a shorter time to cool.
  auto fuller = plan;
  for (int i = 0; i < 3; ++i) fuller.vessel->rock.push_back(plan.vessel->rock.front());
  const auto then = twc::assess(fuller);
  const auto central = [](const twc::assessment& a, std::string_view id, std::string_view label) {
    return number(a, id, label).central;
  };
  CHECK(central(then, "plumbing.turnover", "turns") > central(all, "plumbing.turnover", "turns"));
  CHECK(central(then, "room.warm_up", "warm-up") < central(all, "room.warm_up", "warm-up"));
  CHECK(central(then, "life.power_cut", "oxygen lasts, by the surface alone") <
        central(all, "life.power_cut", "oxygen lasts, by the surface alone"));
}

TEST_CASE("whole plan: figures belong to findings, and assess draws none of them") {
  const twc::plan plan = demo();
  const auto all = twc::assess(plan);
  std::set<std::string_view> drawn;
  for (const auto& f : twc::figures_of(plan)) {
    (void)find(all, f.id);
    CHECK(drawn.insert(f.id).second);
  }
  CHECK(drawn == std::set<std::string_view>{"hold.leak", "plumbing.flow", "sump.power_cut", "room.humidity",
                                            "room.outage", "life.start_up"});
}

TEST_CASE("whole plan: any section may be missing") {
  for (int without = 0; without < 6; ++without) {
    CAPTURE(without);
    twc::plan plan = demo();
    if (without == 0) plan.hold.reset();
    if (without == 1) plan.vessel.reset();
    if (without == 2) plan.plumbing.reset();
    if (without == 3) plan.water.reset();
    if (without == 4) plan.room.reset();
    if (without == 5) plan.life.reset();
    const auto all = twc::assess(plan);
    CHECK(all.findings.size() > 20);
    for (const auto& f : all.findings) {
      CAPTURE(f.id);
      if (f.says == twc::verdict::not_enough_known) CHECK_FALSE(f.measure_next.empty());
    }
    for (const auto& f : twc::figures_of(plan)) (void)find(all, f.id);
  }
}
