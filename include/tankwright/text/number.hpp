// SPDX-License-Identifier: BSL-1.0
/// @file
/// Numbers in text, as people write them ("2.40", "2 150", "10 1/2", "10½", "1e-3") and as people like to read them.
#pragma once

#include <charconv>
#include <cmath>
#include <string>

#include <tankwright/text/detail/scan.hpp>

namespace tankwright::text::detail {

// ---- reading --------------------------------------------------------------------------------------------------------

/// ½ and its like as a number; 0 for any other character.
[[nodiscard]] constexpr double vulgar_fraction(character c) noexcept {
  switch (c) {
    case 0xBC:
      return 0.25;
    case 0xBD:
      return 0.5;
    case 0xBE:
      return 0.75;
    case 0x2153:
      return 1.0 / 3.0;
    case 0x2154:
      return 2.0 / 3.0;
    case 0x215B:
      return 0.125;
    case 0x215C:
      return 0.375;
    case 0x215D:
      return 0.625;
    case 0x215E:
      return 0.875;
    default:
      return 0.0;
  }
}

/// A number as it was written.
struct written_number {
  double value;
  bool whole;  ///< digits only: what may stand before a smaller unit, as in "7 ft 10 in"
};

/// Append the digits at the place to `digits`; how many there were.
inline std::size_t take_digits(scanner& in, std::string& digits) {
  std::size_t count = 0;
  for (; is_digit(in.peek()); in.advance(), ++count) digits += static_cast<char>(in.peek());
  return count;
}

/// The number that `digits` spell. Correctly rounded; refuses what a double cannot hold.
[[nodiscard]] inline double number_from_digits(const scanner& in, std::size_t place, const std::string& digits) {
  double value = 0.0;
  if (!core::number_from_digits(digits, value)) {
    in.fail(place, "the number is too large or too small to be held");
  }
  return value;
}

/// "n/d" or ½ at the place, if there is one.
[[nodiscard]] inline double read_fraction(scanner& in) {
  if (const double part = vulgar_fraction(in.peek()); part > 0.0) {
    in.advance();
    return part;
  }
  const std::size_t start = in.place();
  std::string above, below;
  take_digits(in, above);
  if (above.empty() || in.peek() != '/' || !is_digit(in.peek(1))) {
    in.go_to(start);
    return 0.0;
  }
  in.advance();
  take_digits(in, below);
  const double divisor = number_from_digits(in, start, below);
  if (divisor == 0.0) in.fail(start, "a fraction over zero");
  return number_from_digits(in, start, above) / divisor;
}

/// A comma between digits is a decimal point to some and a thousands mark to others: refuse it, show how to say each.
[[noreturn]] inline void refuse_comma(scanner& in, const std::string& before) {
  const std::size_t place = in.place();
  in.advance();
  std::string after;
  take_digits(in, after);
  std::string reason = "a comma can be a decimal point or a thousands mark; write " + before + "." + after;
  if (after.size() == 3 && before.size() <= 3) reason += " or " + before + after;
  in.fail(place, reason);
}

/// Read an unsigned number. Thousands may be grouped with spaces, three digits each; the decimal mark is a point.
[[nodiscard]] inline written_number read_number(scanner& in) {
  const std::size_t start = in.place();
  if (vulgar_fraction(in.peek()) > 0.0) return {read_fraction(in), false};
  std::string digits;
  const std::size_t first_group = take_digits(in, digits);
  if (first_group == 0 && !(in.peek() == '.' && is_digit(in.peek(1)))) {
    in.fail(start, in.found() + ", where a number should start");
  }
  if (first_group > 0) {
    if (in.peek() == '/' && is_digit(in.peek(1))) {
      in.go_to(start);
      return {read_fraction(in), false};
    }
    const auto three_digits_next = [&] {
      return in.peek() == ' ' && is_digit(in.peek(1)) && is_digit(in.peek(2)) && is_digit(in.peek(3)) &&
             !is_digit(in.peek(4)) && in.peek(4) != '/';
    };
    while (first_group <= 3 && three_digits_next()) {
      in.advance();
      take_digits(in, digits);
    }
    if (in.peek() == ',' && is_digit(in.peek(1))) refuse_comma(in, digits);
    // "10 1/2", "10-1/2", "10½", "10 ½"
    const std::size_t whole_end = in.place();
    if (in.peek() == ' ' || in.peek() == '-') in.advance();
    if (const double part = read_fraction(in); part > 0.0) {
      if (part >= 1.0) in.fail(whole_end, "the fraction after a whole number must be less than 1");
      return {number_from_digits(in, start, digits) + part, false};
    }
    in.go_to(whole_end);
  }
  bool whole = true;
  if (in.accept('.')) {
    whole = false;
    digits += '.';
    take_digits(in, digits);
    if (in.peek() == '.' && is_digit(in.peek(1))) in.fail(in.place(), "a second decimal point");
    if (in.peek() == ',' && is_digit(in.peek(1))) in.fail(in.place(), "a comma inside a number");
  }
  if (in.peek() == 'e' || in.peek() == 'E') {
    const bool sign = in.peek(1) == '+' || in.peek(1) == '-';
    if (is_digit(in.peek(sign ? 2 : 1))) {
      whole = false;
      digits += in.peek(1) == '-' ? "e-" : "e";
      in.advance(sign ? 2 : 1);
      take_digits(in, digits);
    }
  }
  return {number_from_digits(in, start, digits), whole};
}

// ---- writing --------------------------------------------------------------------------------------------------------

/// "nan", "inf" and "-inf", which have no digits; empty for a number.
[[nodiscard]] inline std::string text_without_digits(double value) {
  if (std::isnan(value)) return "nan";
  if (std::isinf(value)) return value > 0.0 ? "inf" : "-inf";
  return {};
}

/// With so many significant digits and no trailing zeros; an exponent only below 0.0001 and from a thousand million on.
[[nodiscard]] inline std::string significant_text(double value, int digits) {
  if (auto text = text_without_digits(value); !text.empty()) return text;
  if (value == 0.0) return "0";
  digits = digits < 1 ? 1 : digits > 17 ? 17 : digits;
  core::digits_buffer buffer;
  const std::string_view all = core::digits_of(buffer, std::fabs(value), core::digit_style::scientific, digits - 1);
  const std::size_t e = all.find('e');
  int exponent = 0;
  std::from_chars(all.data() + e + (all[e + 1] == '+' ? 2 : 1), all.data() + all.size(), exponent);
  std::string mantissa{all.substr(0, 1)};
  if (e > 2) mantissa += all.substr(2, e - 2);
  while (mantissa.size() > 1 && mantissa.back() == '0') mantissa.pop_back();

  std::string result = value < 0.0 ? "-" : "";
  const auto count = static_cast<int>(mantissa.size());
  if (exponent < -4 || exponent >= 9) {
    result += mantissa[0];
    if (count > 1) result.append(".").append(mantissa, 1);
    return result.append("e").append(std::to_string(exponent));
  }
  if (exponent < 0) return result.append("0.").append(static_cast<std::size_t>(-exponent - 1), '0').append(mantissa);
  if (count <= exponent + 1) return result.append(mantissa).append(static_cast<std::size_t>(exponent + 1 - count), '0');
  const auto before_point = static_cast<std::size_t>(exponent + 1);
  return result.append(mantissa, 0, before_point).append(".").append(mantissa, before_point);
}

/// With so many digits after the point, zeros kept, for columns. Fewer than none rounds to tens, hundreds, ...
[[nodiscard]] inline std::string decimals_text(double value, int decimals) {
  if (auto text = text_without_digits(value); !text.empty()) return text;
  if (std::fabs(value) >= 1e15) return significant_text(value, 15);
  if (decimals < 0) {
    const double step = std::pow(10.0, decimals < -15 ? 15 : -decimals);
    value = std::round(value / step) * step;
  }
  decimals = decimals < 0 ? 0 : decimals > 17 ? 17 : decimals;
  core::digits_buffer buffer;
  std::string text{core::digits_of(buffer, value, core::digit_style::fixed, decimals)};
  if (text.front() == '-' && text.find_first_not_of("-0.") == std::string::npos) text.erase(0, 1);
  return text;
}

}  // namespace tankwright::text::detail
