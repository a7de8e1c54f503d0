// SPDX-License-Identifier: BSL-1.0
/// @file
/// What does a dehumidifier take out of the air of this room? Its label is for warmer and moister air; in a tank room
/// it gives less, in a cold one it ices up, and every watt it draws and all the heat of the water it condenses stay in
/// the room.
#pragma once

#include <algorithm>
#include <string>

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/labelled.hpp>
#include <tankwright/room/air.hpp>
#include <tankwright/room/rating_point.hpp>
#include <tankwright/water/heat.hpp>

namespace tankwright::room {

inline constexpr citation energyplus_dehumidifier{
    "US Department of Energy", 2020, "EnergyPlus 9.5, example file SingleFamilyHouse_HP_Slab_Dehumidification",
    "water removal and energy factor curves, also the defaults of OpenStudio", standing::secondary};
inline constexpr citation doe_rerating{
    "US Department of Energy", 2019, "Dehumidifiers: test conditions of 10 CFR 430 appendix X1 since June 2019",
    "30 pints/day at 80 F became 20 at 65 F, 50 became 30 to 35; energy agency's page", standing::secondary};

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

/// Where the curve of the example machine was made: 21 to 32.22 degC (90 F), 40 to 80 %. Machines of one label differ
/// there by about 15 %.
inline constexpr interval dehumidifier_curve_celsius{21.0, 32.22};
inline constexpr interval dehumidifier_curve_humidity{0.4, 0.8};
/// Beyond it the curve goes on in a wide band, which has no source but the habits of the trade: machines without
/// defrosting ice up below about 15 degC, those with it stop at about 5 degC, and all cut out in great heat.
inline constexpr double undefrosted_machines_stop = 15.0;  ///< degC
inline constexpr double defrosted_machines_stop = 5.0;     ///< degC
inline constexpr double machines_cut_out = 38.0;           ///< degC
inline constexpr limits dehumidifier_temperature_limits{"temperature", "degC", possible_air, celsius_range(-30.0, 45.0),
                                                        "this library, around the curve of EnergyPlus"};
inline constexpr limits dehumidifier_humidity_limits{"relative humidity", "", zero_to_one};
inline constexpr limits dehumidifier_capacity_limits{"capacity", "kg/s", {1e-8, 1e4}};
inline constexpr limits dehumidifier_power_limits{"electrical power", "W", possible_power};
inline constexpr limits rating_temperature_limits{"temperature of the rating point", "degC", celsius_range(18.0, 35.0)};
inline constexpr limits rating_humidity_limits{"relative humidity of the rating point", "", {0.4, 1.0}};
inline constexpr limits rating_share_limits{"share of the rating point", "", {0.01, 10.0}};

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

/// The curve is 0.98, not 1, at 26.7 degC and 60 %, where it is meant to be 1.
template <class T>
[[nodiscard]] constexpr T capacity_curve(T celsius, T humidity) noexcept {
  return water_removal_curve<T>(celsius, T(100) * humidity) / water_removal_curve<T>(T(26.7L), T(60));
}

/// Which end of a band.
enum class band_end { low, central, high };

/// 0 up to x = none, 1 from x = all on, a straight line between; all may be below none.
template <class T>
[[nodiscard]] constexpr T ramp(T x, T none, T all) noexcept {
  return std::clamp((x - none) / (all - none), T(0), T(1));
}

/// The share of the capacity at 26.7 degC and 60 % that is left in this air. Continuous everywhere; in air wetter than
/// the curve covers the machine is credited with what it removes at the curve's end.
///
///   within the curve     f, 15 % up or down
///   colder               low    0.85 f, down to nothing at 15 degC, where machines without defrosting ice up
///                        middle f, from 15 degC down to nothing at 5 degC, by defrosting
///                        high   1.15 f, at least a straight line from 21 degC down to nothing at 0 degC
///   hotter               low    0.85 f, down to nothing at 38 degC, where machines cut out;   high 15 % more each 8 K
///   drier than 40 %      low    down to nothing at 25 %;   no end below nothing
template <class T>
[[nodiscard]] constexpr T capacity_share(T celsius, T humidity, band_end end) noexcept {
  constexpr T coldest = T(dehumidifier_curve_celsius.low), hottest = T(dehumidifier_curve_celsius.high);
  const T h = std::min(humidity, T(dehumidifier_curve_humidity.high));
  const T curve = std::max(T(0), capacity_curve(celsius, h));
  if (end == band_end::central) return curve * ramp(celsius, T(defrosted_machines_stop), T(undefrosted_machines_stop));
  if (end == band_end::low) {
    return T(0.85L) * curve * ramp(celsius, T(undefrosted_machines_stop), coldest) *
           ramp(celsius, T(machines_cut_out), hottest) * ramp(h, T(0.25L), T(dehumidifier_curve_humidity.low));
  }
  const T middle = curve * ramp(celsius, T(defrosted_machines_stop), T(undefrosted_machines_stop));
  const T line = celsius < coldest ? capacity_curve(coldest, h) * ramp(celsius, T(0), coldest) : middle;
  return std::max(T(1.15L) * std::max(middle, line), (T(1.15L) + T(0.15L / 8) * (celsius - hottest)) * middle);
}

/// What the electricity is in proportion to: the ratio of the two curves, at their ends beyond them.
template <class T>
[[nodiscard]] constexpr T power_share(T celsius, T humidity) noexcept {
  const T t = std::clamp(celsius, T(dehumidifier_curve_celsius.low), T(dehumidifier_curve_celsius.high));
  const T h = std::clamp(humidity, T(dehumidifier_curve_humidity.low), T(dehumidifier_curve_humidity.high));
  return capacity_curve(t, h) / energy_factor_curve<T>(t, T(100) * h);
}

/// Capacity at 26.7 degC and 60 % [kg/s], from the label. Checks the machine.
[[nodiscard]] inline double checked_capacity(std::string_view function, const dehumidifier& m) {
  core::check_element(function, m.label, dehumidifier_capacity_limits, m.capacity.get().value());
  core::check_element(function, m.label, dehumidifier_power_limits, m.electrical.value());
  core::check_element(function, m.label, rating_temperature_limits, in_celsius(m.rated_at.temperature));
  core::check_element(function, m.label, rating_humidity_limits, m.rated_at.humidity.value());
  if (m.rated_at.share != 0.0) {
    core::check_element(function, m.label, rating_share_limits, m.rated_at.share);
    return m.capacity.get().value() / m.rated_at.share;
  }
  return m.capacity.get().value() /
         capacity_share(in_celsius(m.rated_at.temperature), m.rated_at.humidity.value(), band_end::central);
}

inline constexpr std::string_view machine_band =
    "machines of one label differ by about 15 % within the range of the curve";
inline constexpr std::string_view cold_machine_band =
    "below 21 degC the curve is continued: a machine without defrosting ices up at about 15 degC, one with it at about "
    "5 degC (common practice, no source)";
inline constexpr std::string_view hot_machine_band =
    "above 32 degC the curve is continued: machines cut out at about 38 degC (common practice, no source)";

[[nodiscard]] constexpr std::string_view machine_band_at(double celsius) noexcept {
  return celsius < dehumidifier_curve_celsius.low    ? cold_machine_band
         : celsius > dehumidifier_curve_celsius.high ? hot_machine_band
                                                     : machine_band;
}

}  // namespace detail

