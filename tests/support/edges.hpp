// SPDX-License-Identifier: BSL-1.0
/// @file
/// Walks the ends of a range: what is inside is taken, what is outside is refused by the right error, in the argument's
/// name, with the number that was given and, where the test says so, by the function that was called.
///
/// `check_edges` takes the header's own limits, or limits written as numbers in the test; `check_ranges` takes the ranges
/// of one function as its docstring gives them. All walk in the same steps: a part in a thousand million.
#pragma once

#include <cmath>
#include <functional>
#include <limits>
#include <string>
#include <string_view>
#include <vector>

#include "check.hpp"

namespace tankwright::testing {

enum class outcome { accepted, invalid, outside };

/// What `call` does, with the error held against the limits that should have thrown it.
template <class Call>
[[nodiscard]] outcome outcome_of(const limits& limit, double x, range_policy policy, Call&& call,
                                 std::string_view function = {}) {
  const auto names_the_argument = [&](const error& e) {
    if (std::isnan(x) && e.details().function == "tankwright::estimate") return;  // refused before the formula has it
    CHECK_MESSAGE(e.details().argument == limit.argument, e.what());
    CHECK_MESSAGE(e.details().function.starts_with("tankwright::"), e.what());
    if (!function.empty()) CHECK_MESSAGE(e.details().function.substr(12) == function, e.what());
    CHECK_MESSAGE((e.details().value == x || std::isnan(x) ||
                   std::fabs(e.details().value - x) < 1e-9 * std::fmax(1.0, std::fabs(x))),
                  e.what());
  };
  try {
    (void)call(x, policy);
    return outcome::accepted;
  } catch (const invalid_input& e) {
    names_the_argument(e);
    return outcome::invalid;
  } catch (const out_of_range& e) {
    names_the_argument(e);
    return outcome::outside;
  }
}

/// `call(x, policy)` with what is no number, and at each end of the possible and of the published range: just inside, just
/// outside, and zero below a range that starts above it; within the published range and extrapolating.
template <class Call>
void check_edges(const limits& limit, Call&& call, std::string_view function = {}) {
  const auto wanted = [&](double x, range_policy policy) {
    if (!limit.possible.contains(x)) return outcome::invalid;
    if (policy == range_policy::published && !limit.published.contains(x)) return outcome::outside;
    return outcome::accepted;
  };
  const auto expect = [&](double x, range_policy policy) {
    CAPTURE(function);
    CAPTURE(limit.argument);
    CAPTURE(x);
    CHECK(static_cast<int>(outcome_of(limit, x, policy, call, function)) == static_cast<int>(wanted(x, policy)));
  };
  for (const double x : {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity(),
                         -std::numeric_limits<double>::infinity()}) {
    expect(x, range_policy::published);
    expect(x, range_policy::extrapolate);
  }
  for (const interval& range : {limit.possible, limit.published}) {
    for (const bool high : {false, true}) {
      const double end = high ? range.high : range.low;
      if (!(std::fabs(end) <= core::vast)) continue;
      const double outward = (high ? 1.0 : -1.0) * (end == 0.0 ? 1e-12 : 1e-9 * std::fabs(end));
      const bool open = (high ? range.high_edge : range.low_edge) == edge::open;
      // A unit's conversion there and back may cost the last digit: a large end is tried just inside.
      const double inside = open || std::fabs(end) > 1e3 ? end - outward : end;
      std::vector<double> tried{inside, open ? end : end + outward};
      if (!high && end > 0.0) tried.push_back(0.0);
      for (const double x : tried) {
        expect(x, range_policy::published);
        // Past a published end a formula may stop making sense; only what can never be is refused there too.
        if (wanted(x, range_policy::extrapolate) == outcome::invalid) expect(x, range_policy::extrapolate);
      }
    }
  }
}

/// The same for an argument that no source limits: `call(x)`.
template <class Call>
void check_edges(std::string_view argument, std::string_view unit, const interval& possible, Call&& call) {
  check_edges(limits{argument, unit, possible}, [&](double x, range_policy) { return call(x); });
}

struct range_of {
  std::string argument;
  double low;
  double high;
  std::function<void(double)> call;
  bool low_open = false;   ///< the low end itself is refused
  bool high_open = false;  ///< the high end itself is refused
};

/// The ranges of one function, each refused by it.
inline void check_ranges(std::string_view function, const std::vector<range_of>& ranges) {
  for (const range_of& range : ranges) {
    const interval possible{range.low, range.high, range.low_open ? edge::open : edge::closed,
                            range.high_open ? edge::open : edge::closed};
    check_edges(
        limits{range.argument, "", possible}, [&](double x, range_policy) { range.call(x); }, function);
  }
}

}  // namespace tankwright::testing

/// A range of `x`, which stands in the call: TW_RANGE("flow", 0.0, 1e6, f(litres_per_minute(x))).
#define TW_RANGE(argument, low, high, ...)                                       \
  {                                                                              \
    argument, low, high, [&]([[maybe_unused]] double x) { (void)(__VA_ARGS__); } \
  }
