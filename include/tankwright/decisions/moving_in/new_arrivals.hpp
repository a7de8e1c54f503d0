// SPDX-License-Identifier: BSL-1.0
/// @file
/// May the new arrivals go straight into this water?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/life/transfer.hpp>

namespace tankwright::decisions {

/// Free ammonia of their water closed and opened, and how far the two waters lie apart, each against its limit.
///
///   `life::match_waters`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `water::free_ammonia_in`; limits from memory
/// @source    Clegg and Whitfield 1995; husbandry practice (from memory)
void answer_new_arrivals(const situation& s, answers& out);

inline constexpr decision new_arrivals{.id = "life.arrivals",
                                       .day = day::moving_in,
                                       .question = "May the new arrivals go straight into this water?",
                                       .consequence = consequence::animals,
                                       .caution = life::transfer_caution.text,
                                       .answer = &answer_new_arrivals};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/moving_in/new_arrivals.ipp>
#endif
