// SPDX-License-Identifier: BSL-1.0
/// @file
/// Why is this band as wide as it is? Of each finding the doubts that make it, as parts of its variance.
#pragma once

#include <string>
#include <string_view>
#include <tankwright/decisions/doubts.hpp>
#include <tankwright/plan/build.hpp>
#include <vector>

namespace tankwright::decisions {

/// What one doubt does to a finding's number.
struct share {
  std::string what;     ///< path of a key, or the id of a law (a band that no law is known for: its reason)
  bool of_law = false;  ///< a law that is known only within a band, no key
  double part = 0.0;    ///< of the variance, 0 to 1
  double below = 0.0;   ///< the number with this doubt 0.775 of its half width below its middle, SI
  double middle = 0.0;
  double above = 0.0;
  std::string_view says{};  ///< of a law: how well it is known, in words
};

/// The doubts that make the band of one finding: of its deciding margin, else of its headline.
struct shares_of_finding {
  std::string_view id;
  std::string_view number_id{};
  std::string place{};
  std::vector<share> shares{};  ///< the largest first; those below half a per cent are left out
  double together = 0.0;        ///< the rest: small doubts, and what doubts do only together
};

/// The doubts that make each band.
///
///   one doubt at a time at three points of Gauss and Legendre, the others in their middle: its part is the variance of
///   these over the variance of all samples. What the parts leave is the doubts together; where they come to more than
///   all, they are scaled to it
///
/// @param build  the plan
/// @param judged the same plan, assessed with its doubts
/// @param run    who does the work; none: one doubt after the other
/// @return       for each finding whose number has a band, in the order of the job; decisions with few samples left out
/// @throws       nothing but std::bad_alloc: what an engine refuses has no share
/// @accuracy     exact where the doubts add up and each acts as a cubic at most; within 5 points of first-order indices
///               by Monte Carlo (tests/decisions/shares_test.cpp)
/// @source       Sobol 1993, Sensitivity estimates for nonlinear mathematical models, for what the parts are (from
///               memory); Gauss and Legendre's quadrature
[[nodiscard]] std::vector<shares_of_finding> shares_of(const plan::build& build, const banded_assessment& judged,
                                                       const executor& run = {});

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/shares.ipp>
#endif
