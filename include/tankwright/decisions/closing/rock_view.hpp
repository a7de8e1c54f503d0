// SPDX-License-Identifier: BSL-1.0
/// @file
/// Will the rock look close to the glass?
#pragma once

#include <tankwright/decisions/decision.hpp>

namespace tankwright::decisions {

/// How far the nearest rock seems, and the room in front of it.
///
///   `vessel::apparent_distance`; left = distance - least clearance
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `vessel/view.hpp`
/// @source    Snell's law
void answer_rock_view(const situation& s, answers& out);

inline constexpr decision rock_view{.id = "vessel.view",
                                    .day = day::closing,
                                    .question = "Will the rock look close to the glass?",
                                    .consequence = consequence::animals,
                                    .answer = &answer_rock_view};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/rock_view.ipp>
#endif
