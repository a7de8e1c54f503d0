// SPDX-License-Identifier: BSL-1.0
/// @file
/// The display does not stand level: what does that cost at its low end?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/vessel/cautions.hpp>

namespace tankwright::decisions {

/// What is left of the freeboard at the low end, and how much more the water pushes there.
///
///   left = height - (level + d/2),   push at the foot (1 + d/(2 level)),   on a running length (1 + d/(2 level))^2
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan says how far the display is out of level
/// @throws    invalid_input, out_of_range (from the engines; `answers::run` makes a finding of it)
/// @accuracy  exact for a display whose water level is given at its middle
/// @source    hydrostatics
void answer_out_of_level(const situation& s, answers& out);

inline constexpr decision out_of_level{
    .id = "vessel.out_of_level",
    .day = day::first_fill,
    .question = "The display does not stand level: what does it cost at the low end?",
    .consequence = consequence::flood,
    .caution = vessel::structural_caution.text,
    .answer = &answer_out_of_level};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/first_fill/out_of_level.ipp>
#endif
