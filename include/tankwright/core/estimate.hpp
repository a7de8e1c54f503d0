// SPDX-License-Identifier: BSL-1.0
/// @file
/// Results that are not one sharp number: estimates with their band, and the caution that goes with a number that can
/// hurt.
#pragma once

#include <string_view>

namespace tankwright {

/// A value that a formula gives only within a band. `low <= central <= high`.
template <class Q>
struct estimate {
  Q low;
  Q central;
  Q high;
  std::string_view reason;  ///< why the band is as wide as it is
};

/// Apply a rising function to all three values of an estimate: the reason is kept.
///
/// @param in an estimate
/// @param f  any callable on its quantity that rises
/// @return   the estimate of the result, for the same reason
/// @throws   what f throws
/// @accuracy exact
/// @source   image of an interval under a monotone function
template <class Q, class Rising>
[[nodiscard]] constexpr auto map_rising(const estimate<Q>& in, Rising f) -> estimate<decltype(f(in.low))> {
  return {f(in.low), f(in.central), f(in.high), in.reason};
}

/// Apply a falling function to all three values of an estimate: low and high change places.
///
/// @param in an estimate
/// @param f  any callable on its quantity that falls
/// @return   the estimate of the result, for the same reason
/// @throws   what f throws
/// @accuracy exact
/// @source   image of an interval under a monotone function
template <class Q, class Falling>
[[nodiscard]] constexpr auto map_falling(const estimate<Q>& in, Falling f) -> estimate<decltype(f(in.low))> {
  return {f(in.high), f(in.central), f(in.low), in.reason};
}

/// What to know before acting on a number. It is part of the result, so a front end cannot lose it by accident.
struct caution {
  std::string_view text;
};

}  // namespace tankwright
