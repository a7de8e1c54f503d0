// SPDX-License-Identifier: BSL-1.0
/// @file
/// What water and salt does a year take?
#pragma once

#include <tankwright/decisions/decision.hpp>

namespace tankwright::decisions {

/// Water changes and top-off of a year, the salt mix for the changes, what the purifier is fed, and their price.
///
///   changes = part V a year/interval; top-off the mean of the seasons
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the band of the evaporation
/// @source    conservation of mass
void answer_water_of_the_year(const situation& s, answers& out);

inline constexpr decision water_of_the_year{.id = "running.water",
                                            .day = day::running,
                                            .question = "What water and salt does a year take?",
                                            .consequence = consequence::money,
                                            .answer = &answer_water_of_the_year};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/running/water_of_the_year.ipp>
#endif
