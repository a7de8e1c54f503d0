// SPDX-License-Identifier: BSL-1.0
/// @file
/// Is the water too fast in any pipe?
#pragma once

#include <tankwright/decisions/decision.hpp>

namespace tankwright::decisions {

/// The fastest water in any pipe, against what is recommended.
///
///   v = Q / A in each run of the solved circuit
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `plumbing/circuit.hpp`
/// @source    the recommendation is common practice
void answer_pipe_velocity(const situation& s, answers& out);

inline constexpr decision pipe_velocity{.id = "plumbing.velocity",
                                        .day = day::plumbing,
                                        .question = "Is the water too fast in any pipe?",
                                        .consequence = consequence::comfort,
                                        .recommendation = true,
                                        .answer = &answer_pipe_velocity};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/plumbing/pipe_velocity.ipp>
#endif
