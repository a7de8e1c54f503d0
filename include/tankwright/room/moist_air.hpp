// SPDX-License-Identifier: BSL-1.0
/// @file
/// What is in the air of the room? Water vapour, dew point, density, enthalpy; and the air that has a given humidity
/// ratio or dew point. Ideal gases, as ASHRAE's equations have it. The wet bulb is in `wet_bulb.hpp`.
#pragma once

#include <algorithm>
#include <cmath>

#include <tankwright/room/air.hpp>

namespace tankwright::room {

/// Heights of the standard atmosphere.
inline constexpr limits altitude_limits{"altitude", "m", {-2e4, 1e5}, {-5000.0, 11000.0}, "ASHRAE 2017, ch. 1, eq. 3"};
inline constexpr limits dew_point_limits{"dew point", "degC", possible_air, celsius_range(-100.0, 200.0),
                                         "Hyland and Wexler 1983"};

/// Air that is to have this humidity ratio.
struct air_of_humidity_ratio {
  required<tankwright::temperature> temperature;
  required<humidity_ratio> ratio;
  absolute_pressure pressure = standard_atmosphere;
};

/// Air that is to have this dew point.
struct air_of_dew_point {
  required<tankwright::temperature> temperature;
  required<tankwright::temperature> dew_point;
  absolute_pressure pressure = standard_atmosphere;
};

namespace detail {

/// Gas constant of water vapour [J/(kg K)], so that the ratio of molar masses holds.
template <class T>
inline constexpr T vapour_gas_constant = dry_air_gas_constant<T> / molar_mass_ratio<T>;

/// Enthalpy [kJ per kg of dry air], t in degC (eq. 30).
template <class T>
[[nodiscard]] constexpr T enthalpy(T celsius, T ratio) noexcept {
  return T(1.006L) * celsius + ratio * (T(2501) + T(1.86L) * celsius);
}

/// The air of this temperature and vapour pressure, or a refusal because it would be supersaturated. The last digits of
/// saturation are forgiven: the inverse of an air at 100 % may come back at 1 + 1e-15.
[[nodiscard]] inline air air_from_vapour(std::string_view function, std::string_view argument, double value,
                                         std::string_view unit, temperature t, double vapour, absolute_pressure total) {
  const double most = saturation_pressure(in_kelvins(t));
  const double humidity = vapour / most;
  if (!(humidity <= 1.0 + 1e-12)) [[unlikely]] {
    core::fail<invalid_input>(function, argument, value, unit,
                              "would be " + core::number_text(100.0 * humidity) + " % relative humidity at " +
                                  core::number_with_unit(in_celsius(t), "degC") + ": water would condense");
  }
  return {.temperature = t, .humidity = relative_humidity::from_fraction(std::min(humidity, 1.0)), .pressure = total};
}

}  // namespace detail

/// Pressure of the standard atmosphere at an altitude.
///
///   P = 101325 (1 - 2.25577e-5 z)^5.2559
///
/// @param altitude height above the sea z [m], -5000 to 11000
/// @param policy   `extrapolate` to go past that range (up to 44331 m, where the formula ends)
/// @return         absolute pressure [Pa]
/// @throws         invalid_input, out_of_range
/// @accuracy       1 Pa against ASHRAE table 1; the weather moves it by 3 %
/// @source         ASHRAE Handbook-Fundamentals 2017, ch. 1, eq. 3
[[nodiscard]] inline absolute_pressure pressure_at_altitude(length altitude,
                                                            range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::pressure_at_altitude";
  core::check(here, altitude_limits, altitude.value(), policy);
  const double base = 1.0 - 2.25577e-5 * altitude.value();
  if (!(base > 0.0)) {
    core::fail<invalid_input>(here, altitude_limits.argument, altitude.value(), "m", "is above the atmosphere");
  }
  return absolute_pressure{pressure::from_value(101325.0 * std::pow(base, 5.2559))};
}

/// Partial pressure of the water vapour in air.
///
///   p = phi p_sat(t)
///
/// @param a      the air: temperature -100 to 200 degC, relative humidity 0 to 1, pressure 22.6 to 177.7 kPa
/// @param policy `extrapolate` to go past these ranges
/// @return       vapour pressure [Pa]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     as saturation_pressure
/// @source       ASHRAE Handbook-Fundamentals 2017, ch. 1, eq. 12 and 22
[[nodiscard]] inline pressure vapour_pressure(const air& a, range_policy policy = range_policy::published) {
  return pressure::from_value(detail::checked("tankwright::room::vapour_pressure", a, policy).vapour);
}

/// Mass of water vapour per mass of dry air.
///
///   W = 0.621945 p / (P - p)
///
/// @param a      the air: temperature -100 to 200 degC, relative humidity 0 to 1, pressure 22.6 to 177.7 kPa
/// @param policy `extrapolate` to go past these ranges
/// @return       humidity ratio [kg/kg of dry air]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.4 to 0.6 % below real air, whose vapour departs from an ideal gas by the factor 1.0045
/// @source       ASHRAE Handbook-Fundamentals 2017, ch. 1, eq. 20
[[nodiscard]] inline humidity_ratio humidity_ratio_of(const air& a, range_policy policy = range_policy::published) {
  return humidity_ratio::from_kilograms_per_kilogram(
      detail::checked("tankwright::room::humidity_ratio_of", a, policy).ratio);
}

/// Mass of water vapour per mass of dry air, from the vapour pressure.
///
///   W = 0.621945 p / (P - p)
///
/// @param vapour partial pressure of the vapour p [Pa] >= 0, below P
/// @param total  pressure of the air P [Pa], 22.6 to 177.7 kPa
/// @param policy `extrapolate` to go past that range
/// @return       humidity ratio [kg/kg of dry air]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     ideal gases; give 1.0045 p for the vapour of real air at about 101 kPa
/// @source       ASHRAE Handbook-Fundamentals 2017, ch. 1, eq. 20
[[nodiscard]] inline humidity_ratio humidity_ratio_from_vapour_pressure(pressure vapour, absolute_pressure total,
                                                                        range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::humidity_ratio_from_vapour_pressure";
  core::check(here, {"vapour pressure", "Pa", {0.0, 1e8}}, vapour.value());
  detail::check_air_pressure(here, total, policy);
  detail::check_vapour(here, vapour.value(), in_pascals(total.value()));
  return humidity_ratio::from_kilograms_per_kilogram(detail::humidity_ratio(vapour.value(), in_pascals(total.value())));
}

/// Mass of water vapour per volume of air ("absolute humidity").
///
///   rho_v = p / (R_v T),   R_v = 287.042/0.621945 J/(kg K)
///
/// @param a      the air: temperature -100 to 200 degC, relative humidity 0 to 1, pressure 22.6 to 177.7 kPa
/// @param policy `extrapolate` to go past these ranges
/// @return       vapour per volume [kg/m^3]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     ideal gases: 0.1 % in a room
/// @source       ASHRAE Handbook-Fundamentals 2017, ch. 1
[[nodiscard]] inline mass_concentration absolute_humidity(const air& a, range_policy policy = range_policy::published) {
  const auto raw = detail::checked("tankwright::room::absolute_humidity", a, policy);
  return mass_concentration::from_value(raw.vapour / (detail::vapour_gas_constant<double> * raw.temperature));
}

/// Temperature at which this air, cooled, begins to lose water: the dew point, or the frost point below 0.01 degC.
///
///   p_sat(t_d) = phi p_sat(t)
///
/// @param a      the air: temperature -100 to 200 degC, relative humidity above 0 to 1, pressure 22.6 to 177.7 kPa
/// @param policy `extrapolate` to go past these ranges
/// @return       temperature [ITS-90]
/// @throws       invalid_input (also for air without any water), out_of_range, no_convergence
/// @accuracy     inverts the saturation pressure to 1e-11 K
/// @source       ASHRAE Handbook-Fundamentals 2017, ch. 1, eq. 5 and 6, inverted numerically
[[nodiscard]] inline temperature dew_point(const air& a, range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::dew_point";
  const double kelvin = in_kelvins(a.temperature);
  const double humidity = a.humidity.get().value();
  core::check(here, saturation_temperature_limits, in_celsius(a.temperature), policy);
  detail::check_humidity(here, a.humidity);
  detail::check_air_pressure(here, a.pressure, policy);
  if (humidity == 0.0) [[unlikely]] {
    core::fail<invalid_input>(here, relative_humidity_limits.argument, 0.0, "",
                              "is air without water: it has no dew point");
  }
  const double ln_vapour = std::log(humidity) + detail::ln_saturation(kelvin).value;
  const double dew = detail::saturation_temperature(here, ln_vapour);
  if (policy == range_policy::published) core::check(here, dew_point_limits, dew - 273.15);
  return kelvins(dew);
}

/// Heat content of moist air per kilogram of DRY air, from dry air and liquid water at 0 degC.
///
///   h = 1.006 t + W (2501 + 1.86 t)   kJ/kg
///
/// @param a      the air: temperature -100 to 200 degC, relative humidity 0 to 1, pressure 22.6 to 177.7 kPa
/// @param policy `extrapolate` to go past these ranges
/// @return       enthalpy [J/kg of dry air]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.3 % of ASHRAE table 2 in a room, from the humidity ratio
/// @source       ASHRAE Handbook-Fundamentals 2017, ch. 1, eq. 30
[[nodiscard]] inline specific_energy enthalpy(const air& a, range_policy policy = range_policy::published) {
  const auto raw = detail::checked("tankwright::room::enthalpy", a, policy);
  return specific_energy::from_value(1e3 * detail::enthalpy(raw.celsius, raw.ratio));
}

/// Volume of moist air per kilogram of DRY air.
///
///   v = 287.042 T / (P - p)
///
/// @param a      the air: temperature -100 to 200 degC, relative humidity 0 to 1, pressure 22.6 to 177.7 kPa
/// @param policy `extrapolate` to go past these ranges
/// @return       specific volume [m^3/kg of dry air]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.1 % of real air
/// @source       ASHRAE Handbook-Fundamentals 2017, ch. 1, eq. 26
[[nodiscard]] inline specific_volume specific_volume_of(const air& a, range_policy policy = range_policy::published) {
  return specific_volume::from_value(1.0 /
                                     detail::checked("tankwright::room::specific_volume_of", a, policy).dry_density());
}

/// Density of moist air, vapour included: what makes it rise or sink.
///
///   rho = (1 + W) / v
///
/// @param a      the air: temperature -100 to 200 degC, relative humidity 0 to 1, pressure 22.6 to 177.7 kPa
/// @param policy `extrapolate` to go past these ranges
/// @return       density [kg/m^3]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.1 % of real air
/// @source       ASHRAE Handbook-Fundamentals 2017, ch. 1
[[nodiscard]] inline mass_density moist_air_density(const air& a, range_policy policy = range_policy::published) {
  return mass_density::from_value(detail::checked("tankwright::room::moist_air_density", a, policy).moist_density());
}

/// Mass of the dry air alone in a cubic metre of moist air: what goes with a humidity ratio, and what Shah's formula
/// means.
///
///   rho_da = 1 / v = (P - p) / (287.042 T)
///
/// @param a      the air: temperature -100 to 200 degC, relative humidity 0 to 1, pressure 22.6 to 177.7 kPa
/// @param policy `extrapolate` to go past these ranges
/// @return       dry-air density [kg/m^3]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.1 % of real air
/// @source       ASHRAE Handbook-Fundamentals 2017, ch. 1
[[nodiscard]] inline mass_density dry_air_density(const air& a, range_policy policy = range_policy::published) {
  return mass_density::from_value(detail::checked("tankwright::room::dry_air_density", a, policy).dry_density());
}

/// The air of a given temperature and humidity ratio.
///
///   phi = P W / ((0.621945 + W) p_sat(t))
///
/// @param state  temperature -100 to 200 degC; humidity ratio W [kg/kg] >= 0, at most that of saturation; pressure
/// @param policy `extrapolate` to go past the published ranges
/// @return       air with its relative humidity
/// @throws       invalid_input (also when the air cannot hold so much water), out_of_range
/// @accuracy     inverts humidity_ratio_of to 1e-14
/// @source       ASHRAE Handbook-Fundamentals 2017, ch. 1, eq. 12, 20 and 22
[[nodiscard]] inline air air_from(const air_of_humidity_ratio& state, range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::air_from";
  const double ratio = state.ratio.get().value();
  core::check(here, saturation_temperature_limits, in_celsius(state.temperature), policy);
  core::check(here, humidity_ratio_limits, ratio);
  detail::check_air_pressure(here, state.pressure, policy);
  const double vapour = detail::vapour_pressure(ratio, in_pascals(state.pressure.value()));
  return detail::air_from_vapour(here, humidity_ratio_limits.argument, ratio, "", state.temperature, vapour,
                                 state.pressure);
}

/// The air of a given temperature and dew (or frost) point.
///
///   phi = p_sat(t_d) / p_sat(t)
///
/// @param state  temperature and dew point -100 to 200 degC, the dew point not above the temperature; pressure
/// @param policy `extrapolate` to go past the published ranges
/// @return       air with its relative humidity
/// @throws       invalid_input (also when the dew point is above the temperature), out_of_range
/// @accuracy     inverts dew_point to 1e-12
/// @source       ASHRAE Handbook-Fundamentals 2017, ch. 1, eq. 12
[[nodiscard]] inline air air_from(const air_of_dew_point& state, range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::air_from";
  core::check(here, saturation_temperature_limits, in_celsius(state.temperature), policy);
  core::check(here, dew_point_limits, in_celsius(state.dew_point), policy);
  detail::check_air_pressure(here, state.pressure, policy);
  const double vapour = detail::saturation_pressure(in_kelvins(state.dew_point));
  detail::check_vapour(here, vapour, in_pascals(state.pressure.value()));
  return detail::air_from_vapour(here, dew_point_limits.argument, in_celsius(state.dew_point), "degC",
                                 state.temperature, vapour, state.pressure);
}

}  // namespace tankwright::room
