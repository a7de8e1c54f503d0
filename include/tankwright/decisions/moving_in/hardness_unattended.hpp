// SPDX-License-Identifier: BSL-1.0
/// @file
/// What is left of alkalinity and calcium when nobody doses?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/water/alkalinity.hpp>
#include <tankwright/water/hardness_drift.hpp>

namespace tankwright::decisions {

/// The lowest alkalinity and calcium within the time that nobody doses, with the water changes that go on, against the
/// lowest that they may be.
///
///   `water::lowest_level`, `water::calcium_with_alkalinity`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  that of two measurements of the fall
/// @source    stoichiometry of calcium carbonate
void answer_hardness_unattended(const situation& s, answers& out);

inline constexpr decision hardness_unattended{.id = "life.drift",
                                              .day = day::moving_in,
                                              .question = "What is left of alkalinity and calcium when nobody doses?",
                                              .consequence = consequence::animals,
                                              .caution = water::alkalinity_caution.text,
                                              .answer = &answer_hardness_unattended};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/moving_in/hardness_unattended.ipp>
#endif
