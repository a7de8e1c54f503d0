// SPDX-License-Identifier: BSL-1.0
/// @file
/// Which device costs most?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/heat_balance.hpp>

namespace tankwright::decisions {

/// Electricity and money of each device over a year, heating and dehumidifier among them: the mean of the seasons.
///
///   `room::running_costs` in each season
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the band of the evaporation
/// @source    arithmetic on the heat balance
void answer_devices_of_the_year(const situation& s, answers& out);

inline constexpr decision devices_of_the_year{.id = "running.devices",
                                              .day = day::running,
                                              .question = "Which device costs most?",
                                              .consequence = consequence::money,
                                              .caution = room::water_and_electricity_caution.text,
                                              .answer = &answer_devices_of_the_year};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/running/devices_of_the_year.ipp>
#endif
