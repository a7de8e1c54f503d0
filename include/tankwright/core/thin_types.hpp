// SPDX-License-Identifier: BSL-1.0
/// @file
/// Thin types for numbers that share a dimension but must not be mixed: two salinity scales, pressures with different
/// zeros, fractions of different things. A thin type costs nothing at run time.
///
/// One that is made without a number, as `std::vector<practical_salinity>(n)` for the results of a batch, is not a
/// number, which every function refuses.
#pragma once

#include <compare>

#include <tankwright/core/quantities.hpp>

namespace tankwright {

namespace core {

inline constexpr double no_number = __builtin_nan("");

/// The common part of the thin types around one number: explicit, comparable, without arithmetic.
template <class Self>
class scalar {
 public:
  constexpr scalar() noexcept = default;
  constexpr explicit scalar(double value) noexcept : value_{value} {}
  [[nodiscard]] constexpr double value() const noexcept { return value_; }

  friend constexpr auto operator<=>(const Self& a, const Self& b) noexcept { return a.value() <=> b.value(); }
  friend constexpr bool operator==(const Self& a, const Self& b) noexcept { return a.value() == b.value(); }

 private:
  double value_ = no_number;
};

}  // namespace core

/// Practical salinity S_P of PSS-78: a number without unit, 35 for standard seawater. Not g/kg and not g/L.
class practical_salinity : public core::scalar<practical_salinity> {
  using scalar::scalar;
};

/// Absolute salinity S_A: grams of dissolved salt per kilogram of seawater. 35.16504 g/kg where S_P is 35.
class absolute_salinity {
 public:
  constexpr absolute_salinity() noexcept = default;
  [[nodiscard]] static constexpr absolute_salinity from_grams_per_kilogram(double value) noexcept {
    return absolute_salinity{value};
  }
  [[nodiscard]] constexpr double value() const noexcept { return value_; }  ///< g/kg
  constexpr auto operator<=>(const absolute_salinity&) const noexcept = default;

 private:
  constexpr explicit absolute_salinity(double value) noexcept : value_{value} {}
  double value_ = core::no_number;
};

[[nodiscard]] constexpr double in_grams_per_kilogram(absolute_salinity salinity) noexcept { return salinity.value(); }

/// A part of a whole between 0 and 1. Make it with `fraction(0.87)` or `percent(87)`.
class proportion {
 public:
  constexpr proportion() noexcept = default;
  [[nodiscard]] constexpr double value() const noexcept { return value_; }
  constexpr auto operator<=>(const proportion&) const noexcept = default;

 private:
  constexpr explicit proportion(double value) noexcept : value_{value} {}
  friend constexpr proportion fraction(double) noexcept;
  friend constexpr proportion percent(double) noexcept;
  double value_ = core::no_number;
};

[[nodiscard]] constexpr proportion fraction(double number) noexcept { return proportion{number}; }
[[nodiscard]] constexpr proportion percent(double number) noexcept { return proportion{number / 100.0}; }
[[nodiscard]] constexpr double in_percent(proportion part) noexcept { return part.value() * 100.0; }

/// Relative humidity of air, as a fraction of saturation over water. 60 % is `relative_humidity::from_percent(60)`.
class relative_humidity {
 public:
  constexpr relative_humidity() noexcept = default;
  [[nodiscard]] static constexpr relative_humidity from_percent(double value) noexcept {
    return relative_humidity{value / 100.0};
  }
  [[nodiscard]] static constexpr relative_humidity from_fraction(double value) noexcept {
    return relative_humidity{value};
  }
  [[nodiscard]] constexpr double value() const noexcept { return value_; }  ///< as a fraction
  constexpr auto operator<=>(const relative_humidity&) const noexcept = default;

 private:
  constexpr explicit relative_humidity(double value) noexcept : value_{value} {}
  double value_ = core::no_number;
};

[[nodiscard]] constexpr double in_percent(relative_humidity humidity) noexcept { return humidity.value() * 100.0; }

/// Pore volume of a heap of grains or of a rock over its whole (envelope) volume, 0 <= n < 1.
class porosity : public core::scalar<porosity> {
  using scalar::scalar;
};

namespace core {

/// The common part of the two pressures with a datum.
template <class Self>
class pressure_point {
 public:
  constexpr pressure_point() noexcept = default;
  constexpr explicit pressure_point(pressure value) noexcept : value_{value} {}
  [[nodiscard]] constexpr pressure value() const noexcept { return value_; }

  friend constexpr auto operator<=>(const Self& a, const Self& b) noexcept {
    return a.value().value() <=> b.value().value();
  }
  friend constexpr bool operator==(const Self& a, const Self& b) noexcept {
    return a.value().value() == b.value().value();
  }

 private:
  pressure value_ = pressure::from_value(no_number);
};

}  // namespace core

/// Pressure above vacuum: what a barometer reads. `absolute_pressure(kilopascals(101.325))`.
class absolute_pressure : public core::pressure_point<absolute_pressure> {
  using pressure_point::pressure_point;
};

/// Pressure above the surrounding air: what a tyre or pump gauge reads. `gauge_pressure(psi(6))`.
class gauge_pressure : public core::pressure_point<gauge_pressure> {
  using pressure_point::pressure_point;
};

/// The standard atmosphere, 101 325 Pa (exact, 10th CGPM 1954).
inline constexpr absolute_pressure standard_atmosphere{pressure::from_value(101325.0)};

}  // namespace tankwright
