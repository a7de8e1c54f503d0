// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the engines take of the section [hold]: a leak test as done, as planned, or both.
#pragma once

#include <optional>
#include <tankwright/plan/hold.hpp>
#include <tankwright/room/moist_air.hpp>
#include <tankwright/vessel/leak_test_planning.hpp>

namespace tankwright::plan {

/// The leak test as done, as planned, or both.
struct hold_inputs {
  flow_rate leak_that_matters;
  std::optional<tankwright::vessel::leak_test> done{};  ///< without evaporation, which the air below tells
  std::optional<tankwright::room::air> air{};
  temperature water;  ///< for the evaporation
  std::optional<tankwright::vessel::leak_test_plan> planned{};
};

/// The section as the engines take it.
///
/// @param s a section that `validate` accepts
/// @return  the readings, and what is planned
/// @throws  invalid_input (names the key that is missing)
/// @accuracy exact
/// @source  this library
[[nodiscard]] hold_inputs inputs_of(const hold_section& s);

}  // namespace tankwright::plan

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/plan/inputs/hold_inputs.ipp>
#endif
