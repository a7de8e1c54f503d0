// SPDX-License-Identifier: BSL-1.0
/// @file
/// What has the water meter counted at each stage of the first fill, and how long does the hose run?
#pragma once

#include <tankwright/decisions/decision.hpp>

namespace tankwright::decisions {

/// Water in the empty display at each stage of the fill, and what still fits between the water level and the rim.
///
///   V(level) of the display's shape
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range (from the engines; `answers::run` makes a finding of it)
/// @accuracy  exact for the dimensions that the plan gives
/// @source    geometry
void answer_hose_fill(const situation& s, answers& out);

inline constexpr decision hose_fill{
    .id = "vessel.hose_fill",
    .day = day::first_fill,
    .question = "What has the water meter counted at each stage of the first fill, and how long does the hose run?",
    .consequence = consequence::flood,
    .caution =
        "A hose that is left alone floods the room. Stay beside it, and never let its end hang under water: it can "
        "siphon back into the drinking water; local codes say what must keep the two apart.",
    .answer = &answer_hose_fill};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/first_fill/hose_fill.ipp>
#endif
