// SPDX-License-Identifier: BSL-1.0
/// @file
/// What to do, in words: "raise the left return to 10 mm below the edge". One row for each key that may be proposed; a
/// key without a row is never proposed (docs/theory/verdicts.md says which and why).
#pragma once

#include <string>
#include <string_view>
#include <tankwright/text/quantity.hpp>
#include <vector>

namespace tankwright::decisions {

struct change;
struct cure;
struct why_none;

namespace detail {

/// The words of one key: %v is the value, %p the element of a list.
struct cure_words {
  std::string_view pattern;     ///< path without what stands in brackets
  std::string_view less;        ///< where the value goes down; empty: never proposed downwards
  std::string_view more;        ///< where it goes up, or is new
  std::string_view all_less{};  ///< of a whole list
  std::string_view all_more{};
  [[nodiscard]] constexpr bool empty() const noexcept { return pattern.empty(); }
};

/// A path without what stands in brackets: "plumbing.return[].below_edge".
[[nodiscard]] std::string pattern_of(std::string_view path);

/// What to do, in words without a capital: of changed keys, or of a part.
[[nodiscard]] std::string words_of_changes(const std::vector<change>& changes, std::string_view part,
                                           text::unit_system units);

/// The words of a key; empty: it is not proposed.
[[nodiscard]] const cure_words& words_of_cure(std::string_view path) noexcept;

}  // namespace detail

/// A cure as something to do: "Raise the left return to 10 mm below the edge".
///
/// @param c     the cure
/// @param units of the report
/// @return      a sentence without its full stop; changes are joined by "and"
/// @throws      nothing but std::bad_alloc
/// @accuracy    rounded to the digits written, which are those of the key's steps
/// @source      this library
[[nodiscard]] std::string sentence_of(const cure& c, text::unit_system units);

/// Why nothing makes a finding hold: "Nothing you can still change does it; what helps most: ..., margin from -663 L to
/// -410 L".
///
/// @param why   what comes nearest
/// @param units of the report
/// @return      a sentence without its full stop
/// @throws      nothing but std::bad_alloc
/// @accuracy    as of a cure
/// @source      this library
[[nodiscard]] std::string sentence_of(const why_none& why, text::unit_system units);

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/cure_words.ipp>
#endif
