// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the decisions about the life start from.
#pragma once

#include <tankwright/decisions/system_state.hpp>
#include <tankwright/plan/inputs/life_inputs.hpp>

namespace tankwright::decisions {

struct life_case {
  plan::life_inputs in;
};

[[nodiscard]] life_case case_of(const plan::life_section& s, const system_state& state);

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/cases/life_case.ipp>
#endif
