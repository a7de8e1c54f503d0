// SPDX-License-Identifier: BSL-1.0
/// @file
/// The words behind the program's name.
#pragma once

#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <tankwright/text/quantity.hpp>
#include <vector>

namespace commission {

/// Arguments that make no sense; `what()` says why in one line.
class bad_arguments : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

enum class task { report, hold, vary, beside, check, demo, starter, keys, schema, help };
enum class form { text, json, page };

struct arguments {
  task does = task::report;
  form as = form::text;
  std::optional<std::string> plan{};  ///< none: the built-in demo
  std::string page{};                 ///< file to write
  std::string save{};                 ///< file to save the plan to
  bool compact = false;
  bool quick = false;     ///< central values alone
  std::string finding{};  ///< asked directly about
  std::string key{};      ///< by which it should hold, or that runs
  std::string from{};     ///< first and last value of that key
  std::string to{};
  std::string other{};  ///< a plan to be put beside the first
  std::optional<tankwright::text::unit_system> units{};
};

extern const std::string_view usage;

/// What the words ask for; throws `bad_arguments`.
[[nodiscard]] arguments arguments_from(const std::vector<std::string_view>& words);

}  // namespace commission
