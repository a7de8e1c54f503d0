// SPDX-License-Identifier: BSL-1.0
// The day of moving in: what stands beside the pump that lifts nothing, where the forecast rests, limits of nitrate.
#include <cmath>
#include <tankwright/decisions/plumbing/return_flow.hpp>
#include <tankwright/life/levels.hpp>

#include "decisions/moving_in_plan.hpp"
#include "plan/basin.hpp"
#include "plan/mistakes.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

evidence behaves(const char* answer) { return {answer, kind::property, "as the world does"}; }

}  // namespace

TEST_CASE("a pump that lifts nothing silences what needs its flow, and not the plan with animals") {
  plan::build build = moving_in();
  build.plumbing = basin().plumbing;
  build.vessel = lagoon().vessel;
  with(build, {{"plumbing.pump.heads", "1.1 m, 0.8 m, 0.2 m"}, {"water.temperature", "24 °C"}});
  REQUIRE_MESSAGE(plan::validate(build).empty(), mistakes_of(build));
  const auto all = decisions::assess(build);
  CHECK(all.at("plumbing.flow").verdict == verdict::does_not_hold);
  CHECK(all.at("life.load").verdict == verdict::for_information);
  const auto circulation = all.find("life.circulation");
  REQUIRE(circulation != nullptr);
  CHECK(circulation->verdict == verdict::holds);  // by the carbon, which has a pump of its own
  plan::clear(build, "life.circulation.treatment");
  const auto without = decisions::assess(build).at("life.circulation");
  CHECK(without.verdict == verdict::does_not_hold);
  CHECK(without.happens == "Nothing takes it out: no water passes the treatment.");
}

TEST_CASE("the forecast rests at or below the level to stay below, whatever the surfaces are") {
  for (const char* square_metres : {"1 m2", "26 m2", "100000 m2"}) {
    plan::build build = moving_in();
    with(build, {{"life.surface[1].area", square_metres},
                 {"life.start_up.horizon", "300 d"},
                 {"life.ammonia_below", "0.1 mg/L"}});
    plan::set(build, "life.forecast", "true");
    const auto f = answered(build, "life.start_up");
    TW_HOLDS(behaves("tankwright::decisions::answer_start_up"),
             value_of(f, "ammonia_end").high <= 0.1e-3 * (1.0 + 1e-6));
  }
}

TEST_CASE("nitrate: what sensitive animals of the sea should have less than") {
  // Camargo, Alonso and Salamanca 2005: 20 mg/L as nitrogen for marine animals.
  const evidence limit{"tankwright::decisions::answer_start_up", kind::from_memory, "Camargo et al. 2005, abstract"};
  plan::build build = moving_in();
  plan::set(build, "life.forecast", "true");
  TW_CHECK(limit, value_of(answered(build, "life.start_up"), "nitrate_limit").central, 0.020, relative(1e-12));
  CHECK(life::nitrate_limit_sensitive.level < life::nitrate_limit_fish.level);
}

TEST_CASE("oxygen without power: the low end has no surface, and no time jumps where the oxygen lasts for ever") {
  plan::build build = moving_in();
  plan::clear(build, "life.power_cut.battery_air");
  const auto f = answered(build, "life.power_cut");
  // Nothing crosses the surface: what the water holds over the limit, over what is used.
  const double held = value_of(f, "from").central - value_of(f, "lowest").central;
  const double use = (1.3 * value_of(f, "animals_use").central + value_of(f, "filter_uses").central) / 3600.0;
  const evidence by_hand{"tankwright::decisions::answer_oxygen_in_power_cut", kind::identity, "V dC / use"};
  TW_CHECK(by_hand, value_of(f, "bare").low, 1.6 * held / use, relative(1e-6));
  // A larger surface until the middle case never runs out: the band grows to a week and stays there.
  double before = value_of(f, "bare").central;
  for (double area = 2.0; area < 400.0; area *= 1.01) {
    auto state = known_state();
    state.display_surface = square_metres(area);
    const decisions::finding answer = answered(build, "life.power_cut", state);
    const auto* bare = answer.find("bare");
    REQUIRE(bare != nullptr);
    if (area > 2.5) {
      TW_HOLDS(behaves("tankwright::decisions::answer_oxygen_in_power_cut"),
               bare->value.central >= before * (1.0 - 1e-9));
    }
    before = bare->value.central;
  }
  TW_CHECK(by_hand, before, 7.0 * 86400.0, relative(1e-12));
}
