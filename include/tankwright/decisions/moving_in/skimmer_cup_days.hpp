// SPDX-License-Identifier: BSL-1.0
/// @file
/// How many days does the skimmer run unattended?
#pragma once

#include <tankwright/decisions/decision.hpp>

namespace tankwright::decisions {

/// The time until its cup or bucket is full, against the time that nobody empties it.
///
///   t = room/fills
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  what a skimmer collects changes by more than two with food, oil and hands in the tank
/// @source    definition
void answer_skimmer_cup_days(const situation& s, answers& out);

inline constexpr decision skimmer_cup_days{.id = "life.skimmer_cup",
                                           .day = day::moving_in,
                                           .question = "How many days does the skimmer run unattended?",
                                           .consequence = consequence::flood,
                                           .caution =
                                               "A cup that runs over floods what it stands on: let it drain "
                                               "into the sump or a closed bucket, and have a float switch it "
                                               "off.",
                                           .answer = &answer_skimmer_cup_days};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/moving_in/skimmer_cup_days.ipp>
#endif
