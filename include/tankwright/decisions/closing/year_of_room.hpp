// SPDX-License-Identifier: BSL-1.0
/// @file
/// What does the room do month by month?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/humidity.hpp>

namespace tankwright::decisions {

/// Humidity of the room and evaporation in the mean of each month of a climate: the wettest and the driest month, the
/// water and the heat of the year, and the wettest against what the room may have.
///
///   `room::humidity_balance` and `room::heat_balance` for twelve months
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  means of months; as `room/humidity.hpp`
/// @source    Shah 2014
void answer_year_of_room(const situation& s, answers& out);

inline constexpr decision year_of_room{.id = "room.year",
                                       .day = day::closing,
                                       .question = "What does the room do month by month?",
                                       .consequence = consequence::comfort,
                                       .caution = room::moisture_caution.text,
                                       .answer = &answer_year_of_room};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/year_of_room.ipp>
#endif
