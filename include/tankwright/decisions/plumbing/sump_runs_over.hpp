// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does the sump hold its water while the pump runs?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/plumbing/power_cut.hpp>

namespace tankwright::decisions {

/// The level of each chamber while the pump runs, below the rim.
///
///   `plumbing::running_levels`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `plumbing/sump.hpp`
/// @source    the formulas of `plumbing/weirs.hpp`
void answer_sump_runs_over(const situation& s, answers& out);

inline constexpr decision sump_runs_over{.id = "sump.running",
                                         .day = day::plumbing,
                                         .question = "Does the sump hold its water while the pump runs?",
                                         .consequence = consequence::flood,
                                         .caution = plumbing::power_cut_caution.text,
                                         .answer = &answer_sump_runs_over};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/plumbing/sump_runs_over.ipp>
#endif
