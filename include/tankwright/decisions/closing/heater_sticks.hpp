// SPDX-License-Identifier: BSL-1.0
/// @file
/// How hot does the water get when the heater sticks on?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/heater_fault.hpp>

namespace tankwright::decisions {

/// The heater that does not switch off, in the warmer season, against what the animals stand.
///
///   highest - where `room::heater_stuck_on` settles
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `room/heater_fault.hpp`
/// @source    energy balance; Shah 2014
void answer_heater_sticks(const situation& s, answers& out);

inline constexpr decision heater_sticks{.id = "room.heater_sticks",
                                        .day = day::closing,
                                        .question = "How hot does the water get when the heater sticks on?",
                                        .consequence = consequence::animals,
                                        .caution = room::water_and_electricity_caution.text,
                                        .answer = &answer_heater_sticks};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/heater_sticks.ipp>
#endif
