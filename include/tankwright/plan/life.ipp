// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/life.hpp>
#include <tankwright/plan/usual.hpp>

namespace tankwright::plan {

TANKWRIGHT_INLINE void describe(visitor& key, life_section& s) { describe_note(key, s.note); }

}  // namespace tankwright::plan
