// SPDX-License-Identifier: BSL-1.0
/// @file
/// Walks the ends of a range: what is inside is taken, what is outside is refused by the right error, in the argument's
/// name, with the number that was given and, where the test says so, by the function that was called.
///
/// `check_edges` takes the header's own limits, or limits written as numbers in the test; `check_ranges` takes the ranges
/// of one function as its docstring gives them. All walk in the same steps: a part in a thousand million.
/// `refuses_bad_numbers` gives what no thing can have: NaN, infinity, 1e100.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "any_call.hpp"
#include "check.hpp"

namespace tankwright::testing {

/// A call of a formula with a number, within the published range or extrapolating.
using call_of_number = any_call<double, range_policy>;

enum class outcome { accepted, invalid, outside };

/// What `call` does, with the error held against the limits that should have thrown it.
[[nodiscard]] outcome outcome_of(const limits& limit, double x, range_policy policy, call_of_number call);

/// Whose numbers the ends are: the header's, whose vast ends and extrapolated ends a formula need not reach, or the test's,
/// which says that all of them are taken.
enum class ends_of { header, test };

/// All of it for an argument with limits that have a name: what is no number is refused in the argument's name; the ends of
/// the possible and of the published range, within the published one and extrapolating.
void check_edges(const limits& limit, call_of_number call, ends_of whose = ends_of::header);

/// The same for an argument that no source limits, its ends written as numbers in the test: `call(x)`.
void check_edges(std::string_view argument, std::string_view unit, const interval& possible, any_call<double> call);

/// `call(x, policy)` must throw an error of the library at what nothing can have, in whose name ever.
void refuses_bad_numbers(std::string_view what, call_of_number call);

struct range_of {
  std::string argument;
  double low;
  double high;
  std::function<void(double)> call;
  bool low_open = false;   ///< the low end itself is refused
  bool high_open = false;  ///< the high end itself is refused
};

/// The ranges of one function, each refused by it and in the argument's name, as impossible or as outside what is published.
void check_ranges(const std::string& function, const std::vector<range_of>& ranges);

}  // namespace tankwright::testing

/// A range of `x`, which stands in the call: TW_RANGE("flow", 0.0, 1e6, f(litres_per_minute(x))).
#define TW_RANGE(argument, low, high, ...)                                       \
  {                                                                              \
    argument, low, high, [&]([[maybe_unused]] double x) { (void)(__VA_ARGS__); } \
  }
