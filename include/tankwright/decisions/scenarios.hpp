// SPDX-License-Identifier: BSL-1.0
/// @file
/// Two questions that cut across the sections: what happens when the power fails, and in which order does one change
/// over from the older tank?
#pragma once

#include <string>
#include <tankwright/decisions/assess.hpp>
#include <vector>

namespace tankwright::decisions {

/// A question over several sections, and the findings that answer it.
struct scenario {
  decisions::verdict verdict = decisions::verdict::for_information;  ///< the worst of the findings'
  std::vector<finding> findings{};
  std::vector<std::string> steps{};  ///< what to do, in order; only for a changeover
};

/// What happens when the power fails: where the water goes, what if something else fails too, whether the pump stays
/// wet at the restart, how long the oxygen and the warmth last. All from one state of the system.
///
///   the findings of the day of the power cut, life.power_cut and room.outage
///
/// @param build the plan
/// @return      the findings that it asks for, and the worst of their verdicts
/// @throws      invalid_plan as `assess`
/// @accuracy    as its parts
/// @source      the sources of the decisions, carried by each finding
[[nodiscard]] scenario power_failure(const plan::build& build);

/// Changing over from an older tank: does the water match, is the filter ready, may the animals come, in which order?
///
///   findings salt.match, water.ammonia, life.filter_today, life.free_ammonia, life.start_up, life.arrivals and
///   life.acclimation; a step for each that does not hold yet, then the move itself
///
/// @param build the plan
/// @return      the findings that it asks for, the worst of their verdicts, and the steps in order
/// @throws      invalid_plan as `assess`
/// @accuracy    as its parts; the order of the steps is common practice, no source
/// @source      the sources of the decisions, carried by each finding
[[nodiscard]] scenario changeover(const plan::build& build);

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/scenarios.ipp>
#endif
