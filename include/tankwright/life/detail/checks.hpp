// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the headers of this folder check in common: the ranges that several of them share.
#pragma once

#include <tankwright/core/labelled.hpp>

namespace tankwright::life {

inline constexpr limits net_volume_limits{"net volume", "L", {1e-3, 1e10}};
inline constexpr limits nitrogen_load_limits{"nitrogen load", "g/d", {0.0, 1e9}};
/// Water that is liquid.
inline constexpr limits water_temperature_limits{"temperature", "degC", {-5.0, 100.0}};

namespace detail {
}

}  // namespace tankwright::life
