// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does the floor stay dry when a siphon break is blocked?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/plumbing/power_cut.hpp>

namespace tankwright::decisions {

/// The power cut with each siphon break blocked in turn, and with all of them.
///
///   `plumbing::power_cut_breaks_blocked`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `plumbing/power_cut.hpp`
/// @source    the sources of `plumbing/power_cut.hpp`
void answer_break_blocked(const situation& s, answers& out);

inline constexpr decision break_blocked{.id = "sump.break_blocked",
                                        .day = day::power_cut,
                                        .question = "And when the siphon breaks are blocked?",
                                        .consequence = consequence::flood,
                                        .caution = plumbing::power_cut_caution.text,
                                        .answer = &answer_break_blocked};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/power_cut/break_blocked.ipp>
#endif
