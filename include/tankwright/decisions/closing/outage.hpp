// SPDX-License-Identifier: BSL-1.0
/// @file
/// How cold does the water get without power?
#pragma once

#include <tankwright/decisions/cases/room_case.hpp>
#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/temperature_course.hpp>

namespace tankwright::decisions {

/// The tank without power: nothing moves the surfaces, nothing is on.
///
/// @param c the room, with winter, walls and an outage
/// @return  what `room::temperature_course_of` takes
/// @throws  what the season's balance refuses
/// @accuracy exact
/// @source  this library
[[nodiscard]] room::uncontrolled_tank outage_of(const room_case& c);

/// The coldest water of a power cut, against what the animals stand.
///
///   the lowest point of `room::temperature_course_of` - lowest
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `room/temperature_course.hpp`
/// @source    energy balance; Shah 2014; Bowen 1926; ISO 10456
void answer_heat_outage(const situation& s, answers& out);

inline constexpr decision heat_outage{.id = "room.outage",
                                      .day = day::closing,
                                      .question = "How cold does the water get without power?",
                                      .consequence = consequence::animals,
                                      .caution = room::uncontrolled_caution.text,
                                      .answer = &answer_heat_outage};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/outage.ipp>
#endif
