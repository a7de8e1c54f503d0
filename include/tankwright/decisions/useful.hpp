// SPDX-License-Identifier: BSL-1.0
/// @file
/// The smallest room that is of use, where a plan does not say how much it wants to keep: common practice, no source.
#pragma once

#include <tankwright/core/units.hpp>

namespace tankwright::decisions {

inline constexpr length useful_level = millimetres(2.0);  ///< below it a ripple decides

}  // namespace tankwright::decisions
