// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much oxygen can this water hold?
#pragma once

#include <tankwright/decisions/decision.hpp>

namespace tankwright::decisions {

/// Oxygen at saturation in water of the target.
///
///   `water::oxygen_saturation_concentration` at the pressure of the air
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `water/oxygen.hpp`
/// @source    Garcia and Gordon 1992
void answer_saturation_oxygen(const situation& s, answers& out);

inline constexpr decision saturation_oxygen{.id = "water.oxygen",
                                            .day = day::salting,
                                            .question = "How much oxygen can this water hold?",
                                            .consequence = consequence::animals,
                                            .answer = &answer_saturation_oxygen};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/salting/oxygen.ipp>
#endif
