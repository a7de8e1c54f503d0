// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the decisions about the room start from.
#pragma once

#include <tankwright/decisions/system_state.hpp>
#include <tankwright/plan/inputs/room_inputs.hpp>

namespace tankwright::decisions {

struct room_case {
  plan::room_inputs in;
};

[[nodiscard]] room_case case_of(const plan::room_section& s, const system_state& state);

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/cases/room_case.ipp>
#endif
