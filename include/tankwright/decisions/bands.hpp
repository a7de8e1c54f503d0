// SPDX-License-Identifier: BSL-1.0
/// @file
/// Bands that are a promise: each number with everything doubtful varying at once, inputs and models together, and each
/// verdict by the chance that its margin is positive.
#pragma once

#include <tankwright/decisions/doubts.hpp>
#include <tankwright/plan/build.hpp>
#include <vector>

namespace tankwright::decisions {

/// All that is doubtful in a plan: what was given with a doubt, and what is usually known no better.
///
///   keys that were given, in the order of the plan; a list (a pump's curve) is one thing
///
/// @param build the plan
/// @return      paths with the size of their doubts
/// @throws      nothing but std::bad_alloc
/// @accuracy    exact
/// @source      the descriptions of `plan/`
[[nodiscard]] std::vector<doubtful> doubts_of(const plan::build& build);

/// Assess a plan with its doubts.
///
///   x = value + half width * (2 u - 1), or value * factor^(2 u - 1), ended at the key's limits; u from shifted Sobol
///   points, one dimension a doubt; where an engine's answer has a band of its own (a law known within 35 %), it is
///   moved within that band by one more dimension for each reason. Band: the 2.5 % and 97.5 % quantiles. A decision
///   that takes long (the forecast of the start-up) has fewer samples: `decision::samples`
///
/// @param build the plan
/// @param how   how many samples, and who runs them
/// @return      the assessment with its bands, chances, and the doubts it rests on; the same plan gives the same bytes
/// @throws      invalid_plan as `assess`
/// @accuracy    coverage 93 to 97 % with 1,024 samples (tests/decisions/bands_test.cpp)
/// @source      JCGM 101:2008; Joe and Kuo 2008 for the points
[[nodiscard]] banded_assessment assess_with_doubts(const plan::build& build, const sampling& how = {});

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/bands.ipp>
#endif
