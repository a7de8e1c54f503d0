// SPDX-License-Identifier: BSL-1.0
/// @file
/// Who refuses what: the function that was called, not one that it calls, names the argument that its caller gave.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include <doctest/doctest.h>

#include <tankwright/core/errors.hpp>

#include "any_call.hpp"

namespace tankwright::testing {

struct refusal {
  std::string function;  ///< without tankwright::
  std::string argument;
  std::function<void()> call;
};

/// What the error says, which must be of this kind; a complaint when nothing is thrown.
template <class Error = error>
[[nodiscard]] std::string message_of(any_call<> call) {
  try {
    call();
  } catch (const Error& e) {
    return e.what();
  }
  return "nothing was thrown";
}

/// The call is refused by the library, with an error that is looked at.
void check_refused(any_call<> call, any_call<const error&> look);

void check_refusals(const std::vector<refusal>& refusals);

}  // namespace tankwright::testing

/// A call that must be refused by `function`, naming `argument`.
#define TW_REFUSED(function, argument, ...)          \
  {                                                  \
    function, argument, [&] { (void)(__VA_ARGS__); } \
  }
