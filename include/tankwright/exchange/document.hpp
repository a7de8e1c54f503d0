// SPDX-License-Identifier: BSL-1.0
/// @file
/// A file that may hold a plan, before anybody knows what its keys mean: tables, lists, texts, numbers, and where each
/// stands. TOML and JSON both become this, so one reader serves both.
#pragma once

#include <cstddef>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace tankwright::exchange {

/// Which notation a text is in.
enum class notation { toml, json };

/// One value of a document.
struct node {
  enum class kind { table, list, text, number, flag, other };
  kind is = kind::table;
  std::string text{};  ///< of a text; what was written, of a kind that no plan holds
  double number = 0.0;
  bool flag = false;
  std::vector<std::pair<std::string, node>> entries{};  ///< of a table, in the order of the file
  std::vector<node> items{};                            ///< of a list
  std::size_t line = 0;                                 ///< from 1; 0: not known, as in JSON

  [[nodiscard]] const node* find(std::string_view name) const noexcept {
    for (const auto& [key, value] : entries) {
      if (key == name) return &value;
    }
    return nullptr;
  }
};

/// A text that is no document at all. `what()` is the reason; `line` is where, from 1, or 0.
class syntax_error : public std::runtime_error {
 public:
  syntax_error(const std::string& reason, std::size_t at_line) : std::runtime_error{reason}, line_{at_line} {}
  [[nodiscard]] std::size_t line() const noexcept { return line_; }

 private:
  std::size_t line_;
};

inline constexpr std::size_t largest_document = 1'000'000;  ///< bytes; a plan is a page or two
inline constexpr std::size_t deepest_document = 32;         ///< tables in tables; a plan has five

/// Refuse what is no text that a plan could be written in: too large, UTF-16, binary, nested without end.
///
/// @param text any bytes
/// @param in   the notation it claims to be in
/// @throws     syntax_error
/// @accuracy   not a computation
/// @source     this library
void check_text(std::string_view text, notation in);

/// The notation of a file by its name: ".json" is JSON, everything else TOML.
///
/// @param name of a file
/// @return     the notation
/// @accuracy   exact
/// @source     this library
[[nodiscard]] notation notation_of(std::string_view name) noexcept;

}  // namespace tankwright::exchange

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/exchange/document.ipp>
#endif
