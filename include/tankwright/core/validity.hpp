// SPDX-License-Identifier: BSL-1.0
/// @file
/// Ranges of validity as data, and the one place where an input is held against them.
///
/// A correlation declares a `limits` constant for each argument next to its coefficients. The function that throws, the
/// tests that walk the edges and the documentation all read that constant.
#pragma once

#include <limits>
#include <string_view>
#include <type_traits>

#include <tankwright/core/citation.hpp>
#include <tankwright/core/errors.hpp>

// With -ffast-math a compiler takes for granted that there is no NaN: a margin that is none would hold.
#if defined(__FINITE_MATH_ONLY__) && __FINITE_MATH_ONLY__ > 0
#error "tankwright checks for NaN and infinity: compile without -ffast-math (or add -fno-finite-math-only)"
#endif

namespace tankwright {

/// Whether an end of a range belongs to it.
enum class edge : bool { closed, open };

/// An interval of real numbers. `contains` is written so that NaN is in no interval.
struct interval {
  double low = -std::numeric_limits<double>::infinity();
  double high = std::numeric_limits<double>::infinity();
  edge low_edge = edge::closed;
  edge high_edge = edge::closed;

  [[nodiscard]] constexpr bool contains(double x) const noexcept {
    return (low_edge == edge::open ? x > low : x >= low) && (high_edge == edge::open ? x < high : x <= high);
  }
};

namespace core {
inline constexpr double largest = std::numeric_limits<double>::max();
}

namespace core {
// Nothing that these calculations are about is further than this from one of its unit: the stiffness of a panel is
// 1e11 Pa, the roughness of a pipe 1e-6 m. Powers and products of numbers within them do not overflow.
inline constexpr double vast = 1e15;
inline constexpr double tiny = 1e-30;
/// Of numbers that stand for no thing: a result that somebody else's function gives, a normal deviate.
inline constexpr interval any_double{-largest, largest};
}  // namespace core

// Intervals of what can exist, whatever it is. Where a thing is known, its `limits` are narrower.
inline constexpr interval any_finite{-core::vast, core::vast};
inline constexpr interval not_negative{0.0, core::vast};
inline constexpr interval positive{core::tiny, core::vast};
inline constexpr interval zero_to_one{0.0, 1.0};
inline constexpr interval above_zero_to_one{core::tiny, 1.0};
inline constexpr interval zero_to_below_one{0.0, 1.0, edge::closed, edge::open};
inline constexpr interval above_absolute_zero_celsius{-273.15, 1e4, edge::open};

namespace core {
inline constexpr double nanokelvin = 1e-9;
}
/// A range of Celsius temperatures. Temperatures are held in kelvin, so 80 degC may come back as 80.00000000000006: the
/// ends are a nanokelvin wider than written.
///
/// @param low  its lower end [degC]
/// @param high its upper end [degC]
/// @return     the closed interval, a nanokelvin wider at both ends
/// @accuracy   1e-9 degC
/// @source     none: a convention of this library
[[nodiscard]] constexpr interval celsius_range(double low, double high) noexcept {
  return {low - core::nanokelvin, high + core::nanokelvin};
}

/// The validity of one argument of one correlation.
struct limits {
  std::string_view argument;  ///< as the caller knows it
  std::string_view unit;      ///< of the four numbers; empty for a pure number
  interval possible;          ///< outside it: `invalid_input`
  interval published{};       ///< outside it: `out_of_range`, unless the caller says `extrapolate`
  std::string_view source{};  ///< whose published range it is
};

/// Whether a call stays within the published ranges (the default of every function) or says that it goes past them.
enum class range_policy : bool { published, extrapolate };
/// `density(s, t, extrapolate)`: this one call may go past the published range. Impossible input still throws.
inline constexpr range_policy extrapolate = range_policy::extrapolate;

namespace core {

/// The interval in words: "0 to 42 degC", "more than 0", "at least 0 and below 1", "a finite number". Its vast and tiny
/// ends are named only to those who go past them: "at most 1e+15 m".
[[nodiscard]] inline std::string interval_text(const interval& range, std::string_view unit, double value = 0.0) {
  // Ranges of temperatures end a nanokelvin further out (`celsius_range`); an end of 1e-9 of anything else is one.
  const auto end_text = [&](double end) {
    return number_text(unit == "degC" && (end == nanokelvin || end == -nanokelvin) ? 0.0 : end);
  };
  const bool has_low = range.low > -vast;
  const bool has_high = range.high < vast;
  if (range.low == tiny && value > 0.0 && value < tiny) return "at least " + number_with_unit(tiny, unit);
  if (!has_high && value > vast && value <= largest) return "at most " + number_with_unit(vast, unit);
  if (!has_low && value < -vast && value >= -largest) return "at least " + number_with_unit(-vast, unit);
  if (!has_low && !has_high) return "a finite number";
  if (range.low == tiny) return interval_text({0.0, range.high, edge::open, range.high_edge}, unit, 0.0);
  std::string text;
  if (has_low && has_high && range.low_edge == edge::closed && range.high_edge == edge::closed) {
    text = end_text(range.low) + " to " + end_text(range.high);
  } else {
    if (has_low) text += (range.low_edge == edge::open ? "more than " : "at least ") + end_text(range.low);
    if (has_low && has_high) text += " and ";
    if (has_high) text += (range.high_edge == edge::open ? "below " : "at most ") + end_text(range.high);
  }
  if (!unit.empty()) text.append(" ").append(unit);
  return text;
}

template <class Error>
[[noreturn, gnu::cold, gnu::noinline]] inline void refuse(std::string_view function, const limits& limit,
                                                          double value) {
  constexpr bool impossible = std::is_same_v<Error, invalid_input>;
  const interval& range = impossible ? limit.possible : limit.published;
  std::string line{function};
  line.append(": ").append(limit.argument).append(" = ").append(number_with_unit(value, limit.unit));
  line += impossible ? " is not possible; expected " : " is outside the published range ";
  line += interval_text(range, limit.unit, value);
  if (!impossible) {
    if (!limit.source.empty()) line.append(" (").append(limit.source).append(")");
    line += "; pass tankwright::extrapolate to go past it";
  }
  throw Error{line,
              {std::string{function}, std::string{limit.argument}, value, range.low, range.high,
               std::string{limit.unit}, std::string{impossible ? std::string_view{} : limit.source}}};
}

/// Refuse what cannot exist; refuse what the source does not cover unless `policy` says extrapolate.
constexpr void check(std::string_view function, const limits& limit, double value,
                     range_policy policy = range_policy::published) {
  if (!limit.possible.contains(value)) [[unlikely]]
    refuse<invalid_input>(function, limit, value);
  if (policy == range_policy::published && !limit.published.contains(value)) [[unlikely]] {
    refuse<out_of_range>(function, limit, value);
  }
}

}  // namespace core
}  // namespace tankwright
