// SPDX-License-Identifier: BSL-1.0
/// @file
/// Can the lids be lifted?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/vessel/lifting.hpp>

namespace tankwright::decisions {

/// The mass of each lid whose width is given, against what the people who lift it should lift there.
///
///   rho t L W against `vessel::recommended_lift`, times 4/3 for two people and n/2 for more
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  a recommendation for healthy people; sharing is common practice
/// @source    NIOSH 94-110
void answer_lid_lift(const situation& s, answers& out);

inline constexpr decision lid_lift{.id = "vessel.lid_lift",
                                   .day = day::closing,
                                   .question = "Can the lids be lifted?",
                                   .consequence = consequence::injury,
                                   .caution = vessel::lifting_caution.text,
                                   .answer = &answer_lid_lift};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/lid_lift.ipp>
#endif
