// SPDX-License-Identifier: BSL-1.0
/// @file
/// Numbers to digits and back, never by the locale. As the standard library does it where it can: libc++ 13 cannot
/// write a double, and no libc++ up to 19 can read one; there `charconv_fallback.hpp` does.
#pragma once

#include <charconv>
#include <cstddef>
#include <string_view>
#include <version>

#if !defined(__cpp_lib_to_chars) || defined(TANKWRIGHT_NO_FLOATING_CHARCONV)
#include <tankwright/core/detail/charconv_fallback.hpp>
#define TANKWRIGHT_CHARCONV_FALLBACK 1
#endif

namespace tankwright::core {

/// How digits are written.
enum class digit_style {
  general,     ///< so many significant digits, with an exponent where the number is very large or small
  scientific,  ///< d.ddde+xx, so many digits behind the point
  fixed,       ///< so many digits behind the point, no exponent
};

/// Room for any double in any style with at most 17 digits behind the point.
inline constexpr std::size_t digits_room = 340;
struct digits_buffer {
  char text[digits_room];
};

/// A double in digits, correctly rounded; at most 17 digits are asked for.
[[nodiscard]] inline std::string_view digits_of(digits_buffer& into, double value, digit_style style, int precision) {
#if defined(TANKWRIGHT_CHARCONV_FALLBACK)
  return detail::digits_by_printf(into.text, digits_room, value,
                                  style == digit_style::general ? 'g'
                                  : style == digit_style::fixed ? 'f'
                                                                : 'e',
                                  precision);
#else
  const auto format = style == digit_style::general ? std::chars_format::general
                      : style == digit_style::fixed ? std::chars_format::fixed
                                                    : std::chars_format::scientific;
  const auto end = std::to_chars(into.text, into.text + digits_room, value, format, precision).ptr;
  return {into.text, static_cast<std::size_t>(end - into.text)};
#endif
}

/// The fewest digits that give the double back.
[[nodiscard]] inline std::string_view shortest_digits_of(digits_buffer& into, double value) {
#if defined(TANKWRIGHT_CHARCONV_FALLBACK)
  return detail::shortest_by_printf(into.text, digits_room, value);
#else
  const auto end = std::to_chars(into.text, into.text + digits_room, value).ptr;
  return {into.text, static_cast<std::size_t>(end - into.text)};
#endif
}

/// The double that digits spell, correctly rounded: "2.5", ".5", "1e-3", with a minus, without a plus. False, and
/// nothing
/// given, where they spell none or one that a double cannot hold (larger than all, smaller than all but not zero).
[[nodiscard]] inline bool number_from_digits(std::string_view digits, double& value) {
#if defined(TANKWRIGHT_CHARCONV_FALLBACK)
  return detail::number_by_integers(digits, value);
#else
  double read = 0.0;
  const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), read);
  // Words ("inf", "nan") are no digits.
  if (error != std::errc{} || end != digits.data() + digits.size() || !(read - read == 0.0)) return false;
  value = read;
  return true;
#endif
}

}  // namespace tankwright::core
