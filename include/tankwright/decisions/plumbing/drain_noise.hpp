// SPDX-License-Identifier: BSL-1.0
/// @file
/// Are the drains quiet?
#pragma once

#include <tankwright/decisions/decision.hpp>

namespace tankwright::decisions {

/// The drain number of each drain that does not run full as a siphon, at its share of the flow, below the number at
/// which it still vents itself. Siphons take the flow first.
///
///   J* = V/sqrt(g D) against 0.3
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the limit is soft, about 20 %; a judgement of the mode, no sound level
/// @source    Hills 1983
void answer_drain_noise(const situation& s, answers& out);

inline constexpr decision drain_noise{.id = "plumbing.drain_noise",
                                      .day = day::plumbing,
                                      .question = "Are the drains quiet?",
                                      .consequence = consequence::comfort,
                                      .recommendation = true,
                                      .answer = &answer_drain_noise};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/plumbing/drain_noise.ipp>
#endif
