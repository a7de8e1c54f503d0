// SPDX-License-Identifier: BSL-1.0
/// @file
/// What does it cost to run?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/heat_balance.hpp>

namespace tankwright::decisions {

/// Electricity and money in a day of each season and in a year.
///
///   `room::running_cost` of heating, appliances and dehumidifier
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the band of the evaporation
/// @source    arithmetic on the heat balance
void answer_running_cost(const situation& s, answers& out);

inline constexpr decision running_cost{.id = "room.running",
                                       .day = day::running,
                                       .question = "What does it cost to run?",
                                       .consequence = consequence::money,
                                       .caution = room::water_and_electricity_caution.text,
                                       .answer = &answer_running_cost};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/running/running_cost.ipp>
#endif
