// SPDX-License-Identifier: BSL-1.0
/// @file
/// What should the instruments read when it is right?
#pragma once

#include <tankwright/decisions/decision.hpp>

namespace tankwright::decisions {

/// What each instrument that is at hand shows in water of the target at its temperature.
///
///   `water::hydrometer_reading`, `water::refractometer_reading`, `water::conductivity_from_salinity`
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as each instrument's header
/// @source    TEOS-10; Millard and Seaver 1990; PSS-78
void answer_instrument_readings(const situation& s, answers& out);

inline constexpr decision instrument_readings{.id = "salt.readings",
                                              .day = day::salting,
                                              .question = "What should the instruments read when it is right?",
                                              .consequence = consequence::animals,
                                              .answer = &answer_instrument_readings};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/salting/readings.ipp>
#endif
