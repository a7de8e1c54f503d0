// SPDX-License-Identifier: BSL-1.0
/// @file
/// How long does the top-off reservoir last?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/top_off.hpp>

namespace tankwright::decisions {

/// The reservoir against the most that evaporates, in the time that nobody looks.
///
///   `room::reservoir_lasts` - unattended
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the band of the evaporation
/// @source    Shah 2014; VDI 2089; Smith et al. 1994
void answer_reservoir_time(const situation& s, answers& out);

inline constexpr decision reservoir_time{.id = "room.reservoir",
                                         .day = day::closing,
                                         .question = "How long does the top-off reservoir last?",
                                         .consequence = consequence::animals,
                                         .caution = room::top_off_caution.text,
                                         .answer = &answer_reservoir_time};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/reservoir.ipp>
#endif
