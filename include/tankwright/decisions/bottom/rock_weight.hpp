// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much rock is it, and what does it weigh?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/vessel/displacement.hpp>

namespace tankwright::decisions {

/// Mass of the rock dry, wet and under water, and whether each lot stays down.
///
///   `vessel::weight_of`; what is left is the weight under water
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the bands of porosity and density
/// @source    the sources of `vessel/rock.hpp`
void answer_rock_weight(const situation& s, answers& out);

inline constexpr decision rock_weight{.id = "vessel.rock",
                                      .day = day::bottom,
                                      .question = "How much rock is it, and what does it weigh?",
                                      .consequence = consequence::equipment,
                                      .caution = vessel::displacement_caution.text,
                                      .answer = &answer_rock_weight};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/bottom/rock_weight.ipp>
#endif
