// SPDX-License-Identifier: BSL-1.0
/// @file
/// When is the water ready?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/water/salt_mix.hpp>

namespace tankwright::decisions {

/// The batches that a mixing vat makes, the hours of purified water at the unit's rate and of dissolving, what the
/// unit is fed, and the salt and the reading of each batch.
///
///   n = V/vat, rounded up;   t = (fresh - stored)/rate + n t_dissolve, less where purified water can be stored
/// meanwhile
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the rate of the unit: it falls with the temperature of the supply
/// @source    conservation of mass; as `water/salt_mix.hpp`
void answer_mixing_schedule(const situation& s, answers& out);

inline constexpr decision mixing_schedule{.id = "salt.schedule",
                                          .day = day::salting,
                                          .question = "When is the water ready?",
                                          .consequence = consequence::money,
                                          .caution = water::mixing_caution.text,
                                          .answer = &answer_mixing_schedule};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/salting/mixing_schedule.ipp>
#endif
