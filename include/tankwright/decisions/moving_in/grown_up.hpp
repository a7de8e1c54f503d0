// SPDX-License-Identifier: BSL-1.0
/// @file
/// Is the filter still large enough when they are grown?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/life/nitrification.hpp>

namespace tankwright::decisions {

/// The food of the grown animals, from today's by what a body of their mass uses, against what the mature filter takes;
/// and their use of oxygen.
///
///   food sum(n M^b)/sum(n m^b), with b of each kind
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  b within 0.05; as `life/nitrification.hpp`
/// @source    as `filter_later`
void answer_grown_up(const situation& s, answers& out);

inline constexpr decision grown_up{.id = "life.growth",
                                   .day = day::moving_in,
                                   .question = "Is the filter still large enough when they are grown?",
                                   .consequence = consequence::animals,
                                   .caution = life::film_caution.text,
                                   .answer = &answer_grown_up};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/moving_in/grown_up.ipp>
#endif
