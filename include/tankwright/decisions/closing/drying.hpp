// SPDX-License-Identifier: BSL-1.0
/// @file
/// What would hold the room at its limit?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/humidity.hpp>

namespace tankwright::decisions {

/// The dehumidifier to buy, or the ventilation to provide, in each season. Whether the room stays dry is room.humidity.
///
///   `room::dehumidifier_for`, `room::ventilation_for` the highest humidity
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the band of the evaporation; machines of one label differ by 15 %
/// @source    Shah 2014; EnergyPlus 9.5
void answer_drying_methods(const situation& s, answers& out);

inline constexpr decision drying_methods{.id = "room.drying",
                                         .day = day::closing,
                                         .question = "What would hold the room at its limit?",
                                         .consequence = consequence::equipment,
                                         .caution = room::moisture_caution.text,
                                         .answer = &answer_drying_methods};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/drying.ipp>
#endif
