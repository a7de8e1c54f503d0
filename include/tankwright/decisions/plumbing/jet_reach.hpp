// SPDX-License-Identifier: BSL-1.0
/// @file
/// How far do the returns reach, and do they dig the sand?
#pragma once

#include <tankwright/decisions/decision.hpp>

namespace tankwright::decisions {

/// The speed of each submerged return where it meets the sand, against the speed that moves the grains; and how far it
/// reaches. Screening.
///
///   `plumbing::jet_speed_at` against `plumbing::speed_that_moves`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the bands: a factor of two in all; as `plumbing/submerged_jet.hpp`
/// @source    Albertson et al. 1950; Soulsby and Whitehouse 1997
void answer_jet_reach(const situation& s, answers& out);

inline constexpr decision jet_reach{.id = "plumbing.jets",
                                    .day = day::plumbing,
                                    .question = "How far do the returns reach, and do they dig the sand?",
                                    .consequence = consequence::comfort,
                                    .recommendation = true,
                                    .answer = &answer_jet_reach};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/plumbing/jet_reach.ipp>
#endif
