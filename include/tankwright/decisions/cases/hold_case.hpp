// SPDX-License-Identifier: BSL-1.0
/// @file
/// What the decision about the leak and its picture start from: the readings with what evaporates, and what they say.
#pragma once

#include <tankwright/plan/inputs/hold_inputs.hpp>

namespace tankwright::decisions {

/// A leak test that was read.
struct leak_test_case {
  vessel::leak_test test;  ///< with the evaporation that is deducted
  vessel::leak_test_result result;

  [[nodiscard]] bool has_pan() const { return test.readings.front().pan.has_value(); }
};

/// The readings of a leak test, with the evaporation of a still open surface in the room's air where there is no pan.
///
///   `room::evaporation` per area over the density of fresh water; `vessel::read_leak_test`
///
/// @param in inputs with a test that was done
/// @return   the test and what it says
/// @throws   invalid_input, out_of_range (from the engines; too few readings)
/// @accuracy as `vessel/leak_test.hpp` and `room/evaporation.hpp`
/// @source   as `vessel/leak_test.hpp` and `room/evaporation.hpp`
[[nodiscard]] leak_test_case case_of(const plan::hold_inputs& in);

}  // namespace tankwright::decisions

#if !defined(TANKWRIGHT_COMPILED)
#include <tankwright/decisions/cases/hold_case.ipp>
#endif
