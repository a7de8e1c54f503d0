// SPDX-License-Identifier: BSL-1.0
/// @file
/// Included before everything else in the modules. toml++ reads a number by std::from_chars where that exists, otherwise
/// through a stream, which drags 60 kB of locales into the module. The libc++ of the modules has none for double: here it is.
#pragma once

#if defined(__cplusplus)
#include <tankwright/core/charconv.hpp>

#if defined(TANKWRIGHT_CHARCONV_FALLBACK)
#include <charconv>
#include <system_error>

namespace std {

/// What toml++ hands over is digits from end to end.
inline from_chars_result from_chars(const char* first, const char* last, double& value) {
  const bool read = tankwright::core::number_from_digits({first, static_cast<size_t>(last - first)}, value);
  return {read ? last : first, read ? errc{} : errc::result_out_of_range};
}
/// Named by what toml++ prints with, which nothing here calls.
to_chars_result to_chars(char* first, char* last, double value);
to_chars_result to_chars(char* first, char* last, double value, chars_format format);
to_chars_result to_chars(char* first, char* last, double value, chars_format format, int precision);

}  // namespace std
#endif
#endif
