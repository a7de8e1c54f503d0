// SPDX-License-Identifier: BSL-1.0
/// @file
/// Is any circuit overloaded?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/supply.hpp>

namespace tankwright::decisions {

/// The current of all that is plugged into each circuit, at once, against the part of its breaker that what runs for
/// hours may take.
///
///   I = sum of P/(U pf) against 0.8 of the rating
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `room/supply.hpp`; motors start with more
/// @source    NFPA 70 (from memory)
void answer_circuit_load(const situation& s, answers& out);

inline constexpr decision circuit_load{.id = "power.circuits",
                                       .day = day::plumbing,
                                       .question = "Is any circuit overloaded?",
                                       .consequence = consequence::injury,
                                       .caution = room::supply_caution.text,
                                       .answer = &answer_circuit_load};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/plumbing/circuit_load.ipp>
#endif
