// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/cases/room_case.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE room_case case_of(const plan::room_section& s, const system_state&) { return {plan::inputs_of(s)}; }

}  // namespace tankwright::decisions
