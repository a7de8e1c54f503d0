// SPDX-License-Identifier: BSL-1.0
/// @file
/// How warm does the water get without power in summer?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/temperature_course.hpp>

namespace tankwright::decisions {

/// The warmest water of a power cut on the hottest day, against what the animals stand.
///
///   highest - the highest point of `room::temperature_course_of`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `room/temperature_course.hpp`
/// @source    energy balance; Shah 2014
void answer_outage_warm(const situation& s, answers& out);

inline constexpr decision outage_warm{.id = "room.outage_warm",
                                      .day = day::closing,
                                      .question = "How warm does the water get without power in summer?",
                                      .consequence = consequence::animals,
                                      .caution = room::uncontrolled_caution.text,
                                      .answer = &answer_outage_warm};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/outage_warm.ipp>
#endif
