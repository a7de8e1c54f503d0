// SPDX-License-Identifier: BSL-1.0
/// @file
/// The readings of the leak test, drawn.
#pragma once

#include <tankwright/decisions/cases/hold_case.hpp>
#include <tankwright/decisions/figure.hpp>

namespace tankwright::decisions {

/// Readings, fitted line, and what a tight tank would have done: hold.leak.
///
///   the line of `vessel::read_leak_test` and that of evaporation alone, through the middle of the readings
///
/// @param c a leak test that was read
/// @return  heights above the last reading [m] over time [s]
/// @throws  nothing but std::bad_alloc
/// @accuracy as `vessel/leak_test.hpp`
/// @source  as `vessel/leak_test.hpp`
[[nodiscard]] std::vector<figure> figures_of(const leak_test_case& c);

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/figures/hold_figures.ipp>
#endif
