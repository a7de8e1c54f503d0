// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does the new water match the older tank?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/water/adjust.hpp>

namespace tankwright::decisions {

/// How far apart the new water and the older tank are, against what is near enough; what to add or to take out.
///
///   near enough - |S_new - S_old|, through the bands of both; `water::raise_salinity`, `water::replace_to_reach`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the bands of both readings, of the volume and of the yield
/// @source    conservation of mass; TEOS-10
void answer_salinity_match(const situation& s, answers& out);

inline constexpr decision salinity_match{.id = "salt.match",
                                         .day = day::salting,
                                         .question = "Does the new water match the older tank?",
                                         .consequence = consequence::animals,
                                         .caution = water::adjusting_caution.text,
                                         .answer = &answer_salinity_match};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/salting/match.ipp>
#endif
