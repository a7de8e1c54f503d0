// SPDX-License-Identifier: BSL-1.0
/// @file
/// Of all that could be measured next, what first? The few measurements that could change a decision, or give one.
#pragma once

#include <string>
#include <string_view>
#include <tankwright/decisions/assessment.hpp>
#include <vector>

namespace tankwright::decisions {

/// A measurement, and the finding that it serves.
struct next_measurement {
  std::string_view id;  ///< of the finding
  std::string_view question;
  decisions::verdict verdict;  ///< as things stand
  std::string what;            ///< to do
};

/// What to measure first, over the whole plan.
///
///   the first `measure_next` of the findings that are most open: margins that may turn out either way, then what could
///   not be answered, then thin margins, then wide bands; of equally open ones the graver consequence, then the earlier
///   day
///
/// @param all  the assessment
/// @param most how many at most
/// @return     measurements, the most telling first; none twice
/// @throws     nothing but std::bad_alloc
/// @accuracy   an order, no number: it knows the bands, not what a measurement costs
/// @source     this library
[[nodiscard]] std::vector<next_measurement> measure_first(const assessment& all, std::size_t most = 3);

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/measure_first.ipp>
#endif
