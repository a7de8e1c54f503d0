// SPDX-License-Identifier: BSL-1.0
/// @file
/// Checks that name the thing that is wrong, "sump: height = 0 m is not possible; expected 1e-06 to 1000 m", and what
/// the things about a vessel can be: wider than anything that is built, narrow enough that no formula overflows.
#pragma once

#include <string>
#include <string_view>
#include <tankwright/core/estimate.hpp>
#include <tankwright/core/labelled.hpp>

namespace tankwright::vessel::detail {

/// `fail<invalid_input>` for one thing among several; `reason` completes "function: label: argument = value ...".
[[noreturn]] inline void refuse_of(std::string_view function, std::string_view label, std::string_view argument,
                                   double value, std::string_view unit, std::string_view reason) {
  std::string named{label};
  if (!named.empty()) named += ": ";
  core::fail<invalid_input>(function, named.append(argument), value, unit, reason);
}

// From a micrometre to a kilometre, from a bubble to a reservoir, from a gas to osmium, from rubber foam to diamond.
inline constexpr interval possible_length{1e-6, 1e3};
inline constexpr interval possible_length_from_zero{0.0, 1e3};
inline constexpr interval possible_area{1e-12, 1e6};
inline constexpr interval possible_volume{1e-18, 1e9};
inline constexpr interval possible_volume_from_zero{0.0, 1e9};
inline constexpr interval possible_density{0.01, 3e4};
inline constexpr interval possible_mass{1e-9, 1e12};
inline constexpr interval possible_mass_from_zero{0.0, 1e12};
inline constexpr interval possible_pressure{0.0, 1e9};
inline constexpr interval possible_modulus{1.0, 1e13};
inline constexpr interval possible_strength{1.0, 1e12};
inline constexpr interval possible_force{-1e12, 1e12};
inline constexpr interval possible_force_from_zero{0.0, 1e12};
inline constexpr interval possible_duration{1e-3, 1e11};

/// A length that must be there, and one that may be zero.
[[nodiscard]] constexpr limits positive_length(std::string_view argument) noexcept {
  return {argument, "m", possible_length};
}
[[nodiscard]] constexpr limits length_from_zero(std::string_view argument) noexcept {
  return {argument, "m", possible_length_from_zero};
}

/// The density of a liquid around or in the vessel.
inline constexpr limits water_density_limits{"water density", "kg/m3", possible_density};

/// Hold the three values of an estimate, which are in their order, against a range.
template <class Q>
void check_estimate(std::string_view function, std::string_view label, const limits& limit, const estimate<Q>& value) {
  for (const Q& x : {value.low, value.central, value.high}) core::check_element(function, label, limit, x.value());
}

}  // namespace tankwright::vessel::detail
