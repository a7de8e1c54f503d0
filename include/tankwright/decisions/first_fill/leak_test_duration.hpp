// SPDX-License-Identifier: BSL-1.0
/// @file
/// How many days until a leak that matters shows?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/vessel/leak_test.hpp>

namespace tankwright::decisions {

/// The length of a planned leak test that finds the leak that would matter.
///
///   `vessel::required_duration`; `vessel::required_resolution` for half of it
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `vessel/leak_test_planning.hpp`
/// @source    as `vessel/leak_test_planning.hpp`
void answer_leak_test_duration(const situation& s, answers& out);

inline constexpr decision leak_test_duration{.id = "hold.days",
                                             .day = day::first_fill,
                                             .question = "How many days until a leak that matters shows?",
                                             .consequence = consequence::flood,
                                             .caution = vessel::leak_test_caution.text,
                                             .answer = &answer_leak_test_duration};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/first_fill/leak_test_duration.ipp>
#endif
