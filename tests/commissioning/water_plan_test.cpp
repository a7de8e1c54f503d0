// SPDX-License-Identifier: BSL-1.0
#include <tankwright/commissioning/water_plan.hpp>

#include <algorithm>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twc = tankwright::commissioning;

namespace {

const evidence by_hand{"tankwright::commissioning::assess_water", kind::identity, "the same calls by hand"};

const twc::finding& find(const std::vector<twc::finding>& all, std::string_view id) {
  const auto found = std::find_if(all.begin(), all.end(), [&](const auto& f) { return f.id == id; });
  REQUIRE_MESSAGE(found != all.end(), id);
  return *found;
}

const amount& number(const twc::finding& f, std::string_view label) {
  const auto found = std::find_if(f.numbers.begin(), f.numbers.end(), [&](const auto& e) { return e.label == label; });
  REQUIRE_MESSAGE(found != f.numbers.end(), label);
  return found->value;
}

twc::water_plan plan_to_match() {
  twc::water_plan plan{.temperature = celsius(24.0)};
  plan.new_water = estimate<volume>{litres(2100.0), litres(2150.0), litres(2200.0), "tape measure"};
  plan.mix_yield = estimate<proportion>{percent(85.0), percent(87.0), percent(89.0), "trial batch"};
  plan.older_tank = water::hydrometer_observation{
      .reading = 1.0245, .water = celsius(26.0), .instrument = {.scale = water::scale_60f_60f, .division = 0.0005}};
  plan.hydrometer = water::hydrometer{.scale = water::scale_60f_60f};
  return plan;
}

}  // namespace

TEST_CASE("salting: the findings are the parts called by hand") {
  const auto plan = plan_to_match();
  const auto all = twc::assess_water(plan);
  const auto target = twc::salinity_of(*plan.older_tank);
  const auto mix = [&](volume v, practical_salinity s, proportion y) {
    return in_kilograms(water::salt_for_finished_volume(
                            {.volume = v, .target = s, .temperature = celsius(24.0), .mix_yield = y})
                            .mix);
  };
  const amount& weighed = number(find(all, "salt.mix"), "mix to weigh out");
  TW_CHECK(by_hand, weighed.central, mix(litres(2150.0), target.central, percent(87.0)), relative(1e-14));
  TW_CHECK(by_hand, weighed.low, mix(litres(2100.0), target.low, percent(89.0)), relative(1e-14));
  TW_CHECK(by_hand, weighed.high, mix(litres(2200.0), target.high, percent(85.0)), relative(1e-14));
  TW_CHECK(by_hand, number(find(all, "salt.readings"), "hydrometer").central,
           water::hydrometer_reading(target.central, celsius(24.0), *plan.hydrometer), relative(1e-15));
  TW_CHECK(by_hand, number(find(all, "water.oxygen"), "oxygen at saturation").central,
           water::oxygen_saturation_concentration(target.central, celsius(24.0)).value(), relative(1e-15));
  CHECK_FALSE(find(all, "salt.mix").before_acting.empty());
}

TEST_CASE("salting: the match is judged through both bands") {
  auto plan = plan_to_match();
  plan.older_tank = practical_salinity{35.0};
  const auto verdict_at = [&](double s, double within_salinity) {
    plan.now = practical_salinity{s};
    plan.match_within = practical_salinity{within_salinity};
    return find(twc::assess_water(plan), "salt.match").says;
  };
  CHECK(verdict_at(35.4, 0.5) == twc::verdict::holds);
  CHECK(verdict_at(34.4, 0.5) == twc::verdict::does_not_hold);
  plan.now = water::hydrometer_observation{
      .reading = 1.0245, .water = celsius(26.0), .instrument = {.scale = water::scale_60f_60f}};
  plan.match_within = practical_salinity{0.5};
  const auto all = twc::assess_water(plan);
  const auto& match = find(all, "salt.match");
  CHECK(match.says == twc::verdict::thin_margin);  // 0.25 apart, but the hydrometer is good to 0.66
  CHECK_FALSE(match.before_acting.empty());
  CHECK_FALSE(match.measure_next.empty());
}

TEST_CASE("salting: what to add or to take out") {
  auto plan = plan_to_match();
  plan.older_tank = practical_salinity{35.0};
  plan.now = practical_salinity{33.0};
  auto all = twc::assess_water(plan);
  TW_CHECK(by_hand, number(find(all, "salt.match"), "mix to add").central,
           in_kilograms(water::raise_salinity({.volume = litres(2150.0), .from = practical_salinity{33.0},
                                               .target = practical_salinity{35.0}, .temperature = celsius(24.0),
                                               .mix_yield = percent(87.0)})
                            .mix),
           relative(1e-14));
  plan.now = practical_salinity{37.0};
  all = twc::assess_water(plan);
  CHECK(number(find(all, "salt.match"), "fresh water to put in").central > 0.0);
}

TEST_CASE("salting: what is missing is said") {
  const auto all = twc::assess_water({.temperature = celsius(24.0)});
  CHECK(find(all, "salt.mix").says == twc::verdict::not_enough_known);
  CHECK_FALSE(find(all, "salt.mix").measure_next.empty());
  CHECK_FALSE(find(all, "salt.target").measure_next.empty());
  auto plan = plan_to_match();
  plan.ammonia = water::total_ammonia::from_nitrogen(milligrams_per_litre(0.05));
  plan.ph = water::ph_nbs{8.1};
  CHECK_FALSE(find(twc::assess_water(plan), "water.ammonia").before_acting.empty());
}
