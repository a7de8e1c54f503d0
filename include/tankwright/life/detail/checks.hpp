// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the headers of this folder check in common: the ranges that several of them share.
#pragma once

#include <tankwright/core/labelled.hpp>

namespace tankwright::life {

inline constexpr limits net_volume_limits{"net volume", "L", positive};
inline constexpr limits concentration_limits{"concentration", "mg/L", not_negative};
inline constexpr limits nitrogen_load_limits{"nitrogen load", "g/d", not_negative};
inline constexpr limits water_temperature_limits{"temperature", "degC", above_absolute_zero_celsius};

namespace detail {
}

}  // namespace tankwright::life
