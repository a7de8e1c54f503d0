// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does the display hold what the pump still delivers when every drain is blocked?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/plumbing/drains_blocked.hpp>

namespace tankwright::decisions {

/// All drains blocked: how high the display stands when the pump has run its chamber dry, against its rim.
///
///   `plumbing::all_drains_blocked`, the top-off's reservoir with it
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `plumbing/drains_blocked.hpp`
/// @source    geometry; Rehbock 1929
void answer_drains_blocked(const situation& s, answers& out);

inline constexpr decision drains_blocked{.id = "plumbing.drains_blocked",
                                         .day = day::plumbing,
                                         .question =
                                             "Does the display hold what the pump delivers when every drain is "
                                             "blocked?",
                                         .consequence = consequence::flood,
                                         .caution = plumbing::drains_blocked_caution.text,
                                         .answer = &answer_drains_blocked};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/plumbing/drains_blocked.ipp>
#endif
