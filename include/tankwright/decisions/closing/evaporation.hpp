// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much water leaves the tank a day?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/humidity.hpp>

namespace tankwright::decisions {

/// What evaporates in each season, in the air that the room settles at, with the covers and without.
///
///   `room::humidity_balance`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the band of the evaporation, 35 to 50 %
/// @source    Shah 2014; VDI 2089; Smith et al. 1994
void answer_daily_evaporation(const situation& s, answers& out);

inline constexpr decision daily_evaporation{.id = "room.evaporation",
                                            .day = day::closing,
                                            .question = "How much water leaves the tank a day?",
                                            .consequence = consequence::equipment,
                                            .caution = room::moisture_caution.text,
                                            .answer = &answer_daily_evaporation};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/evaporation.ipp>
#endif
