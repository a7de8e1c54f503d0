// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/decisions/cases/water_case.hpp>

namespace tankwright::decisions {

TANKWRIGHT_INLINE water_case case_of(const plan::water_section& s) { return {plan::inputs_of(s)}; }
TANKWRIGHT_INLINE water_basis basis_of(const water_case&) { return {}; }
TANKWRIGHT_INLINE void add_display_from(system_state&, const water_case&) {}

}  // namespace tankwright::decisions
