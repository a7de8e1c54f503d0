// SPDX-License-Identifier: BSL-1.0
#include "edges.hpp"

#include <cmath>
#include <limits>
#include <span>

#include "refusals.hpp"

namespace tankwright::testing {

namespace {

constexpr double inf = std::numeric_limits<double>::infinity();
constexpr double no_numbers[] = {std::numeric_limits<double>::quiet_NaN(), inf, -inf};
constexpr double bad_numbers[] = {std::numeric_limits<double>::quiet_NaN(), inf, -inf, 1e100, -1e100};
constexpr range_policy policies[] = {range_policy::published, range_policy::extrapolate};

/// All of these numbers are refused by this library, in whose name ever: they may stand in several arguments.
void are_refused(std::string_view argument, std::span<const double> numbers, call_of_number call) {
  for (const double x : numbers) {
    for (const range_policy policy : policies) {
      CAPTURE(argument);
      CAPTURE(x);
      check_refused([&] { call(x, policy); },
                    [](const error& e) { CHECK_MESSAGE(e.details().function.starts_with("tankwright::"), e.what()); });
    }
  }
}

/// `visit(x)` at each end of a range: just inside, just outside, and zero below a range that starts above it.
void walk_ends(std::string_view argument, const interval& range, ends_of whose, any_call<double> visit) {
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
void check_ends(const limits& limit, ends_of whose, call_of_number call) {
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

}  // namespace

outcome outcome_of(const limits& limit, double x, range_policy policy, call_of_number call) {
  const auto names_the_argument = [&](const error& e) {
    if (std::isnan(x) && e.details().function == "tankwright::estimate") return;  // refused before the formula has it
    CHECK_MESSAGE(e.details().argument == limit.argument, e.what());
    CHECK_MESSAGE(e.details().function.starts_with("tankwright::"), e.what());
    CHECK_MESSAGE((e.details().value == x || std::isnan(x) ||
                   std::fabs(e.details().value - x) < 1e-9 * std::fmax(1.0, std::fabs(x))),
                  e.what());
  };
  try {
    call(x, policy);
    return outcome::accepted;
  } catch (const invalid_input& e) {
    names_the_argument(e);
    return outcome::invalid;
  } catch (const out_of_range& e) {
    names_the_argument(e);
    return outcome::outside;
  }
}

void check_edges(const limits& limit, call_of_number call, ends_of whose) {
  for (const double x : no_numbers) {
    for (const range_policy policy : policies) {
      CAPTURE(limit.argument);
      CAPTURE(x);
      CHECK(static_cast<int>(outcome_of(limit, x, policy, call)) == static_cast<int>(outcome::invalid));
    }
  }
  check_ends(limit, whose, call);
}

void check_edges(std::string_view argument, std::string_view unit, const interval& possible, any_call<double> call) {
  const auto by_policy = [&](double x, range_policy) { call(x); };
  are_refused(argument, no_numbers, by_policy);
  check_ends(limits{argument, unit, possible}, ends_of::test, by_policy);
}

void refuses_bad_numbers(std::string_view what, call_of_number call) { are_refused(what, bad_numbers, call); }

void check_ranges(const std::string& function, const std::vector<range_of>& ranges) {
  for (const range_of& range : ranges) {
    CAPTURE(function);
    CAPTURE(range.argument);
    are_refused(range.argument, no_numbers, [&](double x, range_policy) { range.call(x); });
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

void check_refused(any_call<> call, any_call<const error&> look) {
  bool refused = false;
  try {
    call();
  } catch (const error& e) {
    refused = true;
    look(e);
  }
  CHECK(refused);
}

void check_refusals(const std::vector<refusal>& refusals) {
  for (const refusal& wanted : refusals) {
    CAPTURE(wanted.function);
    CAPTURE(wanted.argument);
    check_refused(wanted.call, [&](const error& e) {
      CHECK_MESSAGE(e.details().function == "tankwright::" + wanted.function, e.what());
      CHECK_MESSAGE(e.details().argument == wanted.argument, e.what());
    });
  }
}

}  // namespace tankwright::testing
