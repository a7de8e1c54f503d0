// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the decisions about the vessel start from.
#pragma once

#include <tankwright/decisions/system_state.hpp>
#include <tankwright/plan/inputs/vessel_inputs.hpp>

namespace tankwright::decisions {

struct vessel_case {
  plan::vessel_inputs in;
};

[[nodiscard]] vessel_case case_of(const plan::vessel_section& s, const water_basis& water);

/// Water and surface for the other sections.
void add_to(system_state& state, const vessel_case& c);

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/cases/vessel_case.ipp>
#endif
