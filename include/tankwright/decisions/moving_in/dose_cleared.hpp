// SPDX-License-Identifier: BSL-1.0
/// @file
/// How long until 99 % of a dose is out again?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/life/circulation.hpp>

namespace tankwright::decisions {

/// The flow that treatment clears against the flow that clears 99 % in the wanted time.
///
///   needed = -ln(0.01) V/t;   cleared = sum(eta Q)
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  perfect mixing
/// @source    Gage and Bidwell 1926
void answer_dose_cleared(const situation& s, answers& out);

inline constexpr decision dose_cleared{.id = "life.circulation",
                                       .day = day::moving_in,
                                       .question = "How long until 99 % of a dose is out again?",
                                       .consequence = consequence::animals,
                                       .caution = life::perfect_mixing_caution.text,
                                       .answer = &answer_dose_cleared};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/moving_in/dose_cleared.ipp>
#endif
