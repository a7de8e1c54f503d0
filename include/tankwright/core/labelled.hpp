// SPDX-License-Identifier: BSL-1.0
/// @file
/// Errors about one of several elements: they name it by its label.
#pragma once

#include <string>
#include <string_view>

#include <tankwright/core/errors.hpp>
#include <tankwright/core/validity.hpp>

namespace tankwright::core {

[[noreturn, gnu::cold, gnu::noinline]] inline void refuse_value_of(std::string_view function, std::string_view label,
                                                                   const limits& limit, double value) {
  std::string argument{label};
  if (!argument.empty()) argument += ": ";
  argument += limit.argument;
  limits named = limit;
  named.argument = argument;
  if (!limit.possible.contains(value)) refuse<invalid_input>(function, named, value);
  refuse<out_of_range>(function, named, value);
}

/// Hold a value of an element against its range. A refusal reads "return A: bore = 0 m is not possible ...".
inline void check_element(std::string_view function, std::string_view label, const limits& limit, double value,
                          range_policy policy = range_policy::published) {
  const bool good =
      limit.possible.contains(value) && (policy == range_policy::extrapolate || limit.published.contains(value));
  if (!good) [[unlikely]]
    refuse_value_of(function, label, limit, value);
}

/// Refuse an element for something that is not about one number: `reason` completes "function: label ...".
[[noreturn, gnu::cold]] inline void refuse_element(std::string_view function, std::string_view label,
                                                   std::string_view reason) {
  std::string line{function};
  line.append(": ").append(label.empty() ? "an element without a label" : label).append(" ").append(reason);
  constexpr double none = __builtin_nan("");
  throw invalid_input{line, {std::string{function}, std::string{label}, none, none, none, {}, {}}};
}

}  // namespace tankwright::core
