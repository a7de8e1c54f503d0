// SPDX-License-Identifier: BSL-1.0
/// @file
/// Do the gaskets lie tight on such a face?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/vessel/fixings.hpp>

namespace tankwright::decisions {

/// What a soft gasket bridges against how uneven the face under it is.
///
///   `vessel::gasket_takes_up` - unevenness
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where a bulkhead has a gasket
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `vessel::gasket_takes_up`: a rule
/// @source    squeeze of static seals, from memory
void answer_gaskets(const situation& s, answers& out);

inline constexpr decision gaskets{.id = "vessel.gaskets",
                                  .day = day::first_fill,
                                  .question = "Do the gaskets lie tight on such a face?",
                                  .consequence = consequence::flood,
                                  .caution = vessel::fixings_caution.text,
                                  .answer = &answer_gaskets};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/first_fill/gaskets.ipp>
#endif
