// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the findings about walls, rails, corners, seams and holes share: their names, and the water over them.
#pragma once

#include <algorithm>
#include <string>
#include <tankwright/decisions/cases/vessel_case.hpp>

namespace tankwright::decisions::detail {

/// "plywood", or "plywood 2" where there are several.
[[nodiscard]] inline std::string part_name(const std::string& label, const char* what, std::size_t at, std::size_t of) {
  if (!label.empty()) return label;
  return of > 1 ? what + (" " + std::to_string(at + 1)) : what;
}

/// Water over a height of the display when it stands at its rim.
[[nodiscard]] inline length under_the_rim(const vessel_case& c, length height) {
  return std::max(length{}, c.in.display.height() - height);
}

}  // namespace tankwright::decisions::detail
