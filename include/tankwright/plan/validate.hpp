// SPDX-License-Identifier: BSL-1.0
/// @file
/// All that is wrong with a plan, at once, whoever filled it: a file, a form or a program.
#pragma once

#include <tankwright/plan/build.hpp>
#include <tankwright/plan/mistake.hpp>
#include <vector>

namespace tankwright::plan {

/// Everything that keeps a plan from being assessed: keys that are needed and missing, numbers that cannot exist, keys
/// that exclude each other, and keys that are each possible and cannot all be true.
///
///   what the descriptions say of each key; then the rules of `plan/rules/`, on what passed
///
/// What is only unusual passes, and what fails its purpose is a finding of the report.
///
/// @param build the plan
/// @return      all mistakes in the order of the plan; empty for a plan that can be assessed
/// @throws      nothing but std::bad_alloc
/// @accuracy    exact; areas worked out from different measures agree within 3 %
/// @source      the descriptions and rules of `plan/`
[[nodiscard]] std::vector<mistake> validate(const build& build);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/validate.ipp>
#endif
