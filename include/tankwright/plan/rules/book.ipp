// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/rules/book.hpp>
#include <tankwright/text/quantity.hpp>

namespace tankwright::plan::rules {

TANKWRIGHT_INLINE std::string said(double si, std::string_view quantity) {
  std::string_view unit = text::everyday_unit(amount{quantity, si, si, si}, text::unit_system::si);
  if (quantity == "length") unit = "m";
  if (quantity == "area") unit = "m²";
  if (quantity == "volume") unit = "L";
  if (quantity == "duration") unit = "d";
  return text::in(amount{quantity, si, si, si}, unit, text::significant(6));
}

TANKWRIGHT_INLINE void book::clash(const std::string& path, double value, std::string_view is_past, double most,
                                   const std::string& other, std::string_view quantity) {
  refuse(path, said(value, quantity) + " " + std::string{is_past} + " " + said(most, quantity), other);
}

}  // namespace tankwright::plan::rules
