// SPDX-License-Identifier: BSL-1.0
/// @file
/// What does a dehumidifier take out of the air of this room? Its label is for warmer and moister air; in a tank room
/// it gives less, and every watt it draws and all the heat of the water it condenses stay in the room.
#pragma once

#include <string>

#include <tankwright/core/estimate.hpp>
#include <tankwright/room/air.hpp>
#include <tankwright/core/labelled.hpp>
#include <tankwright/water/heat.hpp>

namespace tankwright::room {

inline constexpr citation energyplus_dehumidifier{
    "US Department of Energy", 2020, "EnergyPlus 9.5, example file SingleFamilyHouse_HP_Slab_Dehumidification",
    "water removal and energy factor curves, also the defaults of OpenStudio", standing::secondary};
inline constexpr citation doe_rerating{
    "US Department of Energy", 2019, "Dehumidifiers: test conditions of 10 CFR 430 appendix X1 since June 2019",
    "30 pints/day at 80 F became 20 at 65 F, 50 became 30 to 35; energy agency's page", standing::secondary};

/// The air for which a label's capacity holds.
struct rating_point {
  std::string_view name;
  tankwright::temperature temperature;
  relative_humidity humidity;
  double share = 0.0;  ///< published capacity there over that at 80 F, 60 %; 0: take the curve
};
inline constexpr rating_point rated_80F_60{"80 F, 60 %", fahrenheit(80.0), relative_humidity::from_percent(60.0), 1.0};
inline constexpr rating_point rated_73F_60{"73 F, 60 %", fahrenheit(73.0), relative_humidity::from_percent(60.0)};
inline constexpr rating_point rated_65F_60{"65 F, 60 %", fahrenheit(65.0), relative_humidity::from_percent(60.0), 0.69};
inline constexpr rating_point rated_30C_80{"30 C, 80 %", celsius(30.0), relative_humidity::from_percent(80.0)};

/// A machine by its label.
struct dehumidifier {
  std::string label = "dehumidifier";
  required<mass_flow> capacity;  ///< water a day at the rating point: 20 litres a day are kilograms_per_day(20)
  rating_point rated_at = rated_80F_60;
  power electrical = watts(0.0);  ///< drawn at the rating point; 0 when the label does not say
};

/// What it does in a given air.
struct dehumidifier_duty {
  estimate<mass_flow> removal;
  power electrical;              ///< drawn, when the label's power was given
  estimate<power> heat_to_room;  ///< latent heat of the water and the electricity
};

inline constexpr limits dehumidifier_temperature_limits{"temperature", "degC", above_absolute_zero_celsius,
                                                        celsius_range(21.0, 32.22), "EnergyPlus curve"};
inline constexpr limits dehumidifier_humidity_limits{
    "relative humidity", "", zero_to_one, {0.4 - 1e-12, 0.8 + 1e-12}, "EnergyPlus curve"};
inline constexpr limits dehumidifier_capacity_limits{"capacity", "kg/s", positive};
inline constexpr limits dehumidifier_power_limits{"electrical power", "W", not_negative};

namespace detail {

/// a + b t + c t^2 + d h + e h^2 + f t h, t in degC, h in percent.
template <class T>
struct biquadratic {
  T a, b, c, d, e, f;
  [[nodiscard]] constexpr T operator()(T t, T h) const noexcept {
    return a + t * (b + c * t) + h * (d + e * h) + f * t * h;
  }
};
template <class T>
inline constexpr biquadratic<T> water_removal_curve{T(-2.724878664080L), T(0.100711983591L),  T(-0.000990538285L),
                                                    T(0.050053043874L),  T(-0.000203629282L), T(-0.000341750531L)};
template <class T>
inline constexpr biquadratic<T> energy_factor_curve{T(-2.388319068955L), T(0.093047739452L),  T(-0.001369700327L),
                                                    T(0.066533716758L),  T(-0.000343198063L), T(-0.000562490295L)};

/// The curves are 0.98 and 0.975, not 1, at 26.7 degC and 60 %, where they are meant to be 1.
template <class T>
[[nodiscard]] constexpr T capacity_share(T celsius, T humidity) noexcept {
  return water_removal_curve<T>(celsius, T(100) * humidity) / water_removal_curve<T>(T(26.7L), T(60));
}
template <class T>
[[nodiscard]] constexpr T efficiency_share(T celsius, T humidity) noexcept {
  return energy_factor_curve<T>(celsius, T(100) * humidity) / energy_factor_curve<T>(T(26.7L), T(60));
}

/// Capacity at 26.7 degC and 60 % [kg/s], from the label. Checks the machine.
[[nodiscard]] inline double checked_capacity(std::string_view function, const dehumidifier& m, range_policy policy) {
  core::check_element(function, m.label, dehumidifier_capacity_limits, m.capacity.get().value());
  core::check_element(function, m.label, dehumidifier_power_limits, m.electrical.value());
  if (m.rated_at.share > 0.0) return m.capacity.get().value() / m.rated_at.share;
  core::check_element(function, m.label, dehumidifier_temperature_limits, in_celsius(m.rated_at.temperature), policy);
  core::check_element(function, m.label, dehumidifier_humidity_limits, m.rated_at.humidity.fraction(), policy);
  return m.capacity.get().value() / capacity_share(in_celsius(m.rated_at.temperature), m.rated_at.humidity.fraction());
}

/// The share of the capacity at 26.7 degC and 60 % that is left in this air, refused where the curve has none.
[[nodiscard]] inline double checked_share(std::string_view function, std::string_view label, double celsius,
                                          double humidity, range_policy policy) {
  core::check_element(function, label, dehumidifier_temperature_limits, celsius, policy);
  core::check_element(function, label, dehumidifier_humidity_limits, humidity, policy);
  const double share = capacity_share(celsius, humidity);
  if (!(share > 0.0)) {
    core::fail<out_of_range>(function, std::string{label} + ": relative humidity", humidity, "",
                       "leaves no capacity at " + core::number_with_unit(celsius, "degC") + " by the extrapolated curve");
  }
  return share;
}

[[nodiscard]] inline dehumidifier_duty duty_of(const dehumidifier& m, double removal, double celsius, double humidity) {
  // Efficiency is water per energy; the label gives it at its own rating point.
  const double rated_c = in_celsius(m.rated_at.temperature);
  const double at_label = efficiency_share(rated_c, m.rated_at.humidity.fraction());
  const double here = efficiency_share(celsius, humidity);
  const double drawn = m.electrical.value() * removal / m.capacity.get().value() * at_label / here;
  const double heat = water::kernel::latent_heat_of_water(celsius);
  constexpr double band = 0.15;
  constexpr std::string_view why = "machines of one label differ by about 15 % within the range of the curve";
  const auto removed = [&](double part) { return removal * part; };
  return {
      .removal = {mass_flow::from_value(removed(1.0 - band)), mass_flow::from_value(removal),
                  mass_flow::from_value(removed(1.0 + band)), why},
      .electrical = power::from_value(drawn),
      .heat_to_room = {power::from_value(removed(1.0 - band) * heat + drawn), power::from_value(removal * heat + drawn),
                       power::from_value(removed(1.0 + band) * heat + drawn), why}};
}

}  // namespace detail

/// What a dehumidifier removes, draws and gives off in the air of a room, running without a pause.
///
///   removal = label f(t, phi) / f(rating point),   f = a + b t + c t^2 + d phi + e phi^2 + f t phi
///   heat to the room = removal h_fg + electricity
///
/// @param machine capacity at its rating point [kg/s] > 0; electrical power there [W] >= 0
/// @param t       temperature of the room, 21 to 32.22 degC
/// @param humidity relative humidity of the room, 0.4 to 0.8
/// @param policy  `extrapolate` to go past these ranges
/// @return        water removed [kg/s], electricity [W], heat to the room [W]
/// @throws        invalid_input; out_of_range (also where the extrapolated curve has no capacity left)
/// @accuracy      15 % between machines of one label, within the range of the curve
/// @source        EnergyPlus 9.5 example curves, divided by their value at 26.7 degC and 60 %
[[nodiscard]] inline dehumidifier_duty dehumidifier_output(const dehumidifier& machine, temperature t,
                                                           relative_humidity humidity,
                                                           range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::dehumidifier_output";
  const double capacity = detail::checked_capacity(here, machine, policy);
  detail::check_humidity(here, humidity);
  const double share = detail::checked_share(here, machine.label, in_celsius(t), humidity.fraction(), policy);
  return detail::duty_of(machine, capacity * share, in_celsius(t), humidity.fraction());
}

}  // namespace tankwright::room
