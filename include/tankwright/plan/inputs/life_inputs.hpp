// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the engines take of the section [life].
#pragma once

#include <tankwright/plan/life.hpp>

namespace tankwright::plan {

struct life_inputs {};

/// The section as the engines take it.
[[nodiscard]] life_inputs inputs_of(const life_section& s);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/inputs/life_inputs.ipp>
#endif
