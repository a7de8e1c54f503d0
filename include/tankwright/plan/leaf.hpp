// SPDX-License-Identifier: BSL-1.0
/// @file
/// One key of a plan, whatever it holds.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <tankwright/plan/description.hpp>

namespace tankwright::plan {

/// What stands at a path; exactly one of the pointers is set.
struct leaf {
  key_info key{};
  value_base* number = nullptr;
  values_base* numbers = nullptr;
  word_base* word = nullptr;
  std::span<const std::string_view> words{};  ///< of `word`
  flag* yes = nullptr;
  std::string* text = nullptr;
  composite* rating = nullptr;
  table_ref* table = nullptr;
  tables_ref* tables = nullptr;
  std::size_t element = 0;  ///< of `tables` or `numbers`: number from 1 of the element meant; 0: the whole list
};

}  // namespace tankwright::plan
