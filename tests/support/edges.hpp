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
[[nodiscard]] outcome outcome_of(const limits& limit, double x, range_policy policy, Call&& call) {
  const auto names_the_argument = [&](const error& e) {
    if (std::isnan(x) && e.details().function == "tankwright::estimate") return;  // refused before the formula has it
    CHECK_MESSAGE(e.details().argument == limit.argument, e.what());
    CHECK_MESSAGE(e.details().function.starts_with("tankwright::"), e.what());
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

inline constexpr double no_numbers[] = {std::numeric_limits<double>::quiet_NaN(),
                                        std::numeric_limits<double>::infinity(),
                                        -std::numeric_limits<double>::infinity()};

/// Whose numbers the ends are: the header's, whose vast ends and extrapolated ends a formula need not reach, or the test's,
/// which says that all of them are taken.
enum class ends_of { header, test };

/// Whether a number that is none is refused, in whose name ever: it may stand in several arguments.
template <class Call>
[[nodiscard]] bool refuses_what_is_no_number(Call&& call) {
  for (const double x : no_numbers) {
    for (const range_policy policy : {range_policy::published, range_policy::extrapolate}) {
      try {
        (void)call(x, policy);
        return false;
      } catch (const error&) {
      }
    }
  }
  return true;
}

/// `visit(x)` at each end of a range: just inside, just outside, and zero below a range that starts above it.
template <class Visit>
void walk_ends(std::string_view argument, const interval& range, ends_of whose, Visit&& visit) {
  // The library forgives a temperature what its conversion from kelvins costs.
  const bool forgiven = argument.find("temperature") != std::string_view::npos;
  for (const bool high : {false, true}) {
    const double end = high ? range.high : range.low;
    if (!(std::fabs(end) <= core::vast)) continue;
    const double size = std::fabs(end), step = forgiven     ? 1e-6 * std::fmax(1.0, size)
                                               : end == 0.0 ? 1e-12
                                                            : 1e-9 * size;
    const double outward = high ? step : -step;
    const bool open = (high ? range.high_edge : range.low_edge) == edge::open;
    // A unit's conversion there and back may cost the last digits of a large or small end.
    const bool rounded = size > 1e3 || (size > 0.0 && size < 1e-6);
    if (size < core::vast || whose == ends_of::test) visit(open ? end - outward : rounded ? end - 1e-3 * outward : end);
    visit(open ? end : end + outward);
    if (!high && end > 0.0) visit(0.0);
  }
}

/// The ends of the possible and of the published range, within the published one and extrapolating.
template <class Call>
void check_ends(const limits& limit, ends_of whose, Call&& call) {
  const auto wanted = [&](double x, range_policy policy) {
    if (!limit.possible.contains(x)) return outcome::invalid;
    if (policy == range_policy::published && !limit.published.contains(x)) return outcome::outside;
    return outcome::accepted;
  };
  const auto expect = [&](double x, range_policy policy) {
    CAPTURE(limit.argument);
    CAPTURE(x);
    CHECK(static_cast<int>(outcome_of(limit, x, policy, call)) == static_cast<int>(wanted(x, policy)));
  };
  walk_ends(limit.argument, limit.published, whose, [&](double x) { expect(x, range_policy::published); });
  walk_ends(limit.argument, limit.possible, whose, [&](double x) {
    if (limit.published.contains(x) || limit.possible.low == limit.published.low) expect(x, range_policy::published);
    if (!limit.possible.contains(x) || whose == ends_of::test) expect(x, range_policy::extrapolate);
  });
}

/// All of it for an argument with limits that have a name: what is no number is refused in the argument's name.
template <class Call>
void check_edges(const limits& limit, Call&& call, ends_of whose = ends_of::header) {
  for (const double x : no_numbers) {
    for (const range_policy policy : {range_policy::published, range_policy::extrapolate}) {
      CAPTURE(limit.argument);
      CAPTURE(x);
      CHECK(static_cast<int>(outcome_of(limit, x, policy, call)) == static_cast<int>(outcome::invalid));
    }
  }
  check_ends(limit, whose, call);
}

/// The same for an argument that no source limits, its ends written as numbers in the test: `call(x)`.
template <class Call>
void check_edges(std::string_view argument, std::string_view unit, const interval& possible, Call&& call) {
  const auto by_policy = [&](double x, range_policy) { (void)call(x); };
  CAPTURE(argument);
  CHECK(refuses_what_is_no_number(by_policy));
  check_ends(limits{argument, unit, possible}, ends_of::test, by_policy);
}

struct range_of {
  std::string argument;
  double low;
  double high;
  std::function<void(double)> call;
  bool low_open = false;   ///< the low end itself is refused
  bool high_open = false;  ///< the high end itself is refused
};

/// The ranges of one function, each refused by it and in the argument's name, as impossible or as outside what is published.
inline void check_ranges(const std::string& function, const std::vector<range_of>& ranges) {
  for (const range_of& range : ranges) {
    CAPTURE(function);
    CAPTURE(range.argument);
    CHECK(refuses_what_is_no_number([&](double x, range_policy) { range.call(x); }));
    const auto refused = [&](double x) {
      try {
        range.call(x);
      } catch (const error& e) {
        if (e.details().argument != range.argument) return false;  // of something else
        CHECK_MESSAGE(e.details().function == "tankwright::" + function, e.what());
        CHECK_MESSAGE(std::fabs(e.details().value - x) <= 1e-9 * std::fmax(1.0, std::fabs(x)), e.what());
        return true;
      }
      return false;
    };
    const interval taken{range.low, range.high, range.low_open ? edge::open : edge::closed,
                         range.high_open ? edge::open : edge::closed};
    walk_ends(range.argument, taken, ends_of::test, [&](double x) {
      CAPTURE(x);
      CHECK(refused(x) != taken.contains(x));
    });
  }
}

}  // namespace tankwright::testing

/// A range of `x`, which stands in the call: TW_RANGE("flow", 0.0, 1e6, f(litres_per_minute(x))).
#define TW_RANGE(argument, low, high, ...)                                       \
  {                                                                              \
    argument, low, high, [&]([[maybe_unused]] double x) { (void)(__VA_ARGS__); } \
  }
