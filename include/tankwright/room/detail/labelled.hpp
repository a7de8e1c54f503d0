// SPDX-License-Identifier: BSL-1.0
/// @file
/// Checks on one of several elements: the error names which one ("sump: area = -2 m2 is not possible ...").
#pragma once

#include <string>
#include <string_view>

#include <tankwright/core/validity.hpp>

namespace tankwright::detail {

/// As `check`, with the element's label before the argument.
inline void check_labelled(std::string_view function, std::string_view label, const limits& limit, double value,
                           range_policy policy = range_policy::published) {
  const bool good =
      limit.possible.contains(value) && (policy == range_policy::extrapolate || limit.published.contains(value));
  if (good) [[likely]]
    return;
  const std::string argument = std::string{label}.append(": ").append(limit.argument);
  limits named = limit;
  named.argument = argument;
  check(function, named, value, policy);
}

}  // namespace tankwright::detail
