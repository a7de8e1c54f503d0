// SPDX-License-Identifier: BSL-1.0
/// @file
/// What do the gaps for pipes and cables let out?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/humidity.hpp>

namespace tankwright::decisions {

/// The evaporation through the gaps of covers, from that of as much open water, and its part of all evaporation.
///
///   E/A times the gap; a narrow one lets out from half of that on
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the band of the evaporation, and a factor of two
/// @source    as `room/evaporation.hpp`
void answer_cable_gap(const situation& s, answers& out);

inline constexpr decision cable_gap{.id = "room.cable_gap",
                                    .day = day::closing,
                                    .question = "What do the gaps for pipes and cables let out?",
                                    .consequence = consequence::comfort,
                                    .caution = room::moisture_caution.text,
                                    .answer = &answer_cable_gap};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/cable_gap.ipp>
#endif
