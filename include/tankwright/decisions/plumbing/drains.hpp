// SPDX-License-Identifier: BSL-1.0
/// @file
/// Do the drains take it?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/plumbing/drain.hpp>

namespace tankwright::decisions {

/// What all drains carry together, against the most that the returns may bring.
///
///   `plumbing::drain_mode_for` of each drain with the most flow
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `plumbing/drain.hpp`
/// @source    Hills 1983
void answer_drains(const situation& s, answers& out);

inline constexpr decision drains{.id = "plumbing.drains",
                                 .day = day::plumbing,
                                 .question = "Do the drains take it?",
                                 .consequence = consequence::flood,
                                 .caution = plumbing::drain_caution.text,
                                 .answer = &answer_drains};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/plumbing/drains.ipp>
#endif
