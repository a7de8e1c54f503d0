// SPDX-License-Identifier: BSL-1.0
/// @file
/// What may the weeks of the start-up look like?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/life/start_up.hpp>

namespace tankwright::decisions {

/// Ammonia, nitrite and nitrate over the weeks, in three cases. It clears no tank and has no verdict.
///
///   `life::simulate_start_up` of each case
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the shape, never the dates
/// @source    Metcalf & Eddy 2014; Nijhof and Bovendeur 1990
void answer_start_up(const situation& s, answers& out);

inline constexpr decision start_up{.id = "life.start_up",
                                   .day = day::moving_in,
                                   .question = "What may the weeks of the start-up look like?",
                                   .consequence = consequence::animals,
                                   .caution = life::start_up_caution.text,
                                   .answer = &answer_start_up,
                                   .samples = 128};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/moving_in/start_up.ipp>
#endif
