// SPDX-License-Identifier: BSL-1.0
/// @file
/// One call for the whole plan: every decision of the job, in order, from one description.
#pragma once

#include <span>
#include <tankwright/decisions/assessment.hpp>
#include <tankwright/decisions/decision.hpp>
#include <tankwright/decisions/figure.hpp>
#include <tankwright/plan/build.hpp>
#include <tankwright/plan/mistake.hpp>

namespace tankwright::decisions {

/// Every decision of the library, in the order of the job.
///
/// @return   the decisions
/// @accuracy exact
/// @source   this library
[[nodiscard]] std::span<const decision* const> all_decisions() noexcept;

/// Every decision of the job that the plan asks for, in the order of the job.
///
///   one `situation` feeds all of them, so that one net volume serves salt, heat, drain-down and animals
///
/// @param build the plan
/// @return      the findings; their pictures are made by `figures_of`, when somebody looks
/// @throws      invalid_plan with all that `validate` finds; nothing else but std::bad_alloc: what an engine refuses
///              silences its finding
/// @accuracy    as its parts
/// @source      the sources of the decisions, carried by each finding
[[nodiscard]] assessment assess(const plan::build& build);

/// One decision alone.
///
/// @param build the plan
/// @param id    of the decision: "sump.power_cut"
/// @return      its findings: none where the plan does not ask it, several where it has several places
/// @throws      invalid_input for an unknown id, naming the nearest; invalid_plan as `assess`
/// @accuracy    as its parts
/// @source      the sources of the decision
[[nodiscard]] std::vector<finding> assess_one(const plan::build& build, std::string_view id);

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/assess.ipp>
#endif
