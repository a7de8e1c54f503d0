// SPDX-License-Identifier: BSL-1.0
/// @file
/// Which of these pumps?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/plumbing/circuit_parts.hpp>

namespace tankwright::decisions {

/// Each candidate in the place of the return pump: flow, electricity, cost a year, and what the sump has left in a
/// power cut with it. Named is the cheapest to run that stays dry and brings the wanted turnover; judged is that one.
///
///   the circuit and the power cut solved with each curve
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `plumbing/circuit.hpp` and `plumbing/power_cut.hpp`; curves of makers are often 5 to 10 % high
/// @source    as those
void answer_pump_choice(const situation& s, answers& out);

inline constexpr decision pump_choice{.id = "plumbing.pumps",
                                      .day = day::plumbing,
                                      .question = "Which of these pumps?",
                                      .consequence = consequence::money,
                                      .caution = plumbing::circuit_caution.text,
                                      .answer = &answer_pump_choice};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/plumbing/pump_choice.ipp>
#endif
