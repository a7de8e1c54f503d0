// SPDX-License-Identifier: BSL-1.0
/// @file
/// The display from its front, to scale.
#pragma once

#include <tankwright/decisions/figure.hpp>
#include <tankwright/plan/build.hpp>

namespace tankwright::decisions {

/// What stands where in a display with flat walls: vessel.water.
///
///   length by height; the sand as it lies, the water line, the panels of the front, the overflow edge and the outlets
///
/// @param build a plan that `validate` accepts
/// @return      one figure; none without a box
/// @throws      nothing but std::bad_alloc
/// @accuracy    to scale; a slope of sand in steps of a twentieth of its run
/// @source      the plan
[[nodiscard]] std::vector<figure> display_figures_of(const plan::build& build);

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/figures/vessel_figures.ipp>
#endif
