// SPDX-License-Identifier: BSL-1.0
/// @file
/// The drains are slow to take the whole flow: does the display hold it meanwhile?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/plumbing/priming.hpp>

namespace tankwright::decisions {

/// The first half minute, until siphons run full: how high the display rises, against its rim.
///
///   left = edge to rim - head over the edge - held up / surface; held up by `plumbing::held_up_while_priming`, or by
///   the surge as it was seen
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `plumbing/priming.hpp`; how long a drain takes to run full is common practice
/// @source    Hills 1983; Wyly and Eaton 1961
void answer_surge(const situation& s, answers& out);

inline constexpr decision surge{.id = "plumbing.surge",
                                .day = day::plumbing,
                                .question = "Does the display hold what comes before the drains take the whole flow?",
                                .consequence = consequence::flood,
                                .caution = plumbing::drain_caution.text,
                                .answer = &answer_surge};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/plumbing/surge.ipp>
#endif
