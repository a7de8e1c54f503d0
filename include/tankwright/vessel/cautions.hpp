// SPDX-License-Identifier: BSL-1.0
/// @file
/// What to know before trusting a number about strength. Every structural result carries one of these.
#pragma once

#include <tankwright/core/estimate.hpp>

namespace tankwright::vessel {

inline constexpr caution structural_caution{
    "Screening only, not a design: a failed panel or floor floods a house and can kill. Have a licensed engineer check "
    "any panel over about 0.6 m of water, any tank built on site and any floor, and follow local codes."};

inline constexpr caution panel_caution{
    "Screening only, not a design: a failed panel floods a house and can kill. Have a licensed engineer check any "
    "panel over about 0.6 m of water and any tank built on site, and follow local codes. The allowable stress is for "
    "perfect support: twist, hard points, scratches, drilled holes and a stuck heater all cut it. The glass standard "
    "ASTM E1300 itself excludes aquariums; its factors are used here by analogy."};

inline constexpr caution floor_caution{
    "Screening only, not a design: an overloaded floor can collapse and kill. A code's live load is for a whole room, "
    "people included, and no licence for a tank. Find the direction, span and bearing of the joists, follow local "
    "codes, and have a licensed engineer check any load far above it."};

}  // namespace tankwright::vessel
