// SPDX-License-Identifier: BSL-1.0
/// @file
/// A plan as TOML, with each key's sentence beside it, and as JSON. What `read_plan` reads back is the same plan.
#pragma once

#include <string>
#include <string_view>
#include <tankwright/plan/build.hpp>
#include <vector>

namespace tankwright::exchange {

/// A key that is written commented out where it is not given.
struct blank_key {
  std::string path;
  std::string example;  ///< a value as people write it; none: what is usual for the kind of number
};

/// How a plan is written.
struct toml_style {
  bool sentences = true;            ///< each key's meaning as a comment beside it
  std::vector<blank_key> blanks{};  ///< keys that are written commented out
  std::string_view first_lines{};   ///< comment lines above everything, each with its #
};

/// A plan in TOML. Keys that were not given are left out.
///
/// @param build the plan
/// @param style comments and blanks
/// @return      a TOML 1.0 document in UTF-8
/// @throws      nothing but std::bad_alloc
/// @accuracy    exact: reading it gives the same plan, to the last bit of each number
/// @source      TOML 1.0
[[nodiscard]] std::string to_toml(const plan::build& build, const toml_style& style = {});

/// A plan in JSON, with the same keys and the same texts.
///
/// @param build the plan
/// @return      a JSON document in UTF-8, indented by two spaces
/// @throws      nothing but std::bad_alloc
/// @accuracy    as `to_toml`
/// @source      RFC 8259
[[nodiscard]] std::string to_json(const plan::build& build);

/// A short plan to begin with: the keys that matter, each with its sentence, in metric or US units; what a builder
/// cannot know yet is commented out.
///
/// @param units metric or US
/// @return      a TOML document that `read_plan` accepts
/// @throws      nothing but std::bad_alloc
/// @accuracy    not a computation
/// @source      this library; the numbers are invented
[[nodiscard]] std::string starter_plan(text::unit_system units);

}  // namespace tankwright::exchange

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/exchange/write.ipp>
#endif
