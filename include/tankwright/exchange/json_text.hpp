// SPDX-License-Identifier: BSL-1.0
/// @file
/// JSON as text, written in one go: braces, commas, escapes, and numbers that read back to the last bit.
#pragma once

#include <cmath>
#include <string>
#include <string_view>
#include <tankwright/core/errors.hpp>

namespace tankwright::exchange {

/// How many bytes of a text are one character of UTF-8.
///
/// @param text any bytes
/// @param at   where the character begins
/// @return     1 to 4; 0 where the bytes are no UTF-8, or where the text has ended
/// @accuracy   exact
/// @source     RFC 3629
[[nodiscard]] std::size_t utf8_length(std::string_view text, std::size_t at) noexcept;

/// A text between quotation marks; TOML's basic strings and JSON's escape alike. Bytes that are no UTF-8 become U+FFFD.
///
/// @param text any bytes
/// @return     the text, escaped, between quotation marks
/// @throws     nothing but std::bad_alloc
/// @accuracy   exact for UTF-8
/// @source     RFC 8259, section 7; TOML 1.0
[[nodiscard]] std::string quoted_text(std::string_view text);

namespace detail {
/// The same at the end of another text.
void append_quoted(std::string& out, std::string_view text);
}  // namespace detail

/// Writes JSON from front to back. The caller opens and closes in pairs.
class json_text {
 public:
  /// `indent` spaces a level; 0: all in one line.
  explicit json_text(std::size_t indent = 2) noexcept : indent_{indent} {}

  json_text& open_object() { return open('{'); }
  json_text& open_list() { return open('['); }
  json_text& close_object() { return close('}'); }
  json_text& close_list() { return close(']'); }
  json_text& key(std::string_view name) {
    comma();
    detail::append_quoted(out_, name);
    out_.append(indent_ > 0 ? ": " : ":");
    after_key_ = true;
    return *this;
  }
  json_text& text(std::string_view value) {
    comma();
    detail::append_quoted(out_, value);
    first_ = false;
    return *this;
  }
  json_text& flag(bool value) { return raw(value ? "true" : "false"); }
  /// The shortest number that reads back the same; null where it is not finite, for JSON has no such numbers.
  json_text& number(double value);
  json_text& raw(std::string_view value) {
    comma();
    out_ += value;
    first_ = false;
    return *this;
  }
  [[nodiscard]] std::string take() && { return std::move(out_) + "\n"; }

 private:
  json_text& open(char bracket) {
    comma();
    out_ += bracket;
    ++depth_;
    first_ = true;
    return *this;
  }
  json_text& close(char bracket) {
    --depth_;
    if (!first_) line();
    out_ += bracket;
    first_ = false;
    return *this;
  }
  void comma() {
    if (after_key_) {
      after_key_ = false;
      return;
    }
    if (!first_) out_ += ',';
    if (depth_ > 0) line();
    first_ = false;
  }
  void line() {
    if (indent_ > 0) out_.append("\n").append(depth_ * indent_, ' ');
  }

  std::string out_{};
  std::size_t indent_;
  std::size_t depth_ = 0;
  bool first_ = true;
  bool after_key_ = false;
};

}  // namespace tankwright::exchange

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/exchange/json_text.ipp>
#endif
