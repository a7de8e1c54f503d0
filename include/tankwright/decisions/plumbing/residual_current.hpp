// SPDX-License-Identifier: BSL-1.0
/// @file
/// Do all devices together trip the protection?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/supply.hpp>

namespace tankwright::decisions {

/// What all devices behind one residual-current protection leak, against what it carries without nuisance.
///
///   0.3 I_rated - sum of I_i
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the band: what devices leak is seldom known
/// @source    IEC 60364-5-53, IEC 60335-1 (from memory)
void answer_residual_current(const situation& s, answers& out);

inline constexpr decision residual_current{.id = "power.residual_current",
                                           .day = day::plumbing,
                                           .question = "Do all devices together trip the protection?",
                                           .consequence = consequence::animals,
                                           .caution = room::supply_caution.text,
                                           .answer = &answer_residual_current};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/plumbing/residual_current.ipp>
#endif
