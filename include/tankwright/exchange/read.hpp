// SPDX-License-Identifier: BSL-1.0
/// @file
/// A plan from TOML or JSON. All mistakes of meaning are found in one reading, each where it stands; what the keys mean
/// is asked of the descriptions of `plan/`.
#pragma once

#include <string>
#include <string_view>
#include <tankwright/exchange/document.hpp>
#include <tankwright/plan/build.hpp>
#include <tankwright/plan/mistake.hpp>
#include <vector>

namespace tankwright::exchange {

/// A mistake, and where it stands in the text.
struct located_mistake {
  plan::mistake what;
  std::size_t line = 0;   ///< from 1, in TOML; 0: not known
  std::string pointer{};  ///< JSON Pointer, in JSON: "/plumbing/return/0/below_edge"
  std::size_t clashes_line = 0;
};

/// What a text says. With mistakes, `build` holds what could be read.
struct reading {
  plan::build build{};
  std::vector<located_mistake> mistakes{};
  [[nodiscard]] bool usable() const noexcept { return mistakes.empty(); }
};

/// Read a plan from a text. Never throws for what the text says.
///
///   the document is walked along the descriptions; then `plan::validate`, whose mistakes are given their lines
///
/// @param text the file's bytes
/// @param in   its notation
/// @return     the plan, and all that is wrong: the first mistake of syntax, or all mistakes of meaning
/// @throws     nothing but std::bad_alloc
/// @accuracy   numbers as `text::parse`
/// @source     the descriptions of `plan/`
[[nodiscard]] reading read_plan(std::string_view text, notation in);

/// One mistake as a line for a person: "my.toml:12: water.temperature: ...".
///
/// @param m    the mistake
/// @param name of the file
/// @return     one line; control characters are shown by their number, of long parts the beginning and the end
/// @throws     nothing but std::bad_alloc
/// @accuracy   not a computation
/// @source     this library
[[nodiscard]] std::string line_of(const located_mistake& m, std::string_view name);

}  // namespace tankwright::exchange

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/exchange/read.ipp>
#endif
