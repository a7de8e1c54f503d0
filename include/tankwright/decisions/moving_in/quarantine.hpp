// SPDX-License-Identifier: BSL-1.0
/// @file
/// Do the water changes keep the quarantine tank fit to live in?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/water/ammonia.hpp>

namespace tankwright::decisions {

/// The highest ammonia between the water changes of a quarantine tank, and the water and mix that they take.
///
///   `life::ammonia_with_changes`, with k = takes(L)/(L V) of the surfaces that move in, at the level L to stay below:
///   below it a film takes in proportion or more, so what stays below does so in truth
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan has a quarantine tank
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `life::nitrogen_from_feed` and, with surfaces, `life::nitrification_rate`
/// @source    mass balance; Timmons and Ebeling 2007; Clegg and Whitfield 1995
void answer_quarantine(const situation& s, answers& out);

inline constexpr decision quarantine{.id = "life.quarantine",
                                     .day = day::moving_in,
                                     .question = "Do the water changes keep the quarantine tank fit to live in?",
                                     .consequence = consequence::animals,
                                     .caution = water::ammonia_caution.text,
                                     .answer = &answer_quarantine};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/moving_in/quarantine.ipp>
#endif
