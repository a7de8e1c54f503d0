// SPDX-License-Identifier: BSL-1.0
/// @file
/// Two questions that cut across the sections: what happens when the power fails, and in which order does one change
/// over from the older tank?
#pragma once

#include <algorithm>
#include <initializer_list>
#include <string_view>
#include <tankwright/commissioning/assess.hpp>
#include <utility>

namespace tankwright::commissioning {

namespace detail {

/// The findings with the given ids, in the order of the ids; those that a plan does not bring are left out.
[[nodiscard]] inline std::vector<finding> picked(const std::vector<finding>& all,
                                                 std::initializer_list<std::string_view> ids) {
  std::vector<finding> some;
  for (const std::string_view id : ids) {
    for (const finding& f : all) {
      if (f.id == id) some.push_back(f);
    }
  }
  return some;
}

/// The verdict of a list: the worst of them; what is not known is worse than a thin margin.
[[nodiscard]] inline verdict worst_of(const std::vector<finding>& some) {
  verdict worst = verdict::for_information;
  const auto rank = [](verdict v) {
    switch (v) {
      case verdict::for_information:
        return 0;
      case verdict::holds:
        return 1;
      case verdict::thin_margin:
        return 2;
      case verdict::not_enough_known:
        return 3;
      case verdict::does_not_hold:
        break;
    }
    return 4;
  };
  for (const finding& f : some) {
    if (rank(f.says) > rank(worst)) worst = f.says;
  }
  return worst;
}

}  // namespace detail

/// A question over several sections, and the findings that answer it.
struct joint_answer {
  verdict says;  ///< the worst of the findings'
  std::vector<finding> findings{};
  std::vector<std::string> steps{};  ///< what to do, in order; only for a changeover
};

/// What happens when the power fails: where the water goes, whether the pump stays wet at the restart, how long the
/// oxygen and the warmth last, and what the room has to do with it. All from one state of the system.
///
///   findings sump.power_cut, .running_level, .outlet_depth, .restart, life.power_cut and room.outage of `assess`
///
/// @param all the plan
/// @return    the findings that it allows, and the worst of their verdicts
/// @throws    invalid_input, out_of_range, no_convergence (from the functions used; they name the element)
/// @accuracy  as its parts
/// @source    the sources of the sections, carried by each finding
[[nodiscard]] inline joint_answer assess_outage(const plan& all) {
  joint_answer answer{.says = verdict::for_information};
  answer.findings = detail::picked(assess(all).findings, {"sump.power_cut", "sump.running_level", "sump.outlet_depth",
                                                          "sump.restart", "life.power_cut", "room.outage"});
  answer.says = detail::worst_of(answer.findings);
  return answer;
}

/// Changing over from an older tank: does the water match, is the filter ready, may the animals come, in which order?
///
///   findings salt.match, water.ammonia, life.filter_today, life.free_ammonia, life.start_up, life.arrivals and
///   life.acclimation of `assess`; a step for each that does not hold yet, then the move itself
///
/// @param all the plan
/// @return    the findings that it allows, the worst of their verdicts, and the steps in order
/// @throws    invalid_input, out_of_range, no_convergence (from the functions used; they name the element)
/// @accuracy  as its parts; the order of the steps is common practice
/// @source    the sources of the sections, carried by each finding
[[nodiscard]] inline joint_answer assess_changeover(const plan& all) {
  joint_answer answer{.says = verdict::for_information};
  answer.findings =
      detail::picked(assess(all).findings, {"salt.match", "water.ammonia", "life.filter_today", "life.free_ammonia",
                                            "life.start_up", "life.arrivals", "life.acclimation"});
  answer.says = detail::worst_of(answer.findings);
  const auto stands_in_the_way = [&](std::string_view id) {
    return std::any_of(answer.findings.begin(), answer.findings.end(), [&](const finding& f) {
      return f.id == id && (f.says == verdict::does_not_hold || f.says == verdict::not_enough_known);
    });
  };
  if (stands_in_the_way("salt.match")) answer.steps.push_back("correct the new water until it matches the older tank");
  answer.steps.push_back("bring the new water to the older tank's temperature, flow and aeration running");
  answer.steps.push_back(
      "move rock and media wet, under flow within the hour, so that the bacteria keep their ammonia");
  if (stands_in_the_way("life.filter_today") || stands_in_the_way("life.free_ammonia")) {
    answer.steps.push_back("hold the animals back or move few: the filter does not yet carry their food");
  }
  answer.steps.push_back("pass a challenge test: ammonia and nitrite both zero a day after a dose, every time");
  if (stands_in_the_way("life.arrivals")) {
    answer.steps.push_back(
        "bring the animals over in clean water of their own salinity and temperature, then slowly on");
  }
  answer.steps.push_back("move the animals, feed little, and measure ammonia and nitrite every day");
  return answer;
}

}  // namespace tankwright::commissioning
