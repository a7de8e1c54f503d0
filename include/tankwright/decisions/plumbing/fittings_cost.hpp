// SPDX-License-Identifier: BSL-1.0
/// @file
/// What do the fittings cost?
#pragma once

#include <tankwright/decisions/decision.hpp>

namespace tankwright::decisions {

/// The loss coefficient of the counted fittings of each pipe, and the head that it takes at the flow of the circuit.
///
///   K = sum of count_i K_i;   h = K v^2/(2 g)
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the band: 30 % of bends, 50 % of valves; as `plumbing/fittings.hpp`
/// @source    Crane TP-410 (2009)
void answer_fittings_cost(const situation& s, answers& out);

inline constexpr decision fittings_cost{.id = "plumbing.fittings",
                                        .day = day::plumbing,
                                        .question = "What do the fittings cost?",
                                        .consequence = consequence::comfort,
                                        .answer = &answer_fittings_cost};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/plumbing/fittings_cost.ipp>
#endif
