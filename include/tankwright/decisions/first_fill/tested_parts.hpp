// SPDX-License-Identifier: BSL-1.0
/// @file
/// Which part leaks?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/vessel/leak_test.hpp>

namespace tankwright::decisions {

/// Several parts that were tested at the same times, shut off from each other: the leak of each, with limits that
/// hold for all of them together, and of all.
///
///   `vessel::read_leak_tests`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `vessel/leak_parts.hpp`
/// @source    Bonferroni; Welch-Satterthwaite
void answer_tested_parts(const situation& s, answers& out);

inline constexpr decision tested_parts{.id = "hold.parts",
                                       .day = day::first_fill,
                                       .question = "Which part leaks?",
                                       .consequence = consequence::flood,
                                       .caution = vessel::leak_test_caution.text,
                                       .answer = &answer_tested_parts};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/first_fill/tested_parts.ipp>
#endif
