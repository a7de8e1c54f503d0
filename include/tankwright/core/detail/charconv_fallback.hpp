// SPDX-License-Identifier: BSL-1.0
/// @file
/// Digits to a double and back, for standard libraries that cannot. Reading is exact arithmetic on long integers;
/// writing is the C library's, with the decimal mark of the locale put right.
#pragma once

#include <algorithm>
#include <cfloat>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <limits>
#include <string_view>

namespace tankwright::core::detail {

/// A long natural number, lowest word first. Long enough for 801 digits, and for 10 to the 1131.
class long_natural {
 public:
  void multiply_add(std::uint32_t factor, std::uint32_t summand) noexcept {
    std::uint64_t carry = summand;
    for (int i = 0; i < size_; ++i) {
      carry += std::uint64_t{words_[i]} * factor;
      words_[i] = static_cast<std::uint32_t>(carry);
      carry >>= 32;
    }
    if (carry != 0) words_[size_++] = static_cast<std::uint32_t>(carry);
  }
  void shift_left(int bits) noexcept {
    const int whole = bits / 32, part = bits % 32;
    if (size_ == 0) return;
    if (whole > 0) {
      for (int i = size_ - 1; i >= 0; --i) words_[i + whole] = words_[i];
      std::fill_n(words_, whole, 0u);
      size_ += whole;
    }
    if (part > 0) multiply_add(std::uint32_t{1} << part, 0);
  }
  [[nodiscard]] int bits() const noexcept {
    int count = 32 * (size_ - 1);
    for (std::uint32_t top = size_ > 0 ? words_[size_ - 1] : 0; top != 0; top >>= 1) ++count;
    return size_ > 0 ? count : 0;
  }
  [[nodiscard]] bool is_zero() const noexcept { return size_ == 0; }
  [[nodiscard]] std::uint64_t low_bits() const noexcept {
    return (size_ > 0 ? words_[0] : 0) | (size_ > 1 ? std::uint64_t{words_[1]} << 32 : 0);
  }
  [[nodiscard]] bool at_least(const long_natural& other) const noexcept {
    if (size_ != other.size_) return size_ > other.size_;
    for (int i = size_ - 1; i >= 0; --i) {
      if (words_[i] != other.words_[i]) return words_[i] > other.words_[i];
    }
    return true;
  }
  /// Takes away what is not larger.
  void subtract(const long_natural& other) noexcept {
    std::int64_t borrow = 0;
    for (int i = 0; i < size_; ++i) {
      borrow += std::int64_t{words_[i]} - (i < other.size_ ? std::int64_t{other.words_[i]} : 0);
      words_[i] = static_cast<std::uint32_t>(borrow);
      borrow >>= 32;
    }
    while (size_ > 0 && words_[size_ - 1] == 0) --size_;
  }

