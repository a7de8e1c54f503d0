// SPDX-License-Identifier: BSL-1.0
/// @file
/// What does a weighed flask say of the salinity?
#pragma once

#include <tankwright/decisions/decision.hpp>

namespace tankwright::decisions {

/// The salinity from the density of a known volume on a scale, air buoyancy put back, against the water to be matched.
///
///   `water::density_by_weighing`, then `water::salinity_from_density`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the band of flask and scale: 0.1 % of volume is 1.3 in salinity
/// @source    Archimedes; Feistel 2008
void answer_weighed_salinity(const situation& s, answers& out);

inline constexpr decision weighed_salinity{.id = "salt.weighed",
                                           .day = day::salting,
                                           .question = "What does a weighed flask say of the salinity?",
                                           .consequence = consequence::animals,
                                           .answer = &answer_weighed_salinity};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/salting/weighed_salinity.ipp>
#endif
