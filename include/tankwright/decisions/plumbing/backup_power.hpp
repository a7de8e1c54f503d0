// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does the backup last until help comes?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/supply.hpp>

namespace tankwright::decisions {

/// How long the battery feeds what comes first, against the time until help; and how long with each next device. Where
/// there is a generator: whether it carries all that is kept.
///
///   `room::battery_feeds` - time until help;   generator - sum of P
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the band of a battery; a motor needs more to start
/// @source    conservation of energy
void answer_backup_power(const situation& s, answers& out);

inline constexpr decision backup_power{.id = "power.backup",
                                       .day = day::plumbing,
                                       .question = "Does the backup last until help comes?",
                                       .consequence = consequence::animals,
                                       .caution = room::supply_caution.text,
                                       .answer = &answer_backup_power};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/plumbing/backup_power.ipp>
#endif
