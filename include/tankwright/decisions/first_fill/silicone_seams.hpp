// SPDX-License-Identifier: BSL-1.0
/// @file
/// Does the silicone carry the panes?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/vessel/fixings.hpp>

namespace tankwright::decisions {

/// The stress in each seam at its lower end with the water at the rim, against what silicone may carry for good, about
/// which the trade disagrees by more than ten.
///
///   `vessel::pull_on_joint`/bite against 14 to 210 kPa
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan asks for it
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  the band of what is allowed
/// @source    practice (from memory)
void answer_silicone_seams(const situation& s, answers& out);

inline constexpr decision silicone_seams{.id = "vessel.seams",
                                         .day = day::first_fill,
                                         .question = "Does the silicone carry the panes?",
                                         .consequence = consequence::injury,
                                         .caution = vessel::fixings_caution.text,
                                         .answer = &answer_silicone_seams};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/first_fill/silicone_seams.ipp>
#endif
