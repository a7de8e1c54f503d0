// SPDX-License-Identifier: BSL-1.0
/// @file
/// The ranges of a function as its docstring gives them: both ends are taken, a millionth beyond each is refused, by the
/// function that was called and in the argument's name. `edges.hpp` does the same for limits that have a name.
#pragma once

#include <cmath>
#include <functional>
#include <string>
#include <vector>

#include <doctest/doctest.h>

#include <tankwright/core/errors.hpp>

namespace tankwright::testing {

struct range_of {
  std::string argument;
  double low;
  double high;
  std::function<void(double)> call;
  bool low_open = false;   ///< the low end itself is refused
  bool high_open = false;  ///< the high end itself is refused
};

inline void check_ranges(const std::string& function, const std::vector<range_of>& ranges) {
  const auto refused = [&](const range_of& range, double x) {
    try {
      range.call(x);
    } catch (const error& e) {
      if (e.details().argument != range.argument) return false;  // of something else
      CHECK_MESSAGE(e.details().function == "tankwright::" + function, e.what());
      CHECK_MESSAGE((std::isnan(x) || std::fabs(e.details().value - x) <= 1e-9 * std::fmax(1.0, std::fabs(x))),
                    e.what());
      return true;
    }
    return false;
  };
  for (const range_of& range : ranges) {
    // A number that goes through a unit and back is wrong in its last digit.
    const auto inward = [](double end, double to) { return end + (to > end ? 1e-12 : -1e-12) * std::fabs(end); };
    const auto beyond = [](double end, double way) {
      return end + way * (end == 0.0 || std::fabs(end) > 1e-3 ? 1e-6 * std::fmax(1.0, std::fabs(end))
                                                              : std::fabs(end) * 1e-4);
    };
    CAPTURE(function);
    CAPTURE(range.argument);
    CAPTURE(range.low);
    CAPTURE(range.high);
    CHECK(refused(range, beyond(range.low, -1.0)));
    CHECK(refused(range, range.low_open ? range.low : inward(range.low, range.high)) == range.low_open);
    CHECK(refused(range, range.high_open ? range.high : inward(range.high, range.low)) == range.high_open);
    CHECK(refused(range, beyond(range.high, 1.0)));
    CHECK_THROWS_AS(range.call(std::nan("")), error);
  }
}

}  // namespace tankwright::testing

/// A range of `x`, which stands in the call: TW_RANGE("flow", 0.0, 1e6, f(litres_per_minute(x))).
#define TW_RANGE(argument, low, high, ...)                                       \
  {                                                                              \
    argument, low, high, [&]([[maybe_unused]] double x) { (void)(__VA_ARGS__); } \
  }
