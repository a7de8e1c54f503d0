// SPDX-License-Identifier: BSL-1.0
/// @file
/// Is there room to swim?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/life/space.hpp>

namespace tankwright::decisions {

/// The run and the width in body lengths of the animals that have the least of them.
///
///   run/L, width/L against informal multiples
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  exact ratios; the multiples are informal, without a published source
/// @source    husbandry practice (from memory)
void answer_room_to_swim(const situation& s, answers& out);

inline constexpr decision room_to_swim{.id = "life.room",
                                       .day = day::moving_in,
                                       .question = "Is there room to swim?",
                                       .consequence = consequence::animals,
                                       .recommendation = true,
                                       .caution = life::space_caution.text,
                                       .answer = &answer_room_to_swim};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/moving_in/room_to_swim.ipp>
#endif
