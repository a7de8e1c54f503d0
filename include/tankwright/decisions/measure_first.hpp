// SPDX-License-Identifier: BSL-1.0
/// @file
/// Of all that could be measured, what first? What would most often turn a verdict that is open.
#pragma once

#include <string>
#include <string_view>
#include <tankwright/decisions/shares.hpp>
#include <vector>

namespace tankwright::decisions {

/// A measurement, and the finding that it would decide.
struct next_measurement {
  std::string_view id;  ///< of the finding
  std::string_view question;
  decisions::verdict verdict{};  ///< as things stand
  std::string what{};            ///< to do, in words
  std::string path{};            ///< of the key that is to be known better; empty: a law, measured in place of computed
  std::string_view law{};        ///< its id; empty: a key
  double turns = 0.0;            ///< chance that knowing it turns the verdict, 0 to 1
};

/// What to measure first, over the whole plan.
///
///   each doubt of each finding that does not hold or is thin: were it known exactly, the margin would be normal about
///   what it comes to, with the spread that the other doubts leave; the part of its values at which the verdict is
///   another one is its chance. The graver consequence first, then the greater chance; none twice
///
/// @param build  the plan, for its units
/// @param judged the plan, assessed with its doubts
/// @param shares of the same
/// @param most   how many at most
/// @return       measurements with a chance of 5 % or more
/// @throws       nothing but std::bad_alloc
/// @accuracy     an order; the chances are good to some points
/// @source       this library
[[nodiscard]] std::vector<next_measurement> measure_first(const plan::build& build, const banded_assessment& judged,
                                                          const std::vector<shares_of_finding>& shares,
                                                          std::size_t most = 3);

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/measure_first.ipp>
#endif
