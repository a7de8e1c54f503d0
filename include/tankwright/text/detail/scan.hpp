// SPDX-License-Identifier: BSL-1.0
/// @file
/// The characters of a text, and the one way to say what is wrong with it.
///
/// Works on code points, never on the locale, and on a bounded length, so that any bytes can be read.
#pragma once

#include <cstddef>
#include <limits>
#include <string>
#include <string_view>
#include <utility>

#include <tankwright/core/errors.hpp>

namespace tankwright::text::detail {

/// The longest text that is read as one quantity, in bytes.
inline constexpr std::size_t longest_text = 160;

/// Look-alikes made one: kinds of space, minus, prime and micro sign. Bytes that are not UTF-8 become `bad_character`.
using character = char32_t;
inline constexpr character bad_character = 0x110000;
inline constexpr character degree_sign = 0xB0;

[[nodiscard]] constexpr character without_look_alikes(character c) noexcept {
  switch (c) {
    case 0:
      return bad_character;  // 0 stands for the end
    case '\t':
    case '\r':
    case '\n':
    case 0xA0:
    case 0x2007:
    case 0x2009:
    case 0x202F:
      return ' ';
    case 0x2212:
    case 0x2012:
    case 0x2013:
      return '-';
    case 0xB5:
    case 0x3BC:
      return 'u';
    case 0xBA:
      return degree_sign;  // the ordinal sign of some keyboards
    case 0x2018:
    case 0x2019:
    case 0x2032:
      return '\'';
    case 0x201C:
    case 0x201D:
    case 0x2033:
      return '"';
    case 0x2044:
      return '/';
    case 0xB7:
    case 0x22C5:
      return '*';
    default:
      return c;
  }
}

[[nodiscard]] constexpr bool is_digit(character c) noexcept { return c >= '0' && c <= '9'; }
[[nodiscard]] constexpr bool is_letter(character c) noexcept {
  return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}
[[nodiscard]] constexpr char lower(char c) noexcept {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

/// The text in quotes, fit for a message: control characters and stray bytes escaped, cut where it gets long.
[[nodiscard]] inline std::string quoted(std::string_view text) {
  constexpr std::size_t longest = 60;
  constexpr char hex[] = "0123456789abcdef";
  std::string result = "\"";
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto byte = static_cast<unsigned char>(text[i]);
    if (i >= longest && (byte & 0xC0) != 0x80) {
      result += "...";
      break;
    }
    const bool starts_character =
        (byte & 0xC0) == 0xC0 && i + 1 < text.size() && (static_cast<unsigned char>(text[i + 1]) & 0xC0) == 0x80;
    const bool continues_character = (byte & 0xC0) == 0x80 && i > 0 && (static_cast<unsigned char>(text[i - 1]) & 0x80);
    if (byte < 0x20 || byte == 0x7F || (byte >= 0x80 && !starts_character && !continues_character)) {
      result.append("\\x").append(1, hex[byte >> 4]).append(1, hex[byte & 15]);
    } else {
      result += text[i];
    }
  }
  return result + '"';
}

/// A text, a place in it, and what should be there.
class scanner {
 public:
  scanner(std::string_view text, std::string_view function, std::string expected)
      : text_{text.substr(0, longest_text)}, function_{function}, expected_{std::move(expected)} {
    for (std::size_t i = 0; i < text_.size();) {
      offset_[size_] = i;
      characters_[size_] = without_look_alikes(decode(i));
      if (characters_[size_] != ' ' || size_ == 0 || characters_[size_ - 1] != ' ') ++size_;  // one space for many
    }
    offset_[size_] = text_.size();
    if (text.size() > longest_text) {
      fail(size_, "is too long: " + std::to_string(text.size()) + " bytes, at most " + std::to_string(longest_text));
    }
  }

  /// The character `ahead` places on; 0 past the end.
  [[nodiscard]] character peek(std::size_t ahead = 0) const noexcept {
    return place_ + ahead < size_ ? characters_[place_ + ahead] : 0;
  }
  [[nodiscard]] bool at_end() const noexcept { return place_ >= size_; }
  [[nodiscard]] std::size_t place() const noexcept { return place_; }
  [[nodiscard]] std::size_t size() const noexcept { return size_; }
  /// Read on between two places only; what lies outside stays in the messages.
  void narrow(std::size_t from, std::size_t to) noexcept {
    place_ = from;
    size_ = to;
  }
  void go_to(std::size_t place) noexcept { place_ = place; }
  void advance(std::size_t by = 1) noexcept { place_ += by; }
  bool accept(character c) noexcept {
    if (peek() != c) return false;
    advance();
    return true;
  }
  void skip_spaces() noexcept {
    while (peek() == ' ') advance();
  }

  /// What was written between two places.
  [[nodiscard]] std::string_view written(std::size_t from, std::size_t to) const noexcept {
    std::string_view part = std::string_view{text_}.substr(offset_[from], offset_[to] - offset_[from]);
    while (!part.empty() && part.back() == ' ') part.remove_suffix(1);
    return part;
  }

  /// Say what is wrong at a place. `reason` reads on from the text: `"5 kg", character 3: kg is a unit of mass`.
  [[noreturn]] void fail(std::size_t place, const std::string& reason, std::string_view more_expected = {}) const {
    std::string expected = expected_;
    expected += more_expected;
    std::string line{function_};
    line.append(": ").append(detail::quoted(text_)).append(", character ").append(std::to_string(place + 1));
    line.append(": ").append(reason).append("; expected ").append(expected);
    constexpr double none = std::numeric_limits<double>::quiet_NaN();
    throw text_error{line,    {std::string{function_}, "text", none, none, none, {}, {}}, text_, offset_[place], reason,
                     expected};
  }

  /// What stands at the place, for a message.
  [[nodiscard]] std::string found() const {
    if (at_end()) return "the text ends";
    if (peek() == bad_character) return "a byte that is not text (UTF-8)";
    return detail::quoted(written(place_, place_ + 1)) + " is not understood here";
  }

 private:
  /// The code point at byte i, and i moved past it.
  [[nodiscard]] character decode(std::size_t& i) const noexcept {
    const auto byte = [&](std::size_t at) { return static_cast<unsigned char>(text_[at]); };
    const unsigned first = byte(i++);
    if (first < 0x80) return first;
    const std::size_t more = first >= 0xF0 ? 3 : first >= 0xE0 ? 2 : 1;
    if (first < 0xC2 || first > 0xF4 || i + more > text_.size()) return bad_character;
    character c = first & (0x3F >> more);
    for (std::size_t k = 0; k < more; ++k) {
      if ((byte(i + k) & 0xC0) != 0x80) return bad_character;
      c = (c << 6) | (byte(i + k) & 0x3F);
    }
    if (c < 0x80) return bad_character;
    i += more;
    return c;
  }

  std::string text_;
  std::string_view function_;
  std::string expected_;
  character characters_[longest_text] = {};
  std::size_t offset_[longest_text + 1] = {};
  std::size_t size_ = 0;
  std::size_t place_ = 0;
};

}  // namespace tankwright::text::detail
