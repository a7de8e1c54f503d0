// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the engines take of the section [room].
#pragma once

#include <tankwright/plan/room.hpp>

namespace tankwright::plan {

struct room_inputs {};

/// The section as the engines take it.
[[nodiscard]] room_inputs inputs_of(const room_section& s);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/inputs/room_inputs.ipp>
#endif
