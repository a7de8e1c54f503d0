// SPDX-License-Identifier: BSL-1.0
/// @file
/// The weeks of the start-up, drawn.
#pragma once

#include <tankwright/decisions/cases/life_case.hpp>
#include <tankwright/decisions/figure.hpp>
#include <vector>

namespace tankwright::decisions {

/// Ammonia, nitrite and nitrate over the weeks, with their bands; where the forecast is wanted and there is food and
/// water for it.
///
///   `simulate`, as for the decision life.start_up
///
/// @param c what the decisions about the life start from
/// @return  as nitrogen [kg/m^3] over time [s]
/// @throws  invalid_input, out_of_range, no_convergence (from the functions of `life/`)
/// @accuracy the shape, never the dates
/// @source  the sources of `life/start_up.hpp`
[[nodiscard]] std::vector<figure> figures_of(const life_case& c);

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/figures/life_figures.ipp>
#endif
