// SPDX-License-Identifier: BSL-1.0
/// @file
/// Keys that are each possible and cannot all be true. Refused is what cannot be built, filled or dated that way; what
/// is only unusual passes, and what fails its purpose is a finding of the report.
#pragma once

#include <tankwright/plan/rules/book.hpp>
#include <vector>

namespace tankwright::plan {

/// All rules that hold keys against each other.
///
/// @param build the plan
/// @param all   mistakes are added to it
/// @throws      nothing but std::bad_alloc
/// @accuracy    exact; areas worked out from different measures agree within 3 %
/// @source      this library
void hold_rules(const build& build, std::vector<mistake>& all);

namespace rules {

void hold_vessel(const build& build, book& all);
void hold_leak_test(const build& build, book& all);
void hold_plumbing(const build& build, book& all);
void hold_water(const build& build, book& all);
void hold_room(const build& build, book& all);
void hold_life(const build& build, book& all);

}  // namespace rules
}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/rules/rules.ipp>
#endif
