// SPDX-License-Identifier: BSL-1.0
/// @file
/// The display of a plan: what it is, what is in it and on it. The key [vessel].
#pragma once

#include <string>
#include <tankwright/plan/description.hpp>

namespace tankwright::plan {

/// [vessel]
struct vessel_section {
  std::string note{};
};

void describe(visitor& key, vessel_section& s);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/vessel.ipp>
#endif
