// SPDX-License-Identifier: BSL-1.0
/// @file
/// How long do the animals live if the power fails?
#pragma once

#include <tankwright/core/estimate.hpp>
#include <tankwright/decisions/decision.hpp>

namespace tankwright::decisions {

/// The lowest oxygen within twice the time until help, and how long it lasts without and with battery air.
///
///   `life::oxygen_after` at the end of the battery and at twice the time until help
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  constant use and mixed water, so half of the time is counted; use within 30 %, the still surface from
///            none to a lake's
/// @source    Garcia and Gordon 1992; Cole and Caraco 1998; ASCE/EWRI 2006 (both from memory)
void answer_oxygen_in_power_cut(const situation& s, answers& out);

inline constexpr caution oxygen_screening{
    "Screening estimate at constant use in mixed water: plan for half of this time. A stopped filter uses oxygen too "
    "and turns foul: do not start it into the tank again after an hour or two. Battery air is cheap: have it running "
    "before the first animal goes in."};

inline constexpr decision oxygen_in_power_cut{.id = "life.power_cut",
                                              .day = day::moving_in,
                                              .question = "How long do the animals live if the power fails?",
                                              .consequence = consequence::animals,
                                              .caution = oxygen_screening.text,
                                              .answer = &answer_oxygen_in_power_cut};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/moving_in/oxygen_in_power_cut.ipp>
#endif
