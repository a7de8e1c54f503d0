// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much do the lights warm the water?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/heat_balance.hpp>

namespace tankwright::decisions {

/// The heat that lights over the water bring in the mean of the day, and how far the water swings between day and
/// night by them alone.
///
///   P w on;   swing = P w on (1 - on) 1 day/C
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  an upper limit of the swing: it leaves out what the warmer water loses
/// @source    energy balance
void answer_light_heat(const situation& s, answers& out);

inline constexpr decision light_heat{.id = "room.lights",
                                     .day = day::closing,
                                     .question = "How much do the lights warm the water?",
                                     .consequence = consequence::animals,
                                     .recommendation = true,
                                     .caution = room::water_and_electricity_caution.text,
                                     .answer = &answer_light_heat};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/light_heat.ipp>
#endif
