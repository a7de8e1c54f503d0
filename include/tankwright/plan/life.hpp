// SPDX-License-Identifier: BSL-1.0
/// @file
/// The animals of a plan and what keeps them alive. The key [life].
#pragma once

#include <string>
#include <tankwright/plan/description.hpp>

namespace tankwright::plan {

/// [life]
struct life_section {
  std::string note{};
};

void describe(visitor& key, life_section& s);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/life.ipp>
#endif
