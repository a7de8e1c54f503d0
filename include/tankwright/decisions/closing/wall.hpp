// SPDX-License-Identifier: BSL-1.0
/// @file
/// Can the outside wall grow mould?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/condensation.hpp>

namespace tankwright::decisions {

/// The humidity of the room in winter against the one that makes 80 % at the face of its outside wall.
///
///   `room::highest_humidity` - the settled humidity
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the band of the evaporation; corners and what stands before them are colder
/// @source    ISO 13788
void answer_outside_wall(const situation& s, answers& out);

inline constexpr decision outside_wall{.id = "room.wall",
                                       .day = day::closing,
                                       .question = "Can the outside wall grow mould?",
                                       .consequence = consequence::equipment,
                                       .caution = room::mould_caution.text,
                                       .answer = &answer_outside_wall};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/wall.ipp>
#endif
