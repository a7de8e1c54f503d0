// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does the room stay dry?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/humidity.hpp>

namespace tankwright::decisions {

/// The humidity that the room settles at in each season, with its dehumidifier, against the highest that it may have.
/// This is the only judgement of the room's dryness.
///
///   limit - `room::humidity_balance`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the band of the evaporation; air changes are known worst of all
/// @source    Shah 2014; ASHRAE 2017; EnergyPlus 9.5
void answer_room_humidity(const situation& s, answers& out);

inline constexpr decision room_humidity{.id = "room.humidity",
                                        .day = day::closing,
                                        .question = "Does the room stay dry?",
                                        .consequence = consequence::equipment,
                                        .caution = room::moisture_caution.text,
                                        .answer = &answer_room_humidity};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/humidity.ipp>
#endif
