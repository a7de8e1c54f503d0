// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does the water that went in agree with the dimensions?
#pragma once

#include <tankwright/decisions/decision.hpp>

namespace tankwright::decisions {

/// What the water meter counted against what the dimensions hold, the first time that the display is full.
///
///   left = part V - |metered - V|,   V the display up to its water level
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan says what the meter counted
/// @throws    invalid_input, out_of_range (from the engines; `answers::run` makes a finding of it)
/// @accuracy  exact for the numbers that the plan gives; how close is close enough is common practice, no source
/// @source    geometry
void answer_metered_water(const situation& s, answers& out);

inline constexpr decision metered_water{
    .id = "vessel.metered",
    .day = day::first_fill,
    .question = "Does the water that the meter counted agree with the dimensions?",
    .consequence = consequence::animals,
    .caution =
        "Salt, medicine and heat are all worked out from the volume: find out which of the two is wrong before "
        "anything is dosed.",
    .answer = &answer_metered_water};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/first_fill/metered_water.ipp>
#endif
