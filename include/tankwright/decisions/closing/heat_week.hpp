// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does it stay cool enough in a week of heat?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/heat_balance.hpp>

namespace tankwright::decisions {

/// The heat that leaves the water at the highest temperature that the animals stand, less what runs, in the air of a
/// week of heat: with nothing done, with fans, with a chiller, with windows open at night. The best of them is judged.
///
///   `room::heat_balance` at the highest temperature
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the band of the evaporation; a steady week
/// @source    Shah 2014; Bowen 1926; EN ISO 6946
void answer_heat_week(const situation& s, answers& out);

inline constexpr decision heat_week{.id = "room.heat_week",
                                    .day = day::closing,
                                    .question = "Does it stay cool enough in a week of heat?",
                                    .consequence = consequence::animals,
                                    .caution = room::water_and_electricity_caution.text,
                                    .answer = &answer_heat_week};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/heat_week.ipp>
#endif
