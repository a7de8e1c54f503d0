// SPDX-License-Identifier: BSL-1.0
/// @file
/// Who refuses what: the function that was called, not one that it calls, names the argument that its caller gave.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include <doctest/doctest.h>

#include <tankwright/core/errors.hpp>

namespace tankwright::testing {

struct refusal {
  std::string function;  ///< without tankwright::
  std::string argument;
  std::function<void()> call;
};

inline void check_refusals(const std::vector<refusal>& refusals) {
  for (const refusal& wanted : refusals) {
    CAPTURE(wanted.function);
    CAPTURE(wanted.argument);
    bool refused = false;
    try {
      wanted.call();
    } catch (const error& e) {
      refused = true;
      CHECK_MESSAGE(e.details().function == "tankwright::" + wanted.function, e.what());
      CHECK_MESSAGE(e.details().argument == wanted.argument, e.what());
    }
    CHECK(refused);
  }
}

}  // namespace tankwright::testing

/// A call that must be refused by `function`, naming `argument`.
#define TW_REFUSED(function, argument, ...)          \
  {                                                  \
    function, argument, [&] { (void)(__VA_ARGS__); } \
  }
