// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does the floor stay dry when a check valve leaks?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/plumbing/power_cut.hpp>

namespace tankwright::decisions {

/// The power cut with check valves that shut but for a leak.
///
///   `plumbing::power_cut_check_valves`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `plumbing/power_cut.hpp`; how far a check valve leaks is common practice
/// @source    the sources of `plumbing/power_cut.hpp`
void answer_check_valve_leaks(const situation& s, answers& out);

inline constexpr decision check_valve_leaks{.id = "sump.check_valve_leaks",
                                            .day = day::power_cut,
                                            .question = "And when the check valves leak?",
                                            .consequence = consequence::flood,
                                            .caution = plumbing::power_cut_caution.text,
                                            .answer = &answer_check_valve_leaks};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/power_cut/check_valve_leaks.ipp>
#endif
