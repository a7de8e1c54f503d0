// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does the floor carry it?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/vessel/cautions.hpp>

namespace tankwright::decisions {

/// The load under the footprint with all that is in the display, against what the floor is built for.
///
///   `vessel::load_on_floor`; left = load of the code - spread load
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the bands of the items; it says nothing about joists, spans and bearing
/// @source    statics; IRC Table R301.5
void answer_floor_load(const situation& s, answers& out);

inline constexpr decision floor_load{.id = "vessel.floor",
                                     .day = day::bottom,
                                     .question = "Does the floor carry it?",
                                     .consequence = consequence::injury,
                                     .caution = vessel::floor_caution.text,
                                     .answer = &answer_floor_load};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/bottom/floor_load.ipp>
#endif
