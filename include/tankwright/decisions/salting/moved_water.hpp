// SPDX-License-Identifier: BSL-1.0
/// @file
/// What does the old tank's own water do?
#pragma once

#include <tankwright/decisions/decision.hpp>

namespace tankwright::decisions {

/// The new water that is still to be made beside the water that comes over, the salt it saves, and the salinity of both
/// together against the older tank.
///
///   blend of both by `water::blend`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  that of the readings
/// @source    conservation of mass and salt
void answer_moved_water(const situation& s, answers& out);

inline constexpr decision moved_water{.id = "salt.moved_water",
                                      .day = day::salting,
                                      .question = "What does the old tank's own water do?",
                                      .consequence = consequence::animals,
                                      .answer = &answer_moved_water};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/salting/moved_water.ipp>
#endif
