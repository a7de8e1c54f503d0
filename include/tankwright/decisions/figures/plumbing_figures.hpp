// SPDX-License-Identifier: BSL-1.0
/// @file
/// The plumbing, drawn: where the pump meets its pipes, and the sump before and after a power cut.
#pragma once

#include <tankwright/decisions/cases/plumbing_case.hpp>
#include <tankwright/decisions/figure.hpp>
#include <vector>

namespace tankwright::decisions {

/// plumbing.flow where there is one pump, and sump.power_cut where water comes down.
///
///   pump curve and system curve, by solving the circuit with the pump at many speeds; levels of the power cut
///
/// @param c  the plumbing as it was worked out
/// @return   curves of head [m] over flow [m^3/s]; the sump's rectangles to scale [m]
/// @throws   invalid_input, out_of_range, no_convergence (from the engines)
/// @accuracy as its parts
/// @source   the sources of `plumbing/`
[[nodiscard]] std::vector<figure> figures_of(const plumbing_case& c);

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/figures/plumbing_figures.ipp>
#endif
