// SPDX-License-Identifier: BSL-1.0
/// @file
/// What a key holds as text, and back: the one place where a number, a word, a flag or a list is read or written.
#pragma once

#include <string>
#include <string_view>
#include <tankwright/plan/leaf.hpp>

namespace tankwright::plan {

namespace detail {

/// Refuse a text that is not what a key holds.
[[noreturn]] inline void refuse_text(std::string_view text, const std::string& reason, const std::string& expected) {
  constexpr double none = __builtin_nan("");
  throw text_error{"\"" + std::string{text} + "\" " + reason + "; expected " + expected,
                   {"tankwright::plan::set", "text", none, none, none, {}, {}},
                   std::string{text},
                   0,
                   reason,
                   expected};
}

}  // namespace detail

/// Give a key what a text says.
///
/// @param here the key
/// @param text "35 mm +/- 5 mm", a word of the list, "true", a text; lists with commas
/// @throws     text_error: what is wrong, and what is accepted; the key is left as it was
/// @accuracy   as `text::parse`
/// @source     this library
void give_text(const leaf& here, std::string_view text);

/// Give a key one word of its list.
///
/// @param here a key that holds a word
/// @param text the word
/// @throws     text_error for a word that is not in the list; the nearest is said
/// @accuracy   exact
/// @source     this library
void give_word(const leaf& here, std::string_view text);

/// Give a quantity what a text says, with its unit and doubt.
///
/// @param v        the number of the plan
/// @param quantity name of its kind
/// @param text     as for `text::read_written`
/// @throws         text_error
/// @accuracy       as `text::parse`
/// @source         this library
void give_quantity(value_base& v, std::string_view quantity, std::string_view text);

/// What a quantity of a plan was given as: "35 mm", "35 mm +/- 5 mm"; empty where it was not.
///
/// @param v        the number of the plan
/// @param quantity name of its kind
/// @return         a text that `give_quantity` takes back to the same value
/// @throws         nothing but std::bad_alloc
/// @accuracy       exact there and back
/// @source         this library
[[nodiscard]] std::string quantity_text(const value_base& v, std::string_view quantity);

/// What a key holds; empty where nothing was given.
///
/// @param here the key
/// @return     a text that `give_text` takes back to the same value
/// @throws     nothing but std::bad_alloc
/// @accuracy   exact there and back
/// @source     this library
[[nodiscard]] std::string text_at(const leaf& here);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/leaf_text.ipp>
#endif
