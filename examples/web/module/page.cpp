// SPDX-License-Identifier: BSL-1.0
// What the page needs beside the C library: numbers as people read them, in the words of the library, and a bridge from
// the library's progress to the page's.
#include <limits>
#include <string>

#include <tankwright/text/written.hpp>

#include "tankwright.h"

namespace {

namespace text = tankwright::text;

/// What was said last, until something else is said. The module has one thread.
std::string said;

template <class Say>
const char* say(Say what) {
  try {
    said = what();
  } catch (...) {
    said.clear();
  }
  return said.c_str();
}

text::unit_system system_of(int us) { return us != 0 ? text::unit_system::us : text::unit_system::si; }

}  // namespace

extern "C" {

__attribute__((import_module("env"), import_name("page_progress"))) int page_progress(unsigned done, unsigned of);

/// "3.7 L/d (2.3 to 4.6)": an amount in its everyday unit; empty for a quantity that is none.
TW_API const char* page_amount(const char* quantity, double low, double central, double high, int us) {
  return say([&] { return text::of(tankwright::amount{quantity, low, central, high}, system_of(us)); });
}

/// The unit in which a number of this size is shown; empty for a pure number.
TW_API const char* page_unit(const char* quantity, double si, int us) {
  return say([&] { return std::string{text::everyday_unit(tankwright::amount{quantity, si, si, si}, system_of(us))}; });
}

/// A number in a unit; NaN where the unit measures something else.
TW_API double page_number(const char* quantity, const char* unit, double si) {
  try {
    return text::number_in(tankwright::amount{quantity, si, si, si}, unit);
  } catch (...) {
    return std::numeric_limits<double>::quiet_NaN();
  }
}

/// A number in a unit, so that reading it gives the number back; empty where the unit measures something else.
TW_API const char* page_written(const char* quantity, const char* unit, double si) {
  return say([&] { return text::write_exactly(si, unit, quantity); });
}

/// `tw_plan_assess` that tells the page how far it is.
TW_API tw_status page_assess(const tw_plan* plan, tw_parts parts, char** report, char** error) {
  const auto relay = [](void*, std::size_t done, std::size_t of) {
    return page_progress(static_cast<unsigned>(done), static_cast<unsigned>(of));
  };
  return tw_plan_assess(plan, nullptr, parts, relay, nullptr, report, error);
}

}  // extern "C"
