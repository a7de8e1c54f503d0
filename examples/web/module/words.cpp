// SPDX-License-Identifier: BSL-1.0
// Numbers as people read them, in the words of the library: what the page shows of both modules.
#include "words.hpp"

#include <limits>
#include <tankwright/text/written.hpp>

#include "tankwright.h"

using page::say;
using page::system_of;
namespace text = tankwright::text;

extern "C" {

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

}  // extern "C"
