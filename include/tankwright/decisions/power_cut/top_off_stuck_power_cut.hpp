// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does the floor stay dry when the top-off has stuck open before the power fails?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/plumbing/power_cut.hpp>

namespace tankwright::decisions {

/// The power cut of a sump that holds the whole reservoir of the top-off already.
///
///   `plumbing::power_cut` with the reservoir of [room.top_off]
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `plumbing/power_cut.hpp`
/// @source    the sources of `plumbing/power_cut.hpp`
void answer_top_off_stuck_power_cut(const situation& s, answers& out);

inline constexpr decision top_off_stuck_power_cut{.id = "sump.top_off_stuck",
                                                  .day = day::power_cut,
                                                  .question = "And when the top-off has stuck open before?",
                                                  .consequence = consequence::flood,
                                                  .caution = plumbing::power_cut_caution.text,
                                                  .answer = &answer_top_off_stuck_power_cut};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/power_cut/top_off_stuck_power_cut.ipp>
#endif
