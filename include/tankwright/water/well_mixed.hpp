// SPDX-License-Identifier: BSL-1.0
/// @file
/// The balance of a well-mixed quantity, on raw numbers: what comes in steadily, what leaves in proportion to what is
/// there. Substances in water, oxygen, the moisture of a room and the heat of a tank all follow it; the functions that
/// take quantities are where the question is: `exchange.hpp`, and the floors above.
#pragma once

#include <cmath>
#include <limits>

namespace tankwright::water::kernel {

/// dy/dt = gain - k y, in any one unit of y and of time.
template <class T>
struct well_mixed {
  T gain;  ///< y per time
  T k;     ///< per time, >= 0; 0: nothing leaves

  /// (1 - exp(-k t))/k, and t where k is zero: what a steady gain of 1 comes to in a time t.
  [[nodiscard]] static T decaying_time(T k, T t) noexcept {
    using std::expm1;
    return k * t < T(1e-18L) ? t : -expm1(-k * t) / k;
  }

  /// y after a time t >= 0.
  [[nodiscard]] T after(T start, T t) const noexcept {
    using std::exp;
    return start * exp(-k * t) + gain * decaying_time(k, t);
  }

  /// Where y settles; k > 0.
  [[nodiscard]] T settled() const noexcept { return gain / k; }

  /// Time from y = start until y = level; infinite where y never gets there.
  [[nodiscard]] T time_between(T start, T level) const noexcept {
    using std::log1p;
    if (level == start) return T(0);
    constexpr T never = std::numeric_limits<T>::infinity();
    const T slope_there = gain - k * level;
    if (!((level > start && slope_there > T(0)) || (level < start && slope_there < T(0)))) return never;
    const T straight = (level - start) / slope_there;  // the time, if it were as steep all the way
    const T x = k * straight;
    return x < T(1e-12L) ? straight : log1p(x) / k;
  }

  /// y just before and just after what happens every `interval`: the part `changed` is replaced by new water, and
  /// `added` comes in at once. The part and k must not both be zero.
  struct swing {
    T before;
    T after;
  };
  [[nodiscard]] swing periodic(T interval, T changed, T added) const noexcept {
    using std::exp;
    using std::expm1;
    // Share that is gone after one round, without the difference of two numbers close to one.
    const T gone = changed * exp(-k * interval) - expm1(-k * interval);
    const T before = (added * exp(-k * interval) + gain * decaying_time(k, interval)) / gone;
    return {before, (T(1) - changed) * before + added};
  }
};

}  // namespace tankwright::water::kernel
