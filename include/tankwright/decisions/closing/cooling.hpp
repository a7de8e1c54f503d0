// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does the water need cooling in summer?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/heat_balance.hpp>

namespace tankwright::decisions {

/// The heat that must be taken out of the tank in summer with everything on.
///
///   `room::chiller_for`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `room/heat_balance.hpp`; the mean of the summer, not its hottest day
/// @source    Shah 2014; Bowen 1926; EN ISO 6946
void answer_summer_cooling(const situation& s, answers& out);

inline constexpr decision summer_cooling{.id = "room.cooling",
                                         .day = day::closing,
                                         .question = "Does the water need cooling in summer?",
                                         .consequence = consequence::animals,
                                         .caution = room::water_and_electricity_caution.text,
                                         .answer = &answer_summer_cooling};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/cooling.ipp>
#endif
