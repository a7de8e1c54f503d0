// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <initializer_list>
#include <string_view>
#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/scenarios.hpp>
#include <tankwright/decisions/situation.hpp>

namespace tankwright::decisions {

namespace detail {

/// The findings of some decisions of the job, from one situation.
template <class Wanted>
[[nodiscard]] scenario scenario_of(const plan::build& build, Wanted wanted) {
  refuse_mistakes(build);
  const situation s{build};
  answers out;
  for (const decision* d : all_decisions()) {
    if (wanted(*d)) out.run(*d, s);
  }
  scenario answer{.findings = out.take()};
  answer.verdict = worst_of(answer.findings);
  return answer;
}

[[nodiscard]] inline bool one_of(std::string_view id, std::initializer_list<std::string_view> ids) {
  return std::find(ids.begin(), ids.end(), id) != ids.end();
}

}  // namespace detail

TANKWRIGHT_INLINE scenario power_failure(const plan::build& build) {
  return detail::scenario_of(build, [](const decision& d) {
    return d.day == day::power_cut || detail::one_of(d.id, {"life.power_cut", "room.outage"});
  });
}

TANKWRIGHT_INLINE scenario changeover(const plan::build& build) {
  scenario answer = detail::scenario_of(build, [](const decision& d) {
    return detail::one_of(d.id, {"salt.match", "water.ammonia", "life.filter_today", "life.free_ammonia",
                                 "life.start_up", "life.arrivals", "life.acclimation"});
  });
  const auto stands_in_the_way = [&](std::string_view id) {
    return std::any_of(answer.findings.begin(), answer.findings.end(),
                       [&](const finding& f) { return f.id == id && f.verdict >= verdict::not_enough_known; });
  };
  std::vector<std::string>& steps = answer.steps;
  if (stands_in_the_way("salt.match")) steps.push_back("correct the new water until it matches the older tank");
  steps.push_back("bring the new water to the older tank's temperature, flow and aeration running");
  steps.push_back("move rock and media wet, under flow within the hour, so that the bacteria keep their ammonia");
  if (stands_in_the_way("life.filter_today") || stands_in_the_way("life.free_ammonia")) {
    steps.push_back("hold the animals back or move few: the filter does not yet carry their food");
  }
  steps.push_back("pass a challenge test: ammonia and nitrite both zero a day after a dose, every time");
  if (stands_in_the_way("life.arrivals")) {
    steps.push_back("bring the animals over in clean water of their own salinity and temperature, then slowly on");
  }
  steps.push_back("move the animals, feed little, and measure ammonia and nitrite every day");
  return answer;
}

}  // namespace tankwright::decisions
