// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does the window drip?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/condensation.hpp>

namespace tankwright::decisions {

/// The humidity of the room in winter against the one at which its pane drips on the coldest night.
///
///   `room::highest_humidity` - the settled humidity
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the band of the evaporation; the edge of a pane is colder than its middle
/// @source    ISO 13788
void answer_dripping_window(const situation& s, answers& out);

inline constexpr decision dripping_window{.id = "room.window",
                                          .day = day::closing,
                                          .question = "Does the window drip?",
                                          .consequence = consequence::equipment,
                                          .caution = room::mould_caution.text,
                                          .answer = &answer_dripping_window};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/window.ipp>
#endif
