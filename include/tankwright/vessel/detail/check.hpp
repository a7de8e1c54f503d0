// SPDX-License-Identifier: BSL-1.0
/// @file
/// Checks that name the thing that is wrong: "sump: height = 0 m is not possible; expected more than 0 m".
#pragma once

#include <string>
#include <string_view>

#include <tankwright/core/labelled.hpp>

namespace tankwright::vessel::detail {

/// `fail<invalid_input>` for one thing among several; `reason` completes "function: label: argument = value ...".
[[noreturn]] inline void refuse_of(std::string_view function, std::string_view label, std::string_view argument,
                                   double value, std::string_view unit, std::string_view reason) {
  core::fail<invalid_input>(function, std::string{label}.append(": ").append(argument), value, unit, reason);
}

/// A length that must be there, and one that may be zero.
[[nodiscard]] constexpr limits positive_length(std::string_view argument) noexcept { return {argument, "m", positive}; }
[[nodiscard]] constexpr limits length_from_zero(std::string_view argument) noexcept {
  return {argument, "m", not_negative};
}

/// The density of a liquid around or in the vessel.
inline constexpr limits water_density_limits{"water density", "kg/m3", positive};

}  // namespace tankwright::vessel::detail
