// SPDX-License-Identifier: BSL-1.0
/// @file
/// A quantity in a sentence of a finding, in the units of the report.
#pragma once

#include <string>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/text/quantity.hpp>

namespace tankwright::decisions {

/// "663 L": a quantity in the units that the plan's report has.
///
/// @param s the plan as it is being assessed
/// @param q any quantity
/// @return  number and unit, with three digits
/// @throws  nothing but std::bad_alloc
/// @accuracy rounded to the digits written
/// @source  unit table
template <class Q>
[[nodiscard]] std::string said(const situation& s, const Q& q) {
  return text::of(q, s.plan().units.value_or(text::unit_system::si), text::significant(3));
}

}  // namespace tankwright::decisions
