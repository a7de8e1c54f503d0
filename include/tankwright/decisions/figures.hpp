// SPDX-License-Identifier: BSL-1.0
/// @file
/// The pictures of a whole plan.
#pragma once

#include <tankwright/decisions/figure.hpp>
#include <tankwright/plan/build.hpp>
#include <vector>

namespace tankwright::decisions {

/// The pictures of the findings, as data. They cost more than the findings: a slider asks for `assess` alone.
///
///   `figures_of` the cases of the sections, with one `situation`; what cannot be worked out is not drawn
///
/// @param build the plan
/// @return      figures that carry the id of their finding, in the order of the job
/// @throws      invalid_plan as `assess`
/// @accuracy    as its parts
/// @source      the sources of the sections
[[nodiscard]] std::vector<figure> figures_of(const plan::build& build);

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/figures.ipp>
#endif
