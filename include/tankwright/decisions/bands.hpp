// SPDX-License-Identifier: BSL-1.0
/// @file
/// Bands that are a promise: each number with everything doubtful varying at once, inputs and models together, and each
/// verdict by the chance that its margin is positive.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <tankwright/decisions/assessment.hpp>
#include <tankwright/decisions/decision.hpp>
#include <tankwright/plan/build.hpp>
#include <vector>

namespace tankwright::decisions {

/// How many samples, and who is told how far it is.
struct sampling {
  std::size_t samples = 1024;  ///< a power of two; 1,024 keep the promise, fewer are quicker
  std::function<void(std::size_t done, std::size_t of)> progress{};  ///< called now and then; none: nobody
};

/// One doubtful thing of a plan.
struct doubtful {
  std::string path;      ///< of the key
  double half_width;     ///< of its doubt at the given value, SI (of a factor: towards above)
  bool assumed;          ///< nobody gave it: the description's usual doubt
};

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

/// What sampling tells of one finding.
struct sampled_finding {
  std::string_view id;
  std::optional<double> chance{};  ///< that the deciding margin is positive, 0 to 1; none without a margin
  double refused = 0.0;            ///< part of the samples that an engine refused, 0 to 1
};

/// An assessment whose bands are the central 95 % of what its numbers are.
struct banded_assessment {
  assessment all{};                        ///< numbers with their bands, verdicts by chance
  std::vector<sampled_finding> sampled{};  ///< one for each finding, in the same order
  std::vector<doubtful> doubts{};
};

/// The verdict of a margin by its chance.
///
///   holds from a chance of 97.5 % with more than the smallest useful room at the low end of the band; does not hold
///   below 50 %; thin between
///
/// @param chance that the margin is positive, 0 to 1
/// @param low    low end of the margin's band, SI
/// @param useful smallest useful room, SI
/// @return       holds, thin_margin or does_not_hold; not_enough_known where a number is not finite
/// @accuracy     exact
/// @source       this library (docs/theory/verdicts.md)
[[nodiscard]] constexpr verdict judge_by_chance(double chance, double low, double useful) noexcept {
  constexpr double most = 1.7976931348623157e308;
  if (!(chance >= 0.0 && chance <= 1.0 && low >= -most && low <= most)) return verdict::not_enough_known;
  if (chance < 0.5) return verdict::does_not_hold;
  return chance >= 0.975 && low > 0.0 && low > useful ? verdict::holds : verdict::thin_margin;
}

namespace detail {
/// Move a plan within its doubts, let some decisions answer each time, and give their findings bands and verdicts.
[[nodiscard]] std::vector<sampled_finding> sample(const plan::build& build, std::vector<finding>& base,
                                                  std::span<const decision* const> some, const sampling& how);
}  // namespace detail

/// Assess a plan with its doubts.
///
///   x = value + half width * (2 u - 1), or value * factor^(2 u - 1), ended at the key's limits; u from shifted Sobol
///   points, one dimension a doubt; where an engine's answer has a band of its own (a law known within 35 %), it is
///   moved within that band by one more dimension for each reason. Band: the 2.5 % and 97.5 % quantiles
///
/// @param build the plan
/// @param how   how many samples
/// @return      the assessment with its bands, chances, and the doubts it rests on; the same plan gives the same bytes
/// @throws      invalid_plan as `assess`
/// @accuracy    coverage 93 to 97 % with 1,024 samples (tests/decisions/bands_test.cpp)
/// @source      JCGM 101:2008; Joe and Kuo 2008 for the points
[[nodiscard]] banded_assessment assess_with_doubts(const plan::build& build, const sampling& how = {});

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/bands.ipp>
#endif
