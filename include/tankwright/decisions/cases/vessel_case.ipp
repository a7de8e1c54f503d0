// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/cases/vessel_case.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE vessel_case case_of(const plan::vessel_section& s, const water_basis&) { return {plan::inputs_of(s)}; }
TANKWRIGHT_INLINE void add_to(system_state&, const vessel_case&) {}

}  // namespace tankwright::decisions
