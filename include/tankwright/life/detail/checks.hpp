// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the headers of this folder check in common: the ranges that several of them share, and a check whose message
/// names the element that is wrong ("skimmer: flow = -3 L/h ...").
#pragma once

#include <string>
#include <string_view>

#include <tankwright/core/validity.hpp>

namespace tankwright::life {

inline constexpr limits net_volume_limits{"net volume", "L", positive};
inline constexpr limits concentration_limits{"concentration", "mg/L", not_negative};
inline constexpr limits nitrogen_load_limits{"nitrogen load", "g/d", not_negative};
inline constexpr limits water_temperature_limits{"temperature", "degC", above_absolute_zero_celsius};

namespace detail {

using namespace tankwright::detail;

/// `check` for an argument of the element called `label`.
inline void check_of(std::string_view label, std::string_view function, const limits& limit, double value,
                     range_policy policy = range_policy::published) {
  if (limit.possible.contains(value) && (policy == range_policy::extrapolate || limit.published.contains(value))) {
    return;
  }
  const std::string argument = std::string{label}.append(": ").append(limit.argument);
  limits named = limit;
  named.argument = argument;
  check(function, named, value, policy);
}

}  // namespace detail
}  // namespace tankwright::life
