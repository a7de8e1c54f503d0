// SPDX-License-Identifier: BSL-1.0
/// @file
/// What can a thing in this folder have at all? The ranges that several headers share; each function's published
/// range is narrower and stands beside its formula. Nothing within these overflows.
#pragma once

#include <tankwright/core/labelled.hpp>

namespace tankwright::life {

/// Water that is liquid, degC.
inline constexpr interval possible_water{-5.0, 100.0};
/// Concentrations of nitrogen or oxygen, mg/L.
inline constexpr interval possible_level{0.0, 1e6};
inline constexpr interval some_level{1e-6, 1e6};
/// Salt, on any scale.
inline constexpr interval possible_salt{0.0, 400.0};

inline constexpr limits net_volume_limits{"net volume", "L", {1e-3, 1e10}};
inline constexpr limits nitrogen_load_limits{"nitrogen load", "g/d", {0.0, 1e9}};
inline constexpr limits water_temperature_limits{"temperature", "degC", possible_water};

}  // namespace tankwright::life
