// SPDX-License-Identifier: BSL-1.0
/// @file
/// The heater sticks on: how long is there to act?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/heat_balance.hpp>

namespace tankwright::decisions {

/// The soonest that the water reaches the highest temperature that the animals stand with the heater always on, in the
/// warmest season given, against the time from one look to the next.
///
///   `room::heater_stuck_on`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `room/heater_fault.hpp`
/// @source    Shah 2014; Bowen 1926; EN ISO 6946
void answer_heater_time(const situation& s, answers& out);

inline constexpr decision heater_time{.id = "room.heater_time",
                                      .day = day::closing,
                                      .question = "The heater sticks on: how long is there to act?",
                                      .consequence = consequence::animals,
                                      .caution = room::water_and_electricity_caution.text,
                                      .answer = &answer_heater_time};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/heater_time.ipp>
#endif
