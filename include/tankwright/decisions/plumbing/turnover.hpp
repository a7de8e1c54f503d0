// SPDX-License-Identifier: BSL-1.0
/// @file
/// Is the display turned over as often as wanted?
#pragma once

#include <tankwright/decisions/decision.hpp>

namespace tankwright::decisions {

/// How often the flow of the returns changes the water of the display.
///
///   turnover = Q / V, Q of all returns, V net of what stands in the water
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the bands of flow and net volume at their worst together
/// @source    Todini and Pilati 1988
void answer_turnover(const situation& s, answers& out);

inline constexpr decision turnover{.id = "plumbing.turnover",
                                   .day = day::plumbing,
                                   .question = "Is the display turned over as often as wanted?",
                                   .consequence = consequence::animals,
                                   .answer = &answer_turnover};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/plumbing/turnover.ipp>
#endif
