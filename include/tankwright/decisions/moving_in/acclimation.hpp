// SPDX-License-Identifier: BSL-1.0
/// @file
/// How fast may the new arrivals be brought over?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/life/transfer.hpp>

namespace tankwright::decisions {

/// The largest drip that keeps to the pace, how long it takes, and the steps instead.
///
///   `life::gentle_flow`, `life::time_to_share`, `water::changes_to_leave`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  exact for mixed water; the pace is yours
/// @source    mass balance; husbandry practice (from memory)
void answer_acclimation(const situation& s, answers& out);

inline constexpr decision acclimation{.id = "life.acclimation",
                                      .day = day::moving_in,
                                      .question = "How fast may they be brought over?",
                                      .consequence = consequence::animals,
                                      .caution = life::transfer_caution.text,
                                      .answer = &answer_acclimation};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/moving_in/acclimation.ipp>
#endif
