// SPDX-License-Identifier: BSL-1.0
/// @file
/// What still runs when one of several pumps stops?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/plumbing/circuit.hpp>

namespace tankwright::decisions {

/// Each pump in turn stands, and the others run on: what still goes over the edge, what each return gives, what runs
/// back.
///
///   over = sum of what comes out of the returns - what runs back into them;   `plumbing::operating_point` at speed 0
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan has several pumps
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `plumbing/circuit.hpp`; a standing pump resists as `plumbing::idle_pump_losses` says, within a factor
///            of two. While the display stands at its edge; below it, a siphon that draws air ends
/// @source    Todini and Pilati 1988
void answer_one_pump_stops(const situation& s, answers& out);

inline constexpr decision one_pump_stops{.id = "plumbing.one_pump_stops",
                                         .day = day::plumbing,
                                         .question = "What still runs when one of the pumps stops?",
                                         .consequence = consequence::animals,
                                         .caution = plumbing::circuit_caution.text,
                                         .answer = &answer_one_pump_stops};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/plumbing/one_pump_stops.ipp>
#endif
