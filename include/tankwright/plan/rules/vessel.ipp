// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/rules/rules.hpp>

namespace tankwright::plan::rules {

TANKWRIGHT_INLINE void hold_vessel(const build&, book&) {}

}  // namespace tankwright::plan::rules
