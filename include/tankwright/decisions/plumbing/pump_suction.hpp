// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does the pump draw well?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/plumbing/restart.hpp>

namespace tankwright::decisions {

/// The water over the pump's inlet while it runs, against what keeps a vortex away; and the suction head that it has,
/// against what its maker requires.
///
///   z - S with `plumbing::vortex_submergence`;   `plumbing::npsh_available` - NPSH_r
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as those
/// @source    ANSI/HI 9.8-1998; Gordon 1970; Crane TP-410 (2009)
void answer_pump_suction(const situation& s, answers& out);

inline constexpr decision pump_suction{.id = "plumbing.suction",
                                       .day = day::plumbing,
                                       .question = "Does the pump draw well?",
                                       .consequence = consequence::equipment,
                                       .caution = plumbing::restart_caution.text,
                                       .answer = &answer_pump_suction};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/plumbing/pump_suction.ipp>
#endif
