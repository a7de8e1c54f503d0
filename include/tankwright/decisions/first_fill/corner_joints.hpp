// SPDX-License-Identifier: BSL-1.0
/// @file
/// Do the corners hold?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/vessel/cautions.hpp>

namespace tankwright::decisions {

/// The pull of a wall on a metre of each corner at its lower end, with the water at the rim, against what its screws
/// or its glue may carry for good: the stronger of the two, not their sum.
///
///   `vessel::pull_on_joint` against `vessel::withdrawal_of`/spacing, and shear times width of the glue
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  screening; as `vessel/joints.hpp`
/// @source    NDS 2018, 12.2.2
void answer_corner_joints(const situation& s, answers& out);

inline constexpr decision corner_joints{.id = "vessel.joints",
                                        .day = day::first_fill,
                                        .question = "Do the corners hold?",
                                        .consequence = consequence::injury,
                                        .caution = vessel::structural_caution.text,
                                        .answer = &answer_corner_joints};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/first_fill/corner_joints.ipp>
#endif
