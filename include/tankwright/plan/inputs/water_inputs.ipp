// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/inputs/water_inputs.hpp>

namespace tankwright::plan {

TANKWRIGHT_INLINE water_inputs inputs_of(const water_section&) { return {}; }

}  // namespace tankwright::plan
