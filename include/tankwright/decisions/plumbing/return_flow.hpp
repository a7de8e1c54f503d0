// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much flow do I really get?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/plumbing/circuit.hpp>

namespace tankwright::decisions {

/// What the returns deliver together and each by itself.
///
///   `plumbing::operating_point` with the losses at both ends and in the middle of their bands
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `plumbing/circuit.hpp`
/// @source    Todini and Pilati 1988
void answer_return_flow(const situation& s, answers& out);

inline constexpr decision return_flow{.id = "plumbing.flow",
                                      .day = day::plumbing,
                                      .question = "How much flow do I really get?",
                                      .consequence = consequence::equipment,
                                      .caution = plumbing::circuit_caution.text,
                                      .answer = &answer_return_flow};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/plumbing/return_flow.ipp>
#endif
