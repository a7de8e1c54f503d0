// SPDX-License-Identifier: BSL-1.0
/// @file
/// Walks the edges of a range: what is inside must be accepted, what is outside must throw the right error.
#pragma once

#include <cmath>
#include <limits>

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

/// `call(x, policy)` with x at lo-, lo, hi, hi+, NaN and the infinities, within the published range and extrapolating.
template <class Call>
void check_edges(const limits& limit, Call&& call) {
  const auto expect = [&](double x, range_policy policy, outcome wanted) {
    CAPTURE(limit.argument);
    CAPTURE(x);
    CHECK(static_cast<int>(outcome_of(limit, x, policy, call)) == static_cast<int>(wanted));
  };
  const auto wanted = [&](double x, range_policy policy) {
    if (!limit.possible.contains(x)) return outcome::invalid;
    if (policy == range_policy::published && !limit.published.contains(x)) return outcome::outside;
    return outcome::accepted;
  };
  for (const double x : {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity(),
                         -std::numeric_limits<double>::infinity()}) {
    expect(x, range_policy::published, outcome::invalid);
    expect(x, range_policy::extrapolate, outcome::invalid);
  }
  for (const interval& range : {limit.possible, limit.published}) {
    for (const double end : {range.low, range.high}) {
      if (!(std::fabs(end) < core::vast)) continue;  // tried once, in the test of `positive` and its like
      const double step = std::fmax(std::fabs(end), 1.0) * 1e-6;
      // A number that goes through a unit and back is wrong in its last digit: a large end is tried just inside.
      const double inside = end > 1e3 && range.high_edge == edge::closed ? end * (1.0 - 1e-12) : end;
      for (const double x : {end - step, inside, end + step}) {
        // Past a published end a formula may stop making sense; only the refusal is checked there.
        if (wanted(x, range_policy::published) == outcome::accepted || range.low == limit.published.low) {
          expect(x, range_policy::published, wanted(x, range_policy::published));
        }
        if (wanted(x, range_policy::extrapolate) == outcome::invalid) {
          expect(x, range_policy::extrapolate, outcome::invalid);
        }
      }
    }
  }
}

}  // namespace tankwright::testing
