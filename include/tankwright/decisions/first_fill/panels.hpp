// SPDX-License-Identifier: BSL-1.0
/// @file
/// Is each panel in a sane range?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/vessel/cautions.hpp>

namespace tankwright::decisions {

/// Stress and bulge of each panel with water to the rim, against what its material may carry for good.
///
///   `vessel::water_on` each panel; left = 1 - stress/allowable, and 1 - bulge after years/allowed
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `vessel/panel.hpp`; a screening of strength, not a design
/// @source    Timoshenko & Woinowsky-Krieger 1959; the allowable stresses of `vessel/materials.hpp`
void answer_panels(const situation& s, answers& out);

inline constexpr decision panels{.id = "vessel.panels",
                                 .day = day::first_fill,
                                 .question = "Is each panel in a sane range?",
                                 .consequence = consequence::injury,
                                 .caution = vessel::panel_caution.text,
                                 .answer = &answer_panels};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/first_fill/panels.ipp>
#endif
