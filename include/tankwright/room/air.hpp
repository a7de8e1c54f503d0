// SPDX-License-Identifier: BSL-1.0
/// @file
/// The state of moist air as people know it: temperature, relative humidity, pressure; and the thin types of its
/// properties, per kilogram or cubic metre of what.
#pragma once

#include <tankwright/core/required.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/room/saturation.hpp>

namespace tankwright::room {

inline constexpr citation ashrae_2017{
    "ASHRAE", 2017, "Handbook-Fundamentals (SI), chapter 1, Psychrometrics",
    "eq. 3, 5, 6, 20, 26, 30, 33, 35 and tables 1 to 3, as quoted in the source and tests of PsychroLib 2.5.0",
    standing::secondary};

/// Relative humidity, as a fraction.
inline constexpr limits relative_humidity_limits{"relative humidity", "", zero_to_one};
/// Pressure of the surrounding air: that of the standard atmosphere from 5000 m below to 11000 m above the sea.
inline constexpr limits air_pressure_limits{
    "air pressure", "Pa", {1.0, 1e8}, {22631.0, 177700.0}, "ASHRAE 2017, ch. 1, eq. 3: -5000 to 11000 m"};

/// Moist air. The humidity is that of the place where the air is, over ice when below 0.01 degC. (Weather services
/// report humidity over supercooled water even in frost: at -5 degC theirs reads 5 % lower for the same air.)
struct air {
  required<tankwright::temperature> temperature;
  required<relative_humidity> humidity;
  absolute_pressure pressure = standard_atmosphere;  ///< of the place, not reduced to sea level
};

inline constexpr limits humidity_ratio_limits{"humidity ratio", "", {0.0, 1e3}};

/// Mass of water vapour per mass of DRY air.
class humidity_ratio {
 public:
  [[nodiscard]] static constexpr humidity_ratio from_grams_per_kilogram(double value) noexcept {
    return humidity_ratio{value * 1e-3};
  }
  [[nodiscard]] static constexpr humidity_ratio from_kilograms_per_kilogram(double value) noexcept {
    return humidity_ratio{value};
  }
  [[nodiscard]] constexpr double value() const noexcept { return value_; }  ///< kg/kg
  constexpr auto operator<=>(const humidity_ratio&) const noexcept = default;

 private:
  constexpr explicit humidity_ratio(double value) noexcept : value_{value} {}
  double value_;
};
/// The number of a humidity ratio in grams of vapour per kilogram of dry air.
///
/// @param ratio humidity ratio
/// @return      [g/kg]
/// @accuracy    exact
/// @source      this library
[[nodiscard]] constexpr double in_grams_per_kilogram(humidity_ratio ratio) noexcept { return ratio.value() * 1e3; }

namespace detail {

/// Ratio of the molar masses of water and dry air (eq. 20).
template <class T>
inline constexpr T molar_mass_ratio = T(0.621945L);
/// Gas constant of dry air [J/(kg K)] (eq. 26).
template <class T>
inline constexpr T dry_air_gas_constant = T(287.042L);

/// Humidity ratio from vapour pressure and air pressure, same unit (eq. 20).
template <class T>
[[nodiscard]] constexpr T humidity_ratio(T vapour, T total) noexcept {
  return molar_mass_ratio<T> * vapour / (total - vapour);
}
/// Its inverse.
template <class T>
[[nodiscard]] constexpr T vapour_pressure(T ratio, T total) noexcept {
  return total * ratio / (molar_mass_ratio<T> + ratio);
}

inline void check_humidity(std::string_view function, relative_humidity humidity) {
  const double value = humidity.value();
  if (value > 1.0 && value < 2.0) [[unlikely]] {  // 101 % rather than 1.01 %
    core::fail<invalid_input>(
        function, relative_humidity_limits.argument, value, "",
        "is more than saturated, " + core::number_text(100.0 * value) + " %; expected 0 to 1, which is 0 to 100 %");
  }
  if (value >= 2.0 && value <= 100.0) [[unlikely]] {
    core::fail<invalid_input>(function, relative_humidity_limits.argument, value, "",
                              "is not possible; expected 0 to 1. For " + core::number_text(value) +
                                  " % write relative_humidity::from_percent(" + core::number_text(value) + ")");
  }
  core::check(function, relative_humidity_limits, value);
}

inline void check_air_pressure(std::string_view function, absolute_pressure p, range_policy policy) {
  const double value = in_pascals(p.value());
  if (policy == range_policy::published && value > 20.0 && value < 180.0) [[unlikely]] {
    core::fail<out_of_range>(function, air_pressure_limits.argument, value, "Pa",
                             "is nearly a vacuum; for " + core::number_text(value) +
                                 " kPa write absolute_pressure(kilopascals(" + core::number_text(value) + "))");
  }
  core::check(function, air_pressure_limits, value, policy);
}

/// Refuse a vapour pressure that leaves no room for dry air.
inline void check_vapour(std::string_view function, double vapour, double total) {
  if (!(vapour < total)) [[unlikely]] {
    core::fail<invalid_input>(
        function, "vapour pressure", vapour, "Pa",
        "is not below the air pressure, " + core::number_with_unit(total, "Pa") + ": no air is left");
  }
}

/// Air in raw SI numbers, checked.
struct raw_air {
  double temperature;  ///< K
  double celsius;
  double vapour;    ///< Pa
  double pressure;  ///< Pa
  double ratio;     ///< kg/kg
  [[nodiscard]] double dry_density() const noexcept {
    return (pressure - vapour) / (dry_air_gas_constant<double> * temperature);
  }
  [[nodiscard]] double moist_density() const noexcept { return dry_density() * (1.0 + ratio); }
};

/// The raw numbers of air that is known to be possible.
[[nodiscard]] inline raw_air raw_from_vapour(double kelvin, double vapour, double total) noexcept {
  return {kelvin, kelvin - 273.15, vapour, total, humidity_ratio(vapour, total)};
}

[[nodiscard]] inline raw_air checked(std::string_view function, const air& a, range_policy policy) {
  const tankwright::temperature t = a.temperature;
  const relative_humidity humidity = a.humidity;
  core::check(function, saturation_temperature_limits, tankwright::in_celsius(t), policy);
  check_humidity(function, humidity);
  check_air_pressure(function, a.pressure, policy);
  const double total = in_pascals(a.pressure.value());
  const double vapour = humidity.value() * saturation_pressure(in_kelvins(t));
  check_vapour(function, vapour, total);
  return raw_from_vapour(in_kelvins(t), vapour, total);
}

}  // namespace detail
}  // namespace tankwright::room
