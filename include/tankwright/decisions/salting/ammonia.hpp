// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much of the ammonia is free?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/water/ammonia.hpp>

namespace tankwright::decisions {

/// The poisonous part of the ammonia at this pH, salinity and temperature.
///
///   `water::free_ammonia_in` the sample
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `water/ammonia.hpp`; the errors of kit and probe come on top
/// @source    Clegg and Whitfield 1995
void answer_ammonia_free_part(const situation& s, answers& out);

inline constexpr decision ammonia_free_part{.id = "water.ammonia",
                                            .day = day::salting,
                                            .question = "How much of the ammonia is free?",
                                            .consequence = consequence::animals,
                                            .caution = water::ammonia_caution.text,
                                            .answer = &answer_ammonia_free_part};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/salting/ammonia.ipp>
#endif
