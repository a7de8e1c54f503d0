// SPDX-License-Identifier: BSL-1.0
/// @file
/// What can a thing in or around a room have at all? The ranges that several headers share; each function's published
/// range is narrower and stands beside its formula. Nothing within these overflows.
#pragma once

#include <tankwright/core/validity.hpp>

namespace tankwright::room {

// Temperatures, degC.
inline constexpr interval possible_air{-150.0, 370.0};           ///< air with vapour: below the critical point of water
inline constexpr interval possible_surroundings{-100.0, 200.0};  ///< walls, panes, outdoors
inline constexpr interval possible_water{-10.0, 150.0};          ///< liquid, under any pressure of the air

// Sizes, SI.
inline constexpr interval possible_area{0.0, 1e6};
inline constexpr interval possible_volume{1e-6, 1e9};
inline constexpr interval possible_mass_flow{0.0, 1e4};  ///< of vapour
inline constexpr interval possible_power{0.0, 1e9};
inline constexpr interval possible_transmittance{0.0, 1e5};

}  // namespace tankwright::room
