// SPDX-License-Identifier: BSL-1.0
/// @file
/// What is used up and bought again in a year?
#pragma once

#include <tankwright/decisions/decision.hpp>

namespace tankwright::decisions {

/// The price of what is used up, for a year.
///
///   price a year/interval
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  that of the intervals
/// @source    arithmetic
void answer_consumables(const situation& s, answers& out);

inline constexpr decision consumables{.id = "running.consumables",
                                      .day = day::running,
                                      .question = "What is used up and bought again in a year?",
                                      .consequence = consequence::money,
                                      .answer = &answer_consumables};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/running/consumables.ipp>
#endif
