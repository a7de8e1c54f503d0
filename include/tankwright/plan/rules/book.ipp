// SPDX-License-Identifier: BSL-1.0
#pragma once

#include <tankwright/core/inline.hpp>
#include <tankwright/plan/rules/book.hpp>
#include <tankwright/text/quantity.hpp>

namespace tankwright::plan::rules {

TANKWRIGHT_INLINE std::string book::said(double si, std::string_view quantity, std::string_view unit,
                                         int digits) const {
  if (unit.empty()) {
    // One unit for numbers that are held against each other, whatever their size.
    const bool metric = system_ == text::unit_system::si;
    unit = metric && quantity == "length"     ? "m"
           : metric && quantity == "area"     ? "m²"
           : metric && quantity == "volume"   ? "L"
           : metric && quantity == "duration" ? "d"
                                              : text::everyday_unit(amount{quantity, si, si, si}, system_);
  }
  return text::in(amount{quantity, si, si, si}, text::shown_unit(unit), text::significant(digits));
}

TANKWRIGHT_INLINE void book::clash(const std::string& path, double value, std::string_view is_past, double most,
                                   const std::string& other, std::string_view quantity, std::string_view unit) {
  const int digits = unit.empty() ? 6 : 5;  // of a limit in a unit that it may not have been written in
  refuse(path, said(value, quantity, unit) + " " + std::string{is_past} + " " + said(most, quantity, unit, digits),
         other);
}

}  // namespace tankwright::plan::rules
