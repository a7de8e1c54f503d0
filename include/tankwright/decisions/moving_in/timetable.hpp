// SPDX-License-Identifier: BSL-1.0
/// @file
/// When may which part of the animals come?
#pragma once

#include <tankwright/core/estimate.hpp>
#include <tankwright/decisions/decision.hpp>

namespace tankwright::decisions {

/// Steps of food, and with it of animals, from what today's filter takes to the whole, each as large as leaves the
/// ammonia below the level, with the rest between them.
///
///   `life::stocking_dates`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  growth of films in the sea: a factor of three either way
/// @source    exponential growth; mass balance
void answer_timetable(const situation& s, answers& out);

inline constexpr caution timetable_caution{
    "A timetable is a plan, not a promise: measure ammonia and nitrite every day after each step, and stop at the "
    "first that does not go back to zero. Ask an aquatic veterinarian."};

inline constexpr decision timetable{.id = "life.timetable",
                                    .day = day::moving_in,
                                    .question = "When may which part of the animals come?",
                                    .consequence = consequence::animals,
                                    .caution = timetable_caution.text,
                                    .answer = &answer_timetable};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/moving_in/timetable.ipp>
#endif
