// SPDX-License-Identifier: BSL-1.0
/// @file
/// What if the top-off valve sticks open?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/top_off.hpp>

namespace tankwright::decisions {

/// The reservoir against what fits below the rim, and against what makes the water too fresh.
///
///   `room::largest_reservoir` - reservoir
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  exact by mass; the band of the volume
/// @source    conservation of salt; Feistel 2008
void answer_top_off_sticks(const situation& s, answers& out);

inline constexpr decision top_off_sticks{.id = "room.stuck",
                                         .day = day::closing,
                                         .question = "What if the top-off valve sticks open?",
                                         .consequence = consequence::flood,
                                         .caution = room::top_off_caution.text,
                                         .answer = &answer_top_off_sticks};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/top_off_sticks.ipp>
#endif
