// SPDX-License-Identifier: BSL-1.0
/// @file
/// Which heater holds the temperature?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/heat_balance.hpp>

namespace tankwright::decisions {

/// The heat that the tank loses in winter less what pumps that never stop bring, against the heater.
///
///   heater - `room::heater_for`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `room/heat_balance.hpp`
/// @source    Shah 2014; Bowen 1926; EN ISO 6946
void answer_heater_choice(const situation& s, answers& out);

inline constexpr decision heater_choice{.id = "room.heater",
                                        .day = day::closing,
                                        .question = "Which heater holds the temperature?",
                                        .consequence = consequence::animals,
                                        .caution = room::water_and_electricity_caution.text,
                                        .answer = &answer_heater_choice};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/heater.ipp>
#endif
