// SPDX-License-Identifier: BSL-1.0
/// @file
/// Do the lights hang at the right height?
#pragma once

#include <tankwright/decisions/decision.hpp>
#include <tankwright/room/lighting.hpp>

namespace tankwright::decisions {

inline constexpr std::string_view lights_caution =
    "Lamps over salt water: splash-proof or behind a cover, hung so that none can fall in, on residual-current "
    "protection; local codes and a licensed electrician come first.";

/// What width each lamp lights against their spacing, and what part of the light reaches the bottom.
///
///   `room::lit_width` - spacing;   `room::light_at_depth` - least share
///
/// @param s   the plan as it is being assessed
/// @param out gets the finding, where the plan says how the lights hang
/// @throws    invalid_input, out_of_range, no_convergence (from the engines; `answers::run` makes a finding of it)
/// @accuracy  as `room/lighting.hpp`
/// @source    as `room::light_at_depth`
void answer_lights(const situation& s, answers& out);

inline constexpr decision lights{.id = "room.light_height",
                                 .day = day::closing,
                                 .question = "Do the lights hang at the right height?",
                                 .consequence = consequence::animals,
                                 .caution = lights_caution,
                                 .answer = &answer_lights};

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/closing/lights.ipp>
#endif
