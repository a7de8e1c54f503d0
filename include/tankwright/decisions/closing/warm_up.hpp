// SPDX-License-Identifier: BSL-1.0
/// @file
/// How long does it take to warm the water up?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/heat_balance.hpp>

namespace tankwright::decisions {

/// The time from the filling temperature to that of the tank, with sand, rock and walls.
///
///   `room::warm_up` with all that takes up heat; the heater less what is lost at the end
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `room/warm_up.hpp`
/// @source    energy balance; Shah 2014; Bowen 1926; ISO 10456
void answer_warm_up_time(const situation& s, answers& out);

inline constexpr decision warm_up_time{.id = "room.warm_up",
                                       .day = day::closing,
                                       .question = "How long does it take to warm the water up?",
                                       .consequence = consequence::equipment,
                                       .caution = room::water_and_electricity_caution.text,
                                       .answer = &answer_warm_up_time};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/warm_up.ipp>
#endif
