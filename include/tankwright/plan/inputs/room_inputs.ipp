// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/inputs/room_inputs.hpp>

namespace tankwright::plan {

TANKWRIGHT_INLINE room_inputs inputs_of(const room_section&) { return {}; }

}  // namespace tankwright::plan
