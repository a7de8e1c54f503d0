// SPDX-License-Identifier: BSL-1.0
/// @file
/// The list of all keys that a plan may have, as data: for forms, guides, schemas and tests.
#pragma once

#include <string>
#include <string_view>
#include <tankwright/plan/build.hpp>
#include <vector>

namespace tankwright::plan {

enum class key_kind { number, numbers, word, flag, text, rating, table, tables };

/// One key of a plan.
struct key_row {
  std::string path;   ///< "plumbing.return[].below_edge": brackets mark a list
  std::string table;  ///< "plumbing.return[]"; empty at the top
  key_kind kind;
  key_info about;
  std::vector<std::string_view> words{};  ///< of a word
  std::string otherwise{};                ///< what is taken where it is not given, as text; empty: nothing
  std::string_view example{};             ///< of a rating
};

/// Keys that exclude or need each other.
struct key_rule {
  std::string table;
  std::vector<std::string_view> names;
  bool together;  ///< else: one of them
  bool needed;    ///< one of them must be given
};

/// All keys, in the order of the descriptions, and the rules among them.
struct key_list {
  std::vector<key_row> keys;
  std::vector<key_rule> rules;
};

/// All keys that a plan may have.
///
/// @return     every key once, tables before their keys
/// @throws     nothing but std::bad_alloc
/// @accuracy   exact
/// @source     the descriptions of `plan/`
[[nodiscard]] key_list all_keys();

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/keys.ipp>
#endif
