// SPDX-License-Identifier: BSL-1.0
/// @file
/// Is the filter ready for these animals today?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/life/nitrification.hpp>

namespace tankwright::decisions {

/// What rock and seeded surfaces take at the level to stay below, against what the meals ask for.
///
///   `balance_of` the filter as it is today
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `life::nitrification_rate`; the rock as it survives its move
/// @source    Nijhof and Bovendeur 1990; Zhu and Chen 2002; Malone and Pfeiffer 2006
void answer_filter_today(const situation& s, answers& out);

inline constexpr decision filter_today{.id = "life.filter_today",
                                       .day = day::moving_in,
                                       .question = "Is the filter ready for these animals today?",
                                       .consequence = consequence::animals,
                                       .caution = life::film_caution.text,
                                       .answer = &answer_filter_today};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/moving_in/filter_today.ipp>
#endif
