// SPDX-License-Identifier: BSL-1.0
/// @file
/// The water of a plan: what is made, what it must match, what instruments read. The key [water].
#pragma once

#include <string>
#include <tankwright/plan/description.hpp>

namespace tankwright::plan {

/// [water]
struct water_section {
  std::string note{};
};

void describe(visitor& key, water_section& s);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/water.ipp>
#endif
