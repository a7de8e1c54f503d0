// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/cases/life_case.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE life_case case_of(const plan::life_section& s, const system_state&) { return {plan::inputs_of(s)}; }

}  // namespace tankwright::decisions