/// What a dehumidifier removes, draws and gives off in the air of a room, running without a pause.
///
///   removal = label f(t, phi) / f(rating point),   f = a + b t + c t^2 + d phi + e phi^2 + f t phi
///   heat to the room = removal h_fg + electricity
///   colder than 21 degC, hotter than 32.22 degC: the curve goes on in a band that opens to nothing where machines ice
///   up or cut out; above 80 % the machine is credited with what it removes at 80 %
///
/// @param machine capacity at its rating point [kg/s] 1e-8 to 1e4; electrical power there [W] 0 to 1e9; rating point 18
///                to 35 degC, 0.4 to 1
/// @param t       temperature of the room, -30 to 45 degC
/// @param humidity relative humidity of the room, 0 to 1
/// @param policy  `extrapolate` to go past that temperature
/// @return        water removed [kg/s], electricity [W], heat to the room [W]; nothing is removed where the air is too
///                cold or too dry
/// @throws        invalid_input, out_of_range
/// @accuracy      15 % between machines of one label, within the range of the curve; the band beyond it
/// @source        EnergyPlus 9.5 example curves, divided by their value at 26.7 degC and 60 %; the re-rating of the US
///                Department of Energy 2019 at 18.3 degC; beyond that common practice
[[nodiscard]] inline dehumidifier_duty dehumidifier_output(const dehumidifier& machine, temperature t,
                                                           relative_humidity humidity,
                                                           range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::dehumidifier_output";
  const double capacity = detail::checked_capacity(here, machine);
  const double celsius = in_celsius(t), phi = humidity.value();
  core::check_element(here, machine.label, dehumidifier_temperature_limits, celsius, policy);
  detail::check_humidity(here, humidity);
  const std::string_view why = detail::machine_band_at(celsius);
  const auto removed = [&](detail::band_end end) { return capacity * detail::capacity_share(celsius, phi, end); };
  const double low = removed(detail::band_end::low), central = removed(detail::band_end::central),
               high = removed(detail::band_end::high);
  const double at_label =
      detail::power_share(in_celsius(machine.rated_at.temperature), machine.rated_at.humidity.value());
  const double drawn = machine.electrical.value() * detail::power_share(celsius, phi) / at_label;
  const double latent = water::kernel::latent_heat_of_water(celsius);
  const auto heat = [&](double removal) { return power::from_value(removal * latent + drawn); };
  return {.removal = {mass_flow::from_value(low), mass_flow::from_value(central), mass_flow::from_value(high), why},
          .electrical = power::from_value(drawn),
          .heat_to_room = {heat(low), heat(central), heat(high), why}};
}

}  // namespace tankwright::room
