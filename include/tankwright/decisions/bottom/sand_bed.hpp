// SPDX-License-Identifier: BSL-1.0
/// @file
/// How many kilograms of sand for the bed?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/vessel/displacement.hpp>

namespace tankwright::decisions {

/// Mass, depth and weight of the sand, and whether its slope lies still.
///
///   `vessel::sand_bed`, `weight_of`, `sloped_bed`; left = angle of repose - slope
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the bands of porosity and grain density
/// @source    the sources of `vessel/sand.hpp`
void answer_sand_bed(const situation& s, answers& out);

inline constexpr decision sand_bed{.id = "vessel.sand",
                                   .day = day::bottom,
                                   .question = "How many kilograms of sand for the bed?",
                                   .consequence = consequence::comfort,
                                   .caution = vessel::displacement_caution.text,
                                   .answer = &answer_sand_bed};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/bottom/sand_bed.ipp>
#endif
