// SPDX-License-Identifier: BSL-1.0
/// @file
/// How long does the alkalinity last?
#pragma once

#include <tankwright/core/estimate.hpp>
#include <tankwright/decisions/decision.hpp>

namespace tankwright::decisions {

/// The alkalinity left above the lowest when it is measured next, and the days until then.
///
///   left = A - A_lowest - fall t
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  stoichiometry within the load; corals, algae and food move alkalinity too
/// @source    Ebeling et al. 2006 (from memory); Gujer and Jenkins 1974
void answer_alkalinity(const situation& s, answers& out);

inline constexpr caution alkalinity_stalls{
    "Nitrification stalls when the alkalinity runs out, and ammonia rises. Measure it every week while a filter works "
    "hard."};

inline constexpr decision alkalinity{.id = "life.alkalinity",
                                     .day = day::moving_in,
                                     .question = "How long does the alkalinity last?",
                                     .consequence = consequence::animals,
                                     .caution = alkalinity_stalls.text,
                                     .answer = &answer_alkalinity};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/moving_in/alkalinity.ipp>
#endif
