// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the engines take of the section [water].
#pragma once

#include <tankwright/plan/water.hpp>

namespace tankwright::plan {

struct water_inputs {};

/// The section as the engines take it.
[[nodiscard]] water_inputs inputs_of(const water_section& s);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/inputs/water_inputs.ipp>
#endif
