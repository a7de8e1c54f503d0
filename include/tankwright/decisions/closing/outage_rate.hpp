// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does the water change slowly enough without power?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/temperature_course.hpp>

namespace tankwright::decisions {

/// The fastest change of the water in a winter's power cut, within an hour and within a day, against what animals are
/// given time for.
///
///   `life::temperature_change_in_an_hour` and `_in_a_day` - |`room::largest_change`|
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `room/temperature_course.hpp`; the two paces are husbandry practice
/// @source    energy balance; Shah 2014; husbandry practice
void answer_outage_rate(const situation& s, answers& out);

inline constexpr decision outage_rate{.id = "room.outage_rate",
                                      .day = day::closing,
                                      .question = "Does the water cool slowly enough without power?",
                                      .consequence = consequence::animals,
                                      .recommendation = true,
                                      .caution = room::uncontrolled_caution.text,
                                      .answer = &answer_outage_rate};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/outage_rate.ipp>
#endif
