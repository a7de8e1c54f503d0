// SPDX-License-Identifier: BSL-1.0
/// @file
/// Is it still water? The freezing point of seawater, and the guard that refuses a temperature below it.
#pragma once

#include <cmath>

#include <tankwright/core/batch.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/water/salinity.hpp>

namespace tankwright::water {

inline constexpr citation millero_1978{
    "Millero F.J.", 1978, "Freezing point of sea water",
    "UNESCO Technical Papers in Marine Science 28, annex 6; as in Fofonoff and Millard 1983, ibid. 44",
    standing::secondary};

/// Salinities of the measurements behind the freezing point.
inline constexpr limits freezing_salinity_limits{
    "practical salinity", "", practical_salinity_limits.possible, {4.0, 40.0}, "Millero 1978"};
inline constexpr limits freezing_pressure_limits{"pressure", "dbar", not_negative, {0.0, 500.0}, "Millero 1978"};

namespace detail {

/// Freezing point [degC, IPTS-68] of air-saturated seawater; s = S_P, p in dbar.
template <class T>
[[nodiscard]] inline T freezing_point_t68(T s, T p) noexcept {
  using std::sqrt;
  return (T(-0.0575L) + T(1.710523e-3L) * sqrt(s) - T(2.154996e-4L) * s) * s - T(7.53e-4L) * p;
}

[[noreturn, gnu::cold, gnu::noinline]] inline void refuse_ice(std::string_view function, double practical,
                                                              double celsius, double freezing) {
  std::string line{function};
  line.append(": temperature = ").append(core::number_with_unit(celsius, "degC"));
  line.append(" is below the freezing point, ").append(core::number_text(std::round(freezing * 1e3) / 1e3));
  line.append(" degC at practical salinity ").append(core::number_text(std::round(practical * 100.0) / 100.0));
  line.append(" (Millero 1978); pass tankwright::extrapolate for supercooled water");
  throw out_of_range{line,
                     {std::string{function}, "temperature", celsius, freezing, core::largest, "degC", "Millero 1978"}};
}

/// Refuse water that would be ice, unless the caller extrapolates. Costs one comparison where the water is warmer than
/// 0 degC.
inline void check_liquid(std::string_view function, double practical, double celsius,
                         range_policy policy = range_policy::published, double decibars = 0.0) {
  if (celsius < 0.0 && policy == range_policy::published) [[unlikely]] {
    const double freezing = freezing_point_t68(practical, decibars) / 1.00024;
    // A temperature held in kelvin may come back a little lower.
    if (celsius < freezing - 1e-9) refuse_ice(function, practical, celsius, freezing);
  }
}

/// Hold every temperature of a batch against its range, and against freezing; `practical(i)` and `celsius(i)` give the
/// numbers. Water between 0 degC and the published maximum takes one branch-free pass.
template <class Salinity, class Celsius>
void check_all_liquid(std::string_view function, const limits& limit, std::size_t size, Salinity practical,
                      Celsius celsius, range_policy policy) {
  if (core::all_within({0.0, limit.published.high}, size, celsius)) [[likely]]
    return;
  for (std::size_t i = 0; i < size; ++i) {
    core::check(function, limit, celsius(i), policy);
    check_liquid(function, practical(i), celsius(i), policy);
  }
}

}  // namespace detail

/// Freezing point of air-saturated seawater under pressure.
///
///   t68 = (-0.0575 + 1.710523e-3 sqrt(S) - 2.154996e-4 S) S - 7.53e-4 p
///
/// @param s        practical salinity S, 4 to 40
/// @param pressure p above the atmosphere [dbar], 0 to 500
/// @param policy   `extrapolate` to go past these ranges
/// @return         temperature [ITS-90]
/// @throws         invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy       0.003 K; below S = 4 the formula runs on to 0 degC at S = 0
/// @source         Millero 1978; Fofonoff and Millard 1983, section 6
[[nodiscard]] inline temperature freezing_point(practical_salinity s, gauge_pressure pressure,
                                                range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::freezing_point";
  const double p = in_decibars(pressure.value());
  core::check(here, freezing_salinity_limits, s.value(), policy);
  core::check(here, freezing_pressure_limits, p, policy);
  return ipts68_celsius(detail::freezing_point_t68(s.value(), p));
}

/// Freezing point of air-saturated seawater at the surface.
///
///   as under pressure, with p = 0
///
/// @param s      practical salinity, 4 to 40
/// @param policy `extrapolate` to go past this range
/// @return       temperature [ITS-90]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.003 K
/// @source       Millero 1978; Fofonoff and Millard 1983, section 6
[[nodiscard]] inline temperature freezing_point(practical_salinity s, range_policy policy = range_policy::published) {
  return freezing_point(s, gauge_pressure{pressure::from_value(0.0)}, policy);
}

}  // namespace tankwright::water
