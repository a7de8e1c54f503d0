// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does the pump stay wet when the power comes back?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/plumbing/restart.hpp>

namespace tankwright::decisions {

/// What stands over the inlet of the pump while the display refills, against what keeps a vortex away.
///
///   `plumbing::restart`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `plumbing/restart.hpp`
/// @source    ANSI/HI 9.8; Gordon 1970
void answer_pump_restart(const situation& s, answers& out);

inline constexpr decision pump_restart{.id = "sump.restart",
                                       .day = day::power_cut,
                                       .question = "Does the pump stay wet when the power comes back?",
                                       .consequence = consequence::equipment,
                                       .caution = plumbing::restart_caution.text,
                                       .answer = &answer_pump_restart};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/power_cut/pump_restart.ipp>
#endif
