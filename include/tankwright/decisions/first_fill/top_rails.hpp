// SPDX-License-Identifier: BSL-1.0
/// @file
/// Are the rails stiff enough?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/vessel/cautions.hpp>

namespace tankwright::decisions {

/// Each rail along the top of a wall as a beam over its ends and braces, under what the wall leans on it with the
/// water at the rim: its stress, and how far it bends outwards. A pane is held at its top only as well as its rail is
/// stiff.
///
///   `vessel::rails_of`, `vessel::bend`;   left = 1 - stress/allowable, and 1 - sag/allowed
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `vessel/beam.hpp`
/// @source    Euler-Bernoulli beam theory
void answer_top_rails(const situation& s, answers& out);

inline constexpr decision top_rails{.id = "vessel.rails",
                                    .day = day::first_fill,
                                    .question = "Are the rails stiff enough?",
                                    .consequence = consequence::injury,
                                    .caution = vessel::structural_caution.text,
                                    .answer = &answer_top_rails};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/first_fill/top_rails.ipp>
#endif
