// SPDX-License-Identifier: BSL-1.0
/// @file
/// Temperatures as points (25 degC in the tank) and as differences (5 K warmer), never mixed.
///
/// All temperatures are on ITS-90. Correlations made on IPTS-68 convert inside.
#pragma once

#include <tankwright/core/quantities.hpp>

namespace tankwright {

// Points on a scale.
[[nodiscard]] constexpr temperature kelvins(double number) noexcept { return temperature::from_value(number); }
[[nodiscard]] constexpr temperature celsius(double number) noexcept { return temperature::from_value(number + 273.15); }
[[nodiscard]] constexpr temperature fahrenheit(double number) noexcept {
  return temperature::from_value((number + 459.67) / 1.8);
}

[[nodiscard]] constexpr double in_kelvins(temperature point) noexcept { return point.value(); }
[[nodiscard]] constexpr double in_celsius(temperature point) noexcept { return point.value() - 273.15; }
[[nodiscard]] constexpr double in_fahrenheit(temperature point) noexcept { return point.value() * 1.8 - 459.67; }

// Temperatures as printed in tables older than 1990 (IPTS-68): t68 = 1.00024 t90 (Saunders 1990), good to 0.5 mK over
// -2 to 40 degC.
[[nodiscard]] constexpr temperature ipts68_celsius(double number) noexcept { return celsius(number / 1.00024); }
[[nodiscard]] constexpr double in_ipts68_celsius(temperature point) noexcept { return in_celsius(point) * 1.00024; }

// Differences. A kelvin and a degree Celsius are the same step.
[[nodiscard]] constexpr temperature_difference kelvin_steps(double number) noexcept {
  return temperature_difference::from_value(number);
}
[[nodiscard]] constexpr temperature_difference celsius_steps(double number) noexcept {
  return temperature_difference::from_value(number);
}
[[nodiscard]] constexpr temperature_difference fahrenheit_steps(double number) noexcept {
  return temperature_difference::from_value(number / 1.8);
}
[[nodiscard]] constexpr double in_kelvin_steps(temperature_difference step) noexcept { return step.value(); }
[[nodiscard]] constexpr double in_celsius_steps(temperature_difference step) noexcept { return step.value(); }
[[nodiscard]] constexpr double in_fahrenheit_steps(temperature_difference step) noexcept { return step.value() * 1.8; }

namespace core {

/// IPTS-68 Celsius from ITS-90 Celsius: t68 = 1.00024 t90 (Saunders 1990), good to 0.5 mK over -2..40 degC.
template <class T>
[[nodiscard]] constexpr T t68_from_t90(T t90) noexcept {
  return T(1.00024L) * t90;
}

}  // namespace core
}  // namespace tankwright
