// SPDX-License-Identifier: BSL-1.0
/// @file
/// What do the drips come to?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/vessel/leak_test.hpp>

namespace tankwright::decisions {

/// Drops that were counted, as litres a day, all together against the leak that matters.
///
///   `vessel::drip_rate`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  a factor of two where the drop was not measured
/// @source    volume of a drop (from memory)
void answer_drips(const situation& s, answers& out);

inline constexpr decision drips{.id = "hold.drips",
                                .day = day::first_fill,
                                .question = "What do the drips come to?",
                                .consequence = consequence::flood,
                                .caution = vessel::leak_test_caution.text,
                                .answer = &answer_drips};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/first_fill/drips.ipp>
#endif
