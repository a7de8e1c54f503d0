// SPDX-License-Identifier: BSL-1.0
/// @file
/// How much salt mix for the new water?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/water/salt_mix.hpp>

namespace tankwright::decisions {

/// Dry mix to weigh out, and fresh water to pour it into.
///
///   `water::salt_for_finished_volume` with volume, target and yield each at its worst
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the balance is exact; the bands of volume, target and yield decide
/// @source    conservation of mass; TEOS-10
void answer_salt_mix(const situation& s, answers& out);

inline constexpr decision salt_mix{.id = "salt.mix",
                                   .day = day::salting,
                                   .question = "How much salt mix for the new water?",
                                   .consequence = consequence::animals,
                                   .caution = water::mixing_caution.text,
                                   .answer = &answer_salt_mix};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/salting/mix.ipp>
#endif
