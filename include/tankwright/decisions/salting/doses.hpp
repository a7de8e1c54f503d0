// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much of it goes in, when the volume is only an estimate?
#pragma once

#include <tankwright/decisions/decision.hpp>

namespace tankwright::decisions {

inline constexpr std::string_view doses_caution =
    "An overdose kills and cannot be taken back out. What to dose, and whether at all, is for an aquatic veterinarian "
    "and the label to say; mind what inverts stand, and weigh twice.";

/// Mass or volume for a wished rise in all the water, with the band of the water.
///
///   m = V c;   of a stock solution V c / c_stock
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan doses something
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as the volume of the water
/// @source    mass balance
void answer_doses(const situation& s, answers& out);

inline constexpr decision doses{.id = "water.doses",
                                .day = day::salting,
                                .question = "How much of it goes in, when the volume is only an estimate?",
                                .consequence = consequence::animals,
                                .caution = doses_caution,
                                .answer = &answer_doses};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/salting/doses.ipp>
#endif
