// SPDX-License-Identifier: BSL-1.0
/// @file
/// How high does the water stand over the overflow edge?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/plumbing/circuit.hpp>

namespace tankwright::decisions {

/// The head over the edge, and what is left below the rim of the display.
///
///   `plumbing::head_over` at both ends and in the middle of the flow
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `plumbing/overflow.hpp`
/// @source    Rehbock 1929, Kindsvater and Carter 1957
void answer_overflow_head(const situation& s, answers& out);

inline constexpr decision overflow_head{.id = "plumbing.overflow",
                                        .day = day::plumbing,
                                        .question = "How high does the water stand over the overflow edge?",
                                        .consequence = consequence::flood,
                                        .caution = plumbing::circuit_caution.text,
                                        .answer = &answer_overflow_head};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/plumbing/overflow_head.ipp>
#endif
