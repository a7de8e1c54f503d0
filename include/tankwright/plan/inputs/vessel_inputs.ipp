// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/inputs/vessel_inputs.hpp>

namespace tankwright::plan {

TANKWRIGHT_INLINE vessel_inputs inputs_of(const vessel_section&) { return {}; }

}  // namespace tankwright::plan
