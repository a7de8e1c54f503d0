// SPDX-License-Identifier: BSL-1.0
/// @file
/// Do the other drains take it when one is blocked?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/plumbing/drain.hpp>

namespace tankwright::decisions {

/// Each drain blocked in turn: what the others carry, against the most that the returns may bring.
///
///   `plumbing::drain_mode_for` of the others
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `plumbing/drain.hpp`
/// @source    Hills 1983
void answer_drain_blocked(const situation& s, answers& out);

inline constexpr decision drain_blocked{.id = "plumbing.drain_blocked",
                                        .day = day::plumbing,
                                        .question = "Do the others take it when one drain is blocked?",
                                        .consequence = consequence::flood,
                                        .caution = plumbing::drain_caution.text,
                                        .answer = &answer_drain_blocked};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/plumbing/drain_blocked.ipp>
#endif
