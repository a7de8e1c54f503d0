// SPDX-License-Identifier: BSL-1.0
/// @file
/// No number that nothing can have gets through: NaN, infinity, 1e100, in every argument of every function of a folder.
#pragma once

#include <limits>
#include <string_view>

#include <doctest/doctest.h>

#include <tankwright/core/errors.hpp>
#include <tankwright/core/validity.hpp>

namespace tankwright::testing {

/// `call(x, policy)` must throw an error of the library, within the published range and extrapolating.
template <class Call>
void refuses_bad_numbers(std::string_view argument, Call call) {
  constexpr double inf = std::numeric_limits<double>::infinity();
  for (const double x : {std::numeric_limits<double>::quiet_NaN(), inf, -inf, 1e100, -1e100}) {
    for (const range_policy policy : {range_policy::published, range_policy::extrapolate}) {
      CAPTURE(argument);
      CAPTURE(x);
      bool refused = false;
      try {
        (void)call(x, policy);
      } catch (const error& e) {
        refused = true;
        CHECK_MESSAGE(e.details().function.starts_with("tankwright::"), e.what());
      }
      CHECK(refused);
    }
  }
}

}  // namespace tankwright::testing
