// SPDX-License-Identifier: BSL-1.0
/// @file
/// How high may the water stand in the pump chamber?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/plumbing/power_cut.hpp>

namespace tankwright::decisions {

/// The highest running level that keeps the reserve in the worst case of a power cut.
///
///   `plumbing::highest_safe_running_level`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `plumbing/power_cut.hpp`
/// @source    the sources of `plumbing/power_cut.hpp`
void answer_running_level(const situation& s, answers& out);

inline constexpr decision running_level{.id = "sump.running_level",
                                        .day = day::power_cut,
                                        .question = "How high may the water stand in the pump chamber?",
                                        .consequence = consequence::flood,
                                        .caution = plumbing::power_cut_caution.text,
                                        .answer = &answer_running_level};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/power_cut/running_level.ipp>
#endif
