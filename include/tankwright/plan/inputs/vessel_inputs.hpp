// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the engines take of the section [vessel].
#pragma once

#include <tankwright/plan/vessel.hpp>

namespace tankwright::plan {

struct vessel_inputs {};

/// The section as the engines take it.
[[nodiscard]] vessel_inputs inputs_of(const vessel_section& s);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/inputs/vessel_inputs.ipp>
#endif
