// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much ammonia will the feeding make?
#pragma once

#include <tankwright/core/estimate.hpp>
#include <tankwright/decisions/decision.hpp>

namespace tankwright::decisions {

/// The nitrogen that the food becomes as ammonia, in a day.
///
///   `plan::load_of`: 0.092 F PC for dry food, 0.16 F PC for wet food
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  25 % for bony fish on dry food; of wet food all nitrogen is counted
/// @source    Timmons and Ebeling 2007 (from memory)
void answer_nitrogen_load(const situation& s, answers& out);

inline constexpr caution feeding_caution{
    "The rule is for bony fish on dry pellets. For sharks and rays, wet food and leftovers use the bound: their "
    "nitrogen arrives as ammonia too, only later."};

inline constexpr decision nitrogen_load{.id = "life.load",
                                        .day = day::moving_in,
                                        .question = "How much ammonia will the feeding make?",
                                        .consequence = consequence::animals,
                                        .caution = feeding_caution.text,
                                        .answer = &answer_nitrogen_load};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/moving_in/nitrogen_load.ipp>
#endif
