// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <algorithm>
#include <tankwright/core/inline.hpp>
#include <tankwright/exchange/document.hpp>

namespace tankwright::exchange {

namespace detail {

/// A key or header of TOML with very many parts would nest tables without end: refused before it is parsed.
inline void check_dots(std::string_view text) {
  std::size_t line = 1;
  for (std::size_t at = 0; at < text.size(); ++line) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    std::string_view name = text.substr(at, end - at);
    name = name.substr(0, name.find('='));
    std::size_t dots = 0;
    bool quoted = false;
    for (const char c : name) {
      if (c == '"' || c == '\'') quoted = !quoted;
      if (c == '#' && !quoted) break;
      if (c == '.' && !quoted) ++dots;
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
