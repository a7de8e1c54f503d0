// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <array>
#include <tankwright/core/charconv.hpp>
#include <tankwright/core/inline.hpp>
#include <tankwright/exchange/json_text.hpp>

namespace tankwright::exchange {

TANKWRIGHT_INLINE std::size_t utf8_length(std::string_view text, std::size_t at) noexcept {
  if (at >= text.size()) return 0;
  const auto byte = [&](std::size_t i) { return i < text.size() ? static_cast<unsigned char>(text[i]) : 0u; };
  const unsigned first = byte(at);
  if (first < 0x80) return 1;
  const std::size_t length = first >= 0xF0 && first < 0xF5   ? 4
                             : first >= 0xE0 && first < 0xF0 ? 3
                             : first >= 0xC2 && first < 0xE0 ? 2
                                                             : 0;
  for (std::size_t i = 1; i < length; ++i) {
    if ((byte(at + i) & 0xC0u) != 0x80u) return 0;
  }
  const bool overlong = (first == 0xE0 && byte(at + 1) < 0xA0) || (first == 0xF0 && byte(at + 1) < 0x90);
  const bool outside = (first == 0xED && byte(at + 1) >= 0xA0) || (first == 0xF4 && byte(at + 1) >= 0x90);
  return overlong || outside ? 0 : length;
}

TANKWRIGHT_INLINE void detail::append_quoted(std::string& out, std::string_view text) {
  constexpr const char* digits = "0123456789abcdef";
  static constexpr std::array<bool, 256> needs_no_care = [] {
    std::array<bool, 256> plain_bytes{};
    for (std::size_t byte = 0x20; byte < 0x7f; ++byte) plain_bytes[byte] = byte != '"' && byte != '\\';
    return plain_bytes;
  }();
  out += '"';
  std::size_t plain = 0;  // from here on, nothing that needs care
  for (std::size_t i = 0; i < text.size();) {
    const char c = text[i];
    const auto byte = static_cast<unsigned char>(c);
    if (needs_no_care[byte]) {
      ++i;
      continue;
    }
    const std::size_t length = utf8_length(text, i);
    if (length > 1) {
      i += length;
      continue;
    }
    out.append(text.substr(plain, i - plain));
    if (length == 0) {
      out += "\xEF\xBF\xBD";
    } else if (c == '"' || c == '\\') {
      out += '\\';
      out += c;
    } else if (c == '\n') {
      out += "\\n";
    } else if (c == '\t') {
      out += "\\t";
    } else {
      out.append("\\u00").append(1, digits[byte / 16]).append(1, digits[byte % 16]);
    }
    plain = ++i;
  }
  out.append(text.substr(plain));
  out += '"';
}

TANKWRIGHT_INLINE std::string quoted_text(std::string_view text) {
  std::string out;
  out.reserve(text.size() + 2);
  detail::append_quoted(out, text);
  return out;
}

TANKWRIGHT_INLINE json_text& json_text::number(double value) {
  if (!std::isfinite(value)) return raw("null");
  if (value == 0.0) return raw("0");  // minus nothing is nothing
  core::digits_buffer digits;
  return raw(core::shortest_digits_of(digits, value));
}

}  // namespace tankwright::exchange
