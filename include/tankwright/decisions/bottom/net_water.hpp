// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much water is really in it?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/vessel/displacement.hpp>

namespace tankwright::decisions {

/// The water beside sand, rock and equipment, with that in their pores and without.
///
///   `vessel::water_in`; with the water of the sump where it is known
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the bands of the items
/// @source    Archimedes
void answer_net_water(const situation& s, answers& out);

inline constexpr decision net_water{.id = "vessel.water",
                                    .day = day::bottom,
                                    .question = "How much water is really in it?",
                                    .consequence = consequence::animals,
                                    .caution = vessel::displacement_caution.text,
                                    .answer = &answer_net_water};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/bottom/net_water.ipp>
#endif
