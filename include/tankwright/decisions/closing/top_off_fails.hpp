// SPDX-License-Identifier: BSL-1.0
/// @file
/// What if the top-off fails and nobody looks?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/top_off.hpp>

namespace tankwright::decisions {

/// When the return pump draws air and when the salinity passes what the animals stand, against the time that nobody
/// looks.
///
///   `room::return_level`, `water::time_to_salinity`, each - unattended
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the bands of the evaporation and of the volume
/// @source    mass balance; Feistel 2008
void answer_top_off_fails(const situation& s, answers& out);

inline constexpr decision top_off_fails{.id = "room.dry",
                                        .day = day::closing,
                                        .question = "What if the top-off fails and nobody looks?",
                                        .consequence = consequence::animals,
                                        .caution = room::starving_pump_caution.text,
                                        .answer = &answer_top_off_fails};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/top_off_fails.ipp>
#endif
