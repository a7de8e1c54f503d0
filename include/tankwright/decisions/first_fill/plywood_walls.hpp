// SPDX-License-Identifier: BSL-1.0
/// @file
/// Do the plywood walls hold between their frames?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/vessel/cautions.hpp>

namespace tankwright::decisions {

/// Bending and sag of each sheet from frame to frame at its lowest place, with the water at the rim.
///
///   `vessel::strip_between_frames`;   left = 1 - M/capacity, and 1 - sag/allowed
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `vessel/plywood.hpp`; wet wood is weaker and softer
/// @source    Euler-Bernoulli beam theory; NDS (from memory)
void answer_plywood_walls(const situation& s, answers& out);

inline constexpr decision plywood_walls{.id = "vessel.plywood",
                                        .day = day::first_fill,
                                        .question = "Do the plywood walls hold between their frames?",
                                        .consequence = consequence::injury,
                                        .caution = vessel::structural_caution.text,
                                        .answer = &answer_plywood_walls};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/first_fill/plywood_walls.ipp>
#endif
