// SPDX-License-Identifier: BSL-1.0
/// @file
/// What does each stage of the first fill put on the panels?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/vessel/cautions.hpp>

namespace tankwright::decisions {

/// Stress and bulge of each panel at each stage of the fill, and the bulge at which to stop.
///
///   `vessel::first_fill`; `vessel::bulge_to_see` leaves out what no straight edge shows
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `vessel/panel.hpp`
/// @source    Timoshenko & Woinowsky-Krieger 1959
void answer_fill_stages(const situation& s, answers& out);

inline constexpr decision fill_stages{.id = "vessel.first_fill",
                                      .day = day::first_fill,
                                      .question = "What does each stage of the first fill put on the panels?",
                                      .consequence = consequence::injury,
                                      .caution = vessel::panel_caution.text,
                                      .answer = &answer_fill_stages};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/first_fill/fill_stages.ipp>
#endif
