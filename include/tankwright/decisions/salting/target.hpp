// SPDX-License-Identifier: BSL-1.0
/// @file
/// What salinity must the new water have?
#pragma once

#include <tankwright/decisions/decision.hpp>

namespace tankwright::decisions {

/// The salinity of the older tank, by whichever instrument it was read, or the one that was chosen.
///
///   `plan::salinity_of` the reading; density of that water at its temperature
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  half a division of a hydrometer or refractometer, 0.3 for a probe
/// @source    TEOS-10; PSS-78; Millard and Seaver 1990
void answer_salt_target(const situation& s, answers& out);

inline constexpr decision salt_target{.id = "salt.target",
                                      .day = day::salting,
                                      .question = "What salinity must the new water have?",
                                      .consequence = consequence::animals,
                                      .answer = &answer_salt_target};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/salting/target.ipp>
#endif
