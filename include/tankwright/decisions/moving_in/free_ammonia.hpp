// SPDX-License-Identifier: BSL-1.0
/// @file
/// Will the free ammonia harm the animals at this pH?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/water/ammonia.hpp>

namespace tankwright::decisions {

/// What the filter takes today at the total ammonia whose free part is at its limit, against what the meals ask for.
///
///   L = limit/f(pH, S, t);   spare = takes(L) - needed(L)
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `water::free_ammonia_fraction` and `life::nitrification_rate`; the errors of kit and probe come on top
/// @source    Clegg and Whitfield 1995; US EPA 1989 (from memory)
void answer_free_ammonia(const situation& s, answers& out);

inline constexpr decision free_ammonia{.id = "life.free_ammonia",
                                       .day = day::moving_in,
                                       .question = "Will its free ammonia harm them at this pH?",
                                       .consequence = consequence::animals,
                                       .caution = water::ammonia_caution.text,
                                       .answer = &answer_free_ammonia};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/moving_in/free_ammonia.ipp>
#endif
