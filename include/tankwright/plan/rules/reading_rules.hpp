// SPDX-License-Identifier: BSL-1.0
/// @file
/// What a reading of an instrument needs, and what cannot be one; for every section that gives readings.
#pragma once

#include <string>
#include <tankwright/plan/reading.hpp>
#include <tankwright/plan/rules/book.hpp>

namespace tankwright::plan::rules {

/// A value from 0.99 to 1.10 stands for a salinity only where somebody wrote a specific gravity.
void hold_salinity(const std::string& path, const value<practical_salinity>& s, book& all);

/// Each instrument with what its reading needs.
void hold_reading(const std::string& path, const salinity_reading& r, book& all);

}  // namespace tankwright::plan::rules

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/rules/reading_rules.ipp>
#endif
