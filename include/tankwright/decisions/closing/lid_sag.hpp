// SPDX-License-Identifier: BSL-1.0
/// @file
/// Will the lids sag?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/vessel/cautions.hpp>

namespace tankwright::decisions {

/// Sag after years and bow from damp of each lid, against what is allowed, and its stress.
///
///   `vessel::sag_of`; left = 1 - (sag + bow)/allowed, and 1 - stress/allowable
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `vessel/lid.hpp`
/// @source    Euler-Bernoulli beam theory
void answer_lid_sag(const situation& s, answers& out);

inline constexpr decision lid_sag{.id = "vessel.lids",
                                  .day = day::closing,
                                  .question = "Will the lids sag?",
                                  .consequence = consequence::equipment,
                                  .caution = vessel::structural_caution.text,
                                  .answer = &answer_lid_sag};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/lid_sag.ipp>
#endif
