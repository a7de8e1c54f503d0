// SPDX-License-Identifier: BSL-1.0
/// @file
/// The ends of a range to the last digits, written as numbers in the test: a part in a thousand million inside is taken, as
/// much outside is not. `check_edges` steps further and serves where the range is the header's own.
#pragma once

#include "edges.hpp"

namespace tankwright::testing {

/// `call(x, policy)` at both ends of the possible range, and of the published one where there is one. Below a range that
/// starts above zero, zero itself is refused too.
template <class Call>
void check_ends(const limits& limit, Call&& call) {
  const auto wanted = [&](double x, range_policy policy, outcome expected) {
    CAPTURE(limit.argument);
    CAPTURE(x);
    CHECK(static_cast<int>(outcome_of(limit, x, policy, call)) == static_cast<int>(expected));
  };
  const auto walk = [&](const interval& range, outcome beyond, range_policy policy) {
    for (const bool high : {false, true}) {
      const double end = high ? range.high : range.low;
      if (!(std::fabs(end) <= core::vast)) continue;
      const double step = end == 0.0 ? 1e-12 : 1e-9 * std::fabs(end);
      const double sign = high ? 1.0 : -1.0;
      const bool open = (high ? range.high_edge : range.low_edge) == edge::open;
      // A unit's conversion there and back may cost the last digit of an end.
      const double inside = open || std::fabs(end) > 1e3 ? end - sign * step : end;
      wanted(inside, policy, outcome::accepted);
      wanted(open ? end : end + sign * step, policy, beyond);
      if (!high && end > 0.0) wanted(0.0, policy, limit.possible.contains(0.0) ? beyond : outcome::invalid);
    }
  };
  const bool has_published =
      std::fabs(limit.published.low) <= core::vast || std::fabs(limit.published.high) <= core::vast;
  walk(limit.possible, outcome::invalid, has_published ? range_policy::extrapolate : range_policy::published);
  if (has_published) walk(limit.published, outcome::outside, range_policy::published);
}

/// The same for an argument of no published range.
template <class Call>
void check_ends(std::string_view argument, std::string_view unit, const interval& possible, Call&& call) {
  check_ends(limits{argument, unit, possible}, [&](double x, range_policy) { return call(x); });
}

}  // namespace tankwright::testing
