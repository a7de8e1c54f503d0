// SPDX-License-Identifier: BSL-1.0
/// @file
/// Is it holding?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/vessel/leak_test.hpp>

namespace tankwright::decisions {

/// Whether the readings prove a leak, and whether they would have shown one that matters.
///
///   `vessel::read_leak_test`; evaporation from `room::evaporation` where there is no pan
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `vessel/leak_test.hpp`
/// @source    the sources of `vessel/leak_test.hpp` and `room/evaporation.hpp`
void answer_leak(const situation& s, answers& out);

inline constexpr decision leak{.id = "hold.leak",
                               .day = day::first_fill,
                               .question = "Is it holding?",
                               .consequence = consequence::flood,
                               .caution = vessel::leak_test_caution.text,
                               .answer = &answer_leak};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/first_fill/leak.ipp>
#endif
