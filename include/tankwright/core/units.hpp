// SPDX-License-Identifier: BSL-1.0
/// @file
/// Makers and readers: how a number becomes a quantity and a quantity a number.
///
/// For every row of the unit table there is a maker `litres(2150)` and a reader `in_litres(q)`; there is no other way
/// in or out, so the unit stands in the code at both ends. "Gallon" alone does not exist: US and imperial differ by
/// 20 %. Temperatures are points and have their own header.
#pragma once

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/unit_table.hpp>

namespace tankwright {

#define TANKWRIGHT_MAKER_AND_READER(quantity_name, unit_name, symbol, factor) \
  [[nodiscard]] constexpr quantity_name unit_name(double number) noexcept {   \
    return quantity_name::from_value(number * (factor));                      \
  }                                                                           \
  [[nodiscard]] constexpr double in_##unit_name(quantity_name quantity) noexcept { return quantity.value() / (factor); }
TANKWRIGHT_UNIT_TABLE(TANKWRIGHT_MAKER_AND_READER)
#undef TANKWRIGHT_MAKER_AND_READER

/// Conventional standard gravity, 3rd CGPM 1901 (exact).
inline constexpr acceleration standard_gravity = acceleration::from_value(9.80665);

}  // namespace tankwright
