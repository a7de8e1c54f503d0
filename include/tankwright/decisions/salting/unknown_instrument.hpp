// SPDX-License-Identifier: BSL-1.0
/// @file
/// What does an instrument of unknown scale say?
#pragma once

#include <tankwright/decisions/decision.hpp>

namespace tankwright::decisions {

/// The salinity behind the reading of an instrument whose scale nobody knows: within the band of all usual scales;
/// or, once it was read in purified water and in a weighed standard, through these two points.
///
///   rho = rho_0 + (R - R_0)(rho_1 - rho_0)/(R_1 - R_0), then `water::salinity_from_density`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  half a division on each reading, all at their worst
/// @source    Feistel 2008; density of sodium chloride solutions
void answer_unknown_instrument(const situation& s, answers& out);

inline constexpr decision unknown_instrument{.id = "salt.unknown_instrument",
                                             .day = day::salting,
                                             .question = "What does an instrument of unknown scale say?",
                                             .consequence = consequence::animals,
                                             .answer = &answer_unknown_instrument};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/salting/unknown_instrument.ipp>
#endif
