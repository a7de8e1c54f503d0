// SPDX-License-Identifier: BSL-1.0
/// @file
/// How long may the bags stay closed?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/life/transport.hpp>

namespace tankwright::decisions {

/// Each bag when it is opened: the time that its oxygen lasts against the time that it is closed, carbon dioxide and
/// pH, free ammonia as it is and once opened, and its temperature.
///
///   `life::bag_after`, `life::oxygen_lasts`;   T = T_s + (T_0 - T_s) exp(-t/tau)
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `life/transport.hpp`
/// @source    Lueker et al. 2000, Clegg and Whitfield 1995
void answer_transport_bags(const situation& s, answers& out);

inline constexpr decision transport_bags{.id = "life.bags",
                                         .day = day::moving_in,
                                         .question = "How long may the bags stay closed?",
                                         .consequence = consequence::animals,
                                         .caution = life::transport_caution.text,
                                         .answer = &answer_transport_bags};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/moving_in/transport_bags.ipp>
#endif
