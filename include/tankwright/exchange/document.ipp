// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/exchange/document.hpp>

namespace tankwright::exchange {

namespace detail {

/// A key or header of TOML with very many parts would nest tables without end, and one that begins with a sign ("[~a]")
/// is more than the parser stands: refused before it is parsed.
inline void check_dots(std::string_view text) {
  constexpr std::string_view signs = "~!@$%^&*();:|<>/?\\`";
  std::size_t line = 1;
  bool in_text = false;  // of several lines
  for (std::size_t at = 0; at < text.size(); ++line) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    const std::string_view whole = text.substr(at, end - at);
    const bool was_in_text = in_text;
    for (std::size_t i = 0; i + 3 <= whole.size(); ++i) {
      if (whole.substr(i, 3) == "\"\"\"" || whole.substr(i, 3) == "'''") {
        in_text = !in_text;
        i += 2;
      }
    }
    const std::string_view name = whole.substr(0, whole.find('='));
    bool begins = !was_in_text && name.starts_with('[');
    std::size_t dots = 0;
    bool quoted = false;
    for (const char c : name) {
      if (c == '"' || c == '\'') quoted = !quoted;
      if (c == '#' && !quoted) break;
      if (begins && signs.find(c) != std::string_view::npos) {
        throw syntax_error{std::string{"a name cannot begin with "} + c, line};
      }
      if (c == '.' && !quoted) ++dots;
      if (c != ' ' && c != '[') begins = c == '.' && !quoted && !was_in_text;
    }
    if (dots > deepest_document) {
      throw syntax_error{"a name with " + std::to_string(dots + 1) + " parts; a plan has at most five", line};
    }
    at = end + 1;
  }
}

}  // namespace detail

TANKWRIGHT_INLINE void check_text(std::string_view text, notation in) {
  if (text.size() > largest_document) {
    throw syntax_error{std::to_string(text.size()) + " bytes; a plan has at most " + std::to_string(largest_document),
                       0};
  }
  const bool utf16 =
      text.starts_with("\xff\xfe") || text.starts_with("\xfe\xff") ||
      (text.size() >= 4 && (text[0] == '\0') != (text[1] == '\0') && (text[2] == '\0') == (text[0] == '\0'));
  if (utf16) throw syntax_error{"is written in UTF-16; save it as UTF-8 and try again", 0};
  if (const auto nul = text.find('\0'); nul != std::string_view::npos) {
    throw syntax_error{"is not a text: byte " + std::to_string(nul + 1) + " is zero", 0};
  }
  if (in == notation::toml) detail::check_dots(text);
}

TANKWRIGHT_INLINE notation notation_of(std::string_view name) noexcept {
  const auto lower = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; };
  constexpr std::string_view ending = ".json";
  if (name.size() < ending.size()) return notation::toml;
  for (std::size_t i = 0; i < ending.size(); ++i) {
    if (lower(name[name.size() - ending.size() + i]) != ending[i]) return notation::toml;
  }
  return notation::json;
}

}  // namespace tankwright::exchange
