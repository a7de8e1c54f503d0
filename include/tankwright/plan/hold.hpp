// SPDX-License-Identifier: BSL-1.0
/// @file
/// The leak test of a plan: as done, as planned, or both. The key [hold].
#pragma once

#include <string>
#include <tankwright/plan/description.hpp>

namespace tankwright::plan {

/// [hold]
struct hold_section {
  std::string note{};
};

void describe(visitor& key, hold_section& s);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/hold.ipp>
#endif
