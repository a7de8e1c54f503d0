// SPDX-License-Identifier: BSL-1.0
/// @file
/// May the holes be where they are?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/vessel/fixings.hpp>

namespace tankwright::decisions {

/// The distance of each hole from the nearest edge of its pane against the rules for it, and the force that pushes its
/// fitting out.
///
///   to_edge - `vessel::hole_to_edge`;   `vessel::blow_off`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  rules of the trade; as `vessel/joints.hpp`
/// @source    ASTM C1048 (from memory); common practice
void answer_bulkhead_holes(const situation& s, answers& out);

inline constexpr decision bulkhead_holes{.id = "vessel.holes",
                                         .day = day::first_fill,
                                         .question = "May the holes be where they are?",
                                         .consequence = consequence::injury,
                                         .caution = vessel::fixings_caution.text,
                                         .answer = &answer_bulkhead_holes};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/first_fill/bulkhead_holes.ipp>
#endif
