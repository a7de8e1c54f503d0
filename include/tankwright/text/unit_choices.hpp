// SPDX-License-Identifier: BSL-1.0
/// @file
/// Which units can a quantity be written in? What the menu beside a field of a form offers.
#pragma once

#include <string_view>
#include <tankwright/text/detail/read.hpp>
#include <vector>

namespace tankwright::text {

/// A unit of a quantity: number in SI = number in this unit * size + zero.
struct unit_choice {
  std::string_view symbol;  ///< of the unit table; `parse` takes it
  double size;              ///< of one unit, in SI
  double zero;              ///< where the unit begins to count, in SI: 0 but for degC and degF
};

/// The units that a quantity may be written in, in the order of the unit table.
///
///   the rows of the unit table that measure it; of gauge and absolute pressures those of a pressure
///
/// @param quantity name of its kind: "length", "temperature"
/// @return         its units; none for a pure number and for a name that is not known
/// @throws         nothing but std::bad_alloc
/// @accuracy       exact
/// @source         unit table
[[nodiscard]] inline std::vector<unit_choice> units_of(std::string_view quantity) {
  std::vector<unit_choice> all;
  for (const detail::unit_row& row : detail::unit_rows) {
    if (row.quantity != quantity && row.quantity != detail::measured_as(quantity)) continue;
    if (detail::words_of(quantity).si.empty()) continue;  // a salinity is written without its unit
    all.push_back({row.symbol, row.factor, detail::si_from_number(row, quantity, 0.0)});
  }
  return all;
}

}  // namespace tankwright::text
