// SPDX-License-Identifier: BSL-1.0
/// @file
/// The room of a plan: its air, its heat, its top-off. The key [room].
#pragma once

#include <string>
#include <tankwright/plan/description.hpp>

namespace tankwright::plan {

/// [room]
struct room_section {
  std::string note{};
};

void describe(visitor& key, room_section& s);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/room.ipp>
#endif
