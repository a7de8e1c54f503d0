// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/inputs/life_inputs.hpp>

namespace tankwright::plan {

TANKWRIGHT_INLINE life_inputs inputs_of(const life_section&) { return {}; }

}  // namespace tankwright::plan
