// SPDX-License-Identifier: BSL-1.0
/// @file
/// What should your hydrometer read in fresh water and in a standard?
#pragma once

#include <tankwright/decisions/decision.hpp>

namespace tankwright::decisions {

/// What the plan's own hydrometer shows in purified water, and in a solution of table salt that is as dense as the
/// water to be made; how that solution is weighed.
///
///   `water::hydrometer_reading` at 0 and at the target;   `water::salt_for_standard`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  0.1 in salinity, and the division of the scale
/// @source    Feistel 2008; density of sodium chloride solutions
void answer_instrument_check(const situation& s, answers& out);

inline constexpr decision instrument_check{.id = "salt.instrument_check",
                                           .day = day::salting,
                                           .question = "What should your hydrometer read in two known waters?",
                                           .consequence = consequence::animals,
                                           .answer = &answer_instrument_check};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/salting/instrument_check.ipp>
#endif
