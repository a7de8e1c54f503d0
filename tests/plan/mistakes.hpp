// SPDX-License-Identifier: BSL-1.0
/// @file
/// A sound plan, what is changed in it, and the mistake that must be found.
#pragma once

#include <doctest/doctest.h>

#include <string>
#include <tankwright/plan/validate.hpp>

#include "plan/lagoon.hpp"

namespace tankwright::testing {

/// "path: reason" of every mistake, one a line.
[[nodiscard]] inline std::string mistakes_of(const plan::build& build) {
  std::string all;
  for (const plan::mistake& m : plan::validate(build)) all += m.path + ": " + m.reason + " <" + m.clashes + ">\n";
  return all;
}

/// The plan with some keys changed has a mistake at `path` whose reason contains `reason`, and clashes with `clashes`.
inline void refused(plan::build build, key_texts changes, std::string_view path, std::string_view reason,
                    std::string_view clashes = {}) {
  give(build, changes);
  bool found = false;
  for (const plan::mistake& m : plan::validate(build)) {
    found = found || (m.path == path && m.reason.find(reason) != std::string::npos && m.clashes == clashes);
  }
  CHECK_MESSAGE(found, "no mistake at ", path, " with '", reason, "' against '", clashes, "', but:\n",
                mistakes_of(build));
}

/// The plan with some keys changed has no mistake.
inline void accepted(plan::build build, key_texts changes) {
  give(build, changes);
  CHECK_MESSAGE(plan::validate(build).empty(), mistakes_of(build));
}

}  // namespace tankwright::testing
