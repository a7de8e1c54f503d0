// SPDX-License-Identifier: BSL-1.0
/// @file
/// Will the cross-brace carry its load?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/vessel/cautions.hpp>

namespace tankwright::decisions {

/// Pull and bending of the brace and its fixings with water to the rim.
///
///   `vessel::rails_of`, `pull_of_braces` and `bend`; left = 1 - stress/allowable, and 1 - pull/fixing
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range (from the engines; `answers::run` makes a finding of it)
/// @accuracy  exact for stiff braces; a screening of strength, not a design
/// @source    Euler-Bernoulli beam theory
void answer_cross_brace(const situation& s, answers& out);

inline constexpr decision cross_brace{.id = "vessel.brace",
                                      .day = day::closing,
                                      .question = "Will the cross-brace carry its load?",
                                      .consequence = consequence::injury,
                                      .caution = vessel::structural_caution.text,
                                      .answer = &answer_cross_brace};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/cross_brace.ipp>
#endif
