// SPDX-License-Identifier: BSL-1.0
/// @file
/// Will the filter be enough once every surface is mature?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/life/nitrification.hpp>

namespace tankwright::decisions {

/// What all surfaces take when mature, against what the meals ask for.
///
///   `balance_of` the filter when mature
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `life::nitrification_rate`
/// @source    Nijhof and Bovendeur 1990; Zhu and Chen 2002; Malone and Pfeiffer 2006
void answer_filter_later(const situation& s, answers& out);

inline constexpr decision filter_later{.id = "life.filter_later",
                                       .day = day::moving_in,
                                       .question = "Will it be enough in six weeks, when mature?",
                                       .consequence = consequence::animals,
                                       .caution = life::film_caution.text,
                                       .answer = &answer_filter_later};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/moving_in/filter_later.ipp>
#endif
