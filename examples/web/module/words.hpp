// SPDX-License-Identifier: BSL-1.0
/// @file
/// How this folder's functions hand a text to the page.
#pragma once

#include <string>
#include <tankwright/text/quantity.hpp>

namespace page {

/// What was said last, until something else is said: a module has one thread. Empty where it could not be said.
template <class Say>
const char* say(Say what) {
  static std::string said;
  try {
    said = what();
  } catch (...) {
    said.clear();
  }
  return said.c_str();
}

inline tankwright::text::unit_system system_of(int us) {
  return us != 0 ? tankwright::text::unit_system::us : tankwright::text::unit_system::si;
}

}  // namespace page
