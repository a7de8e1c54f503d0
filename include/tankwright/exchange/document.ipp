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

/// Where a text between quotation marks ends: behind its last mark, or at the end of all.
[[nodiscard]] inline std::size_t end_of_quoted(std::string_view text, std::size_t at) {
  const char quote = text[at];
  const std::string three(3, quote);
  const bool long_one = text.substr(at, 3) == three;
  for (at += long_one ? 3 : 1; at < text.size(); ++at) {
    if (quote == '"' && text[at] == '\\') {
      ++at;
    } else if (long_one ? text.substr(at, 3) == three : text[at] == quote) {
      at += long_one ? 3 : 1;
      while (long_one && at < text.size() && text[at] == quote) ++at;  // a mark or two may stand before the last three
      return at;
    } else if (!long_one && text[at] == '\n') {
      return at;  // the parser says what is wrong
    }
  }
  return text.size();
}

/// The header of a table must name it. toml++ 3.3 relies on this instead of checking it, and "[." ends the program.
inline void check_headers(std::string_view text) {
  std::size_t line = 1, depth = 0;
  bool begins = true;  // nothing but blanks stands before on this line
  for (std::size_t at = text.starts_with("\xef\xbb\xbf") ? 3 : 0; at < text.size(); ++at) {
    const char c = text[at];
    if (c == '\n') {
      ++line;
      begins = true;
      continue;
    }
    if (c == ' ' || c == '\t' || c == '\r') continue;
    if (c == '[' && begins && depth == 0) {
      std::size_t name = at + (text.substr(at, 2) == "[[" ? 2 : 1);
      while (name < text.size() && (text[name] == ' ' || text[name] == '\t')) ++name;
      const char first = name < text.size() ? text[name] : ']';
      const bool bare = (first >= 'a' && first <= 'z') || (first >= 'A' && first <= 'Z') ||
                        (first >= '0' && first <= '9') || first == '-' || first == '_';
      if (!bare && first != '"' && first != '\'' && first != ']') {
        throw syntax_error{"the name of a table is missing: a header is [name] or [[name]]", line};
      }
    }
    begins = false;
    if (c == '#') {
      at = std::min(text.find('\n', at), text.size()) - 1;
    } else if (c == '"' || c == '\'') {
      const std::size_t end = end_of_quoted(text, at);
      line += static_cast<std::size_t>(std::count(text.begin() + static_cast<std::ptrdiff_t>(at),
                                                  text.begin() + static_cast<std::ptrdiff_t>(end), '\n'));
      at = end - 1;
    } else if (c == '[' || c == '{') {
      ++depth;
    } else if ((c == ']' || c == '}') && depth > 0) {
      --depth;
    }
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
  if (in != notation::toml) return;
  detail::check_dots(text);
  detail::check_headers(text);
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
