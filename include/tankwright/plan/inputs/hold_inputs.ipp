// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/plan/inputs/hold_inputs.hpp>
#include <tankwright/plan/usual.hpp>

namespace tankwright::plan {

namespace detail {

/// What a reservoir may lose, where the plan asks for it.
[[nodiscard]] inline std::optional<tankwright::vessel::tightness_criterion> criterion_of(
    const word<reservoir_criterion>& which) {
  if (!which) return std::nullopt;
  switch (*which) {
    case reservoir_criterion::awwa_1978:
      return tankwright::vessel::awwa_1978;
    case reservoir_criterion::bs_5337:
      return tankwright::vessel::bs_5337;
    case reservoir_criterion::aci_350_class_025:
      return tankwright::vessel::aci_350_025;
    case reservoir_criterion::awwa_d110:
      break;
  }
  return tankwright::vessel::awwa_d110;
}

[[nodiscard]] inline tankwright::vessel::leak_test test_of(const hold_section& s, flow_rate that_matters) {
  tankwright::vessel::leak_test test{.surface = *s.surface, .depth = *s.depth, .resolution = *s.resolution};
  for (std::size_t i = 0; i < s.times.size(); ++i) {
    tankwright::vessel::level_reading one{.at = s.times[i], .level = s.levels[i]};
    if (s.water.given()) one.water = s.water[i];
    if (s.pan.given()) one.pan = s.pan[i];
    if (s.reader.given()) one.reader = "reader " + std::to_string(static_cast<int>(s.reader[i]));
    test.readings.push_back(std::move(one));
  }
  test.salinity = *s.salinity;
  test.confidence = *s.confidence;
  test.leak_that_matters = that_matters;
  test.criterion = criterion_of(s.criterion);
  test.capacity = s.capacity.maybe();
  test.label.clear();
  return test;
}

[[nodiscard]] inline tankwright::vessel::leak_test_plan plan_of(const planned_leak_test& p, area surface) {
  tankwright::vessel::leak_test_plan made{.surface = surface, .resolution = *p.resolution};
  made.scatter = *p.scatter;
  made.readings_per_day = *p.readings_per_day;
  made.pan = p.pan;
  if (p.evaporation) {
    const velocity fall = *p.evaporation;
    const velocity half = velocity::from_value(half_width(p.evaporation, usual::given_evaporation));
    made.evaporation = {std::max(fall - half, velocity{}), fall, fall + half, "evaporation as given"};
  }
  return made;
}

}  // namespace detail

TANKWRIGHT_INLINE hold_inputs inputs_of(const hold_section& s) {
  hold_inputs in{.leak_that_matters = tankwright::vessel::household_leak, .water = celsius(20.0)};
  if (s.leak) {
    in.leak_that_matters = *s.leak;
  } else if (s.planned && s.planned->leak) {
    in.leak_that_matters = *s.planned->leak;
  }
  if (s.times.given()) in.done = detail::test_of(s, in.leak_that_matters);
  if (s.water_temperature) {
    in.water = *s.water_temperature;
  } else if (s.water.given()) {
    in.water = s.water[0];
  }
  if (s.air_temperature) in.air = room::air{.temperature = *s.air_temperature, .humidity = *s.air_humidity};
  if (s.planned) in.planned = detail::plan_of(*s.planned, *s.surface);
  return in;
}

}  // namespace tankwright::plan