 private:
  std::uint32_t words_[128] = {};
  int size_ = 0;
};

/// The double nearest to above / below, ties to even; false where it is too large, or not zero and too small.
[[nodiscard]] inline bool nearest_double(long_natural above, long_natural below, double& value) noexcept {
  // Scale so that 2^exponent <= above / below < 2^(exponent + 1).
  int exponent = above.bits() - below.bits();
  if (exponent > 0) below.shift_left(exponent);
  if (exponent < 0) above.shift_left(-exponent);
  if (!above.at_least(below)) {
    --exponent;
    above.shift_left(1);
  }
  const int wanted = std::min(53, exponent + 1075);  // bits of the mantissa; fewer for subnormal numbers
  if (exponent > 1023 || wanted < 0) return false;
  std::uint64_t mantissa = 0;
  for (int i = 0; i < wanted; ++i) {
    const bool one = above.at_least(below);
    if (one) above.subtract(below);
    mantissa = 2 * mantissa + (one ? 1 : 0);
    above.shift_left(1);
  }
  // What is left over is (above / below) / 2 of the last place.
  if (above.at_least(below)) {
    above.subtract(below);
    if (!above.is_zero() || (mantissa & 1) != 0) ++mantissa;
  }
  value = std::ldexp(static_cast<double>(mantissa), exponent + 1 - wanted);
  return value > 0.0 && value - value == 0.0;
}

/// `number_from_digits` by exact arithmetic.
[[nodiscard]] inline bool number_by_integers(std::string_view digits, double& value) noexcept {
  std::size_t i = 0;
  const auto is_digit = [&] { return i < digits.size() && digits[i] >= '0' && digits[i] <= '9'; };
  const bool negative = !digits.empty() && digits[0] == '-';
  if (negative) ++i;
  long_natural above, below;
  constexpr int most_digits =
      800;  // between two doubles lies a number of at most 767; of more, only whether they are 0
  int counted = 0, exponent = 0;
  bool any = false, point = false, more = false;
  for (; is_digit() || (i < digits.size() && digits[i] == '.' && !point); ++i) {
    if (digits[i] == '.') {
      point = true;
      continue;
    }
    any = true;
    if (point) --exponent;
    if (counted == 0 && digits[i] == '0') continue;
    if (counted == most_digits) {
      more = more || digits[i] != '0';
      ++exponent;
      continue;
    }
    ++counted;
    above.multiply_add(10, static_cast<std::uint32_t>(digits[i] - '0'));
  }
  if (!any) return false;
  if (i < digits.size() && (digits[i] == 'e' || digits[i] == 'E')) {
    ++i;
    const bool below_one = i < digits.size() && digits[i] == '-';
    if (i < digits.size() && (digits[i] == '-' || digits[i] == '+')) ++i;
    if (!is_digit()) return false;
    int power = 0;
    for (; is_digit(); ++i) power = std::min(10 * power + (digits[i] - '0'), 100'000);
    exponent += below_one ? -power : power;
  }
  if (i != digits.size()) return false;
  if (above.is_zero()) {
    value = negative ? -0.0 : 0.0;
    return true;
  }
  if (more) {
    above.multiply_add(10, 1);
    ++counted, --exponent;
  }
  if (counted <= 15 && exponent >= -22 && exponent <= 22 && FLT_EVAL_METHOD == 0) {
    // Both numbers are doubles without rounding, so one multiplication or division rounds once.
    double power = 1.0;
    for (int p = 0; p < (exponent < 0 ? -exponent : exponent); ++p) power *= 10.0;
    const auto natural = static_cast<double>(above.low_bits());
    const double magnitude = exponent < 0 ? natural / power : natural * power;
    value = negative ? -magnitude : magnitude;
    return true;
  }
  if (counted + exponent > 310 || counted + exponent < -330) return false;  // past the ends of double by far
  below.multiply_add(0, 1);
  for (int p = 0; p < exponent; ++p) above.multiply_add(10, 0);
  for (int p = 0; p < -exponent; ++p) below.multiply_add(10, 0);
  double magnitude = 0.0;
  if (!nearest_double(above, below, magnitude)) return false;
  value = negative ? -magnitude : magnitude;
  return true;
}

/// A point for whatever stands between the digits of `text`; its new size.
[[nodiscard]] inline std::size_t with_a_point(char* text, std::size_t size) noexcept {
  char* out = text;
  bool in_mark = false;
  for (std::size_t i = 0; i < size; ++i) {
    const char c = text[i];
    const bool plain = (c >= '0' && c <= '9') || c == '-' || c == '+' || c == 'e';
    if (plain || !in_mark) *out++ = plain ? c : '.';
    in_mark = !plain;
  }
  return static_cast<std::size_t>(out - text);
}

/// What the C library prints, with a point for the decimal mark of the locale.
[[nodiscard]] inline std::string_view digits_by_printf(char* into, std::size_t room, double value, char style,
                                                       int precision) noexcept {
  const char format[] = {'%', '.', '*', style, '\0'};
  const int printed = std::snprintf(into, room, format, precision, value);
  const std::size_t size = printed < 0 ? 0 : std::min(static_cast<std::size_t>(printed), room - 1);
  return {into, value - value != 0.0 ? size : with_a_point(into, size)};  // but for "inf" and "nan"
}

/// The significant digits of what `printf` wrote with 'g', which leaves out zeros at the end.
[[nodiscard]] inline int digits_in(std::string_view written) noexcept {
  int count = 0, zeros = 0;
  for (const char c : written.substr(0, written.find('e'))) {
    if (c < '0' || c > '9' || (count == 0 && c == '0')) continue;
    ++count;
    zeros = c == '0' ? zeros + 1 : 0;
  }
  return std::max(1, count - zeros);
}

/// The fewest significant digits that give the double back.
[[nodiscard]] inline std::string_view shortest_by_printf(char* into, std::size_t room, double value) noexcept {
  // Two decimals of at most 15 digits are never the same double (but for subnormal ones), so that where so few digits
  // are enough, printing 15 shows which they are.
  int precision = 1;
  if (std::fabs(value) >= std::numeric_limits<double>::min()) {
    const std::string_view written = digits_by_printf(into, room, value, 'g', 15);
    double back = 0.0;
    precision = number_by_integers(written, back) && back == value ? digits_in(written) : 16;
  }
  for (;; ++precision) {
    const std::string_view written = digits_by_printf(into, room, value, 'g', precision);
    double back = 0.0;
    if (precision == 17 || value - value != 0.0 || (number_by_integers(written, back) && back == value)) return written;
  }
}

}  // namespace tankwright::core::detail
