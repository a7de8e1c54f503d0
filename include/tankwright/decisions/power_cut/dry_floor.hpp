// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does the floor stay dry when the power fails?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/plumbing/power_cut.hpp>

namespace tankwright::decisions {

/// The margin of the worst moment of a power cut: check valves stuck open, siphon breaks working.
///
///   `plumbing::power_cut`: rim less the highest level of the whole course
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `plumbing/power_cut.hpp`
/// @source    the sources of `plumbing/power_cut.hpp`
void answer_dry_floor(const situation& s, answers& out);

inline constexpr decision dry_floor{.id = "sump.power_cut",
                                    .day = day::power_cut,
                                    .question = "Does the floor stay dry when the power fails?",
                                    .consequence = consequence::flood,
                                    .caution = plumbing::power_cut_caution.text,
                                    .answer = &answer_dry_floor};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/power_cut/dry_floor.ipp>
#endif
