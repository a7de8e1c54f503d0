// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the decisions about the water start from.
#pragma once

#include <tankwright/decisions/system_state.hpp>
#include <tankwright/plan/inputs/water_inputs.hpp>

namespace tankwright::decisions {

struct water_case {
  plan::water_inputs in;
};

[[nodiscard]] water_case case_of(const plan::water_section& s);

/// Temperature, salinity and air for the other sections.
[[nodiscard]] water_basis basis_of(const water_case& c);
/// Without a vessel, the display holds what the sump does not of the water to be made.
void add_display_from(system_state& state, const water_case& c);

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/cases/water_case.ipp>
#endif
