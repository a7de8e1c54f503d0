// SPDX-License-Identifier: BSL-1.0
#include "plan_file.hpp"

namespace plan_file {

using namespace tankwright;
namespace twc = tankwright::commissioning;

namespace {

/// The series times, levels, and where they are given water and pan, side by side.
std::vector<vessel::level_reading> readings_from(section& in) {
  const auto times = in.list<duration>("times");
  const auto levels = in.list<length>("levels");
  const auto waters = in.list<temperature>("water");
  const auto pans = in.list<length>("pan");
  const auto same_length = [&](std::string_view key, std::size_t count) {
    if (count != times.size()) {
      in.fail_key(key, "has " + std::to_string(count) + " entries, times has " + std::to_string(times.size()));
    }
  };
  same_length("levels", levels.size());
  if (in.has("water")) same_length("water", waters.size());
  if (in.has("pan")) same_length("pan", pans.size());
  std::vector<vessel::level_reading> readings;
  for (std::size_t i = 0; i < times.size(); ++i) {
    vessel::level_reading reading{.at = times[i], .level = levels[i]};
    if (!waters.empty()) reading.water = waters[i];
    if (!pans.empty()) reading.pan = pans[i];
    readings.push_back(reading);
  }
  return readings;
}

std::optional<vessel::tightness_criterion> criterion_from(section& in) {
  const auto which = in.word("criterion", {"AWWA D110", "AWWA 1978", "BS 5337", "ACI 350.1 class 025"});
  if (!which) return std::nullopt;
  switch (*which) {
    case 1: return vessel::awwa_1978;
    case 2: return vessel::bs_5337;
    case 3: return vessel::aci_350_025;
    default: return vessel::awwa_d110;
  }
}

vessel::leak_test_plan planned_from(section& in, area surface) {
  vessel::leak_test_plan plan{.surface = surface, .resolution = in.need<length>("resolution")};
  plan.scatter = in.value_or<length>("scatter", length{});
  plan.readings_per_day = in.value_or<double>("readings_per_day", plan.readings_per_day);
  plan.pan = in.flag("pan", false);
  if (const auto fall = in.maybe<velocity>("evaporation")) {
    const double band = in.value_or<proportion>("evaporation_uncertainty", percent(35.0)).value();
    plan.evaporation = {*fall * (1.0 - band), *fall, *fall * (1.0 + band), "evaporation as given"};
  }
  return plan;
}

}  // namespace

twc::hold_section read_hold(section& in) {
  twc::hold_section hold;
  const area surface = in.need<area>("surface");
  if (in.has("times") || in.has("levels")) {
    vessel::leak_test test{.surface = surface, .depth = in.need<length>("depth"),
                           .resolution = in.need<length>("resolution")};
    test.capacity = in.need<volume>("capacity");
    test.label.clear();
    test.readings = readings_from(in);
    test.criterion = criterion_from(in);
    if (const auto s = in.maybe<practical_salinity>("salinity")) test.salinity = *s;
    if (const auto confidence = in.maybe<proportion>("confidence")) test.confidence = *confidence;
    hold.done = test;
    hold.water = in.value_or<temperature>("water_temperature",
                                          test.readings.empty() ? hold.water
                                                                : test.readings.front().water.value_or(hold.water));
    if (const auto warmth = in.maybe<temperature>("air_temperature")) {
      hold.air = room::air{.temperature = *warmth, .humidity = in.need<relative_humidity>("air_humidity")};
    }
  }
  if (auto planned = in.sub("planned")) {
    hold.leak_to_see = planned->need<flow_rate>("leak");
    hold.planned = planned_from(*planned, surface);
    planned->finish();
  }
  in.finish();
  in.attempt([&] { return twc::assess_hold(hold); },
             {{"largest change of the level", "levels"},
              {"largest change in the pan", "pan"},
              {"resolution", "resolution"},
              {"confidence", "confidence"}});
  return hold;
}

}  // namespace plan_file
