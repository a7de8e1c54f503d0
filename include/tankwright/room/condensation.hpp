// SPDX-License-Identifier: BSL-1.0
/// @file
/// Will the window drip, will the wall grow mould? The temperature of the inside of a wall or pane against the dew
/// point of the room, and the humidity that the room may have.
#pragma once

#include <algorithm>

#include <tankwright/core/estimate.hpp>
#include <tankwright/room/moist_air.hpp>

namespace tankwright::room {

inline constexpr citation iso_13788{
    "ISO", 2012,
    "ISO 13788, Hygrothermal performance of building components: surface temperature to avoid critical humidity",
    "surface humidity of 80 %, via BS 5250 annex D and DIN 4108-2", standing::secondary};

/// Resistance between room air and surface: glass, and walls without furniture.
inline constexpr thermal_resistance glazing_surface_resistance = square_metre_kelvins_per_watt(0.13);
/// The same for judging mould on walls, corners and behind curtains (from memory, ISO 13788).
inline constexpr thermal_resistance mould_surface_resistance = square_metre_kelvins_per_watt(0.25);
/// Surface humidity at which mould grows when it lasts for days.
inline constexpr relative_humidity mould_humidity = relative_humidity::from_percent(80.0);
inline constexpr relative_humidity dripping_humidity = relative_humidity::from_percent(100.0);

/// A plane pane or wall between the room and outdoors.
struct building_element {
  required<thermal_transmittance> transmittance;  ///< U-value, surface resistances included
  required<tankwright::temperature> inside;
  required<tankwright::temperature> outside;
  thermal_resistance surface_resistance = glazing_surface_resistance;
};

/// What a surface does in the air of the room.
struct surface_verdict {
  tankwright::temperature surface;
  tankwright::temperature dew_point;  ///< of the room air
  temperature_difference margin;      ///< surface above dew point; negative: it drips
  relative_humidity humidity;         ///< at the surface; 1 where it drips
  bool drips;
  bool mould;  ///< 80 % or more at the surface: mould, when it lasts
  tankwright::caution caution;
};

inline constexpr caution mould_caution{
    "Mould and moisture in walls are a matter of health and of the building. Frames, corners and walls behind cabinets "
    "or tanks are colder than the plane surface computed here, and 80 % is a mean over a month. Have a building "
    "professional judge a wall; keep dripping water away from electricity."};

inline constexpr limits transmittance_limits{"transmittance", "W/(m2 K)", {1e-6, 1e5}};
inline constexpr limits surface_resistance_limits{"surface resistance", "m2 K/W", {0.0, 1e3}};
inline constexpr limits temperature_factor_limits{"temperature factor", "", zero_to_one};
inline constexpr limits surface_humidity_limits{"surface humidity", "", {1e-6, 1.0}};

namespace detail {

/// f_Rsi of a plane element.
[[nodiscard]] inline double checked_factor(std::string_view function, const building_element& e) {
  const double u = e.transmittance.get().value();
  core::check(function, transmittance_limits, u);
  core::check(function, surface_resistance_limits, e.surface_resistance.value());
  const double factor = 1.0 - u * e.surface_resistance.value();
  if (!(factor >= 0.0)) {
    core::fail<invalid_input>(function, transmittance_limits.argument, u, "W/(m2 K)",
                              "leaves nothing for the wall: the surface resistance alone, " +
                                  core::number_with_unit(e.surface_resistance.value(), "m2 K/W") +
                                  ", is more than 1/U");
  }
  core::check(function, {"inside temperature", "degC", possible_surroundings}, in_celsius(e.inside));
  core::check(function, {"outside temperature", "degC", possible_surroundings}, in_celsius(e.outside));
  return factor;
}

[[nodiscard]] inline double surface_kelvin(std::string_view function, const building_element& e) {
  const double factor = checked_factor(function, e);
  return in_kelvins(e.outside) + factor * (in_kelvins(e.inside) - in_kelvins(e.outside));
}

}  // namespace detail

/// Temperature factor of a plane pane or wall: how much of the way from outdoors to the room its inside face has.
///
///   f_Rsi = 1 - U R_si
///
/// @param e  transmittance U [W/(m^2 K)] > 0; surface resistance R_si [m^2 K/W] >= 0, at most 1/U
/// @return   temperature factor, 0 to 1
/// @throws   invalid_input
/// @accuracy plane elements; frames and corners are lower by 0.1 to 0.3
/// @source   ISO 13788
[[nodiscard]] inline proportion temperature_factor(const building_element& e) {
  return fraction(detail::checked_factor("tankwright::room::temperature_factor", e));
}

/// Temperature of the inside face of a plane pane or wall.
///
///   T_si = T_i - U R_si (T_i - T_e)
///
/// @param e  transmittance U [W/(m^2 K)] > 0; surface resistance R_si [m^2 K/W] >= 0, at most 1/U; temperatures
/// @return   temperature
/// @throws   invalid_input
/// @accuracy plane elements in steady weather
/// @source   ISO 13788
[[nodiscard]] inline temperature surface_temperature(const building_element& e) {
  return kelvins(detail::surface_kelvin("tankwright::room::surface_temperature", e));
}

/// Whether the inside of a pane or wall drips, or can grow mould, in the air of the room.
///
///   drips: T_si < T_dew;   mould: p / p_sat(T_si) >= 0.8 for several days
///
/// @param e      the pane or wall, as for surface_temperature; its inside temperature is that of the air
/// @param a      the air of the room: relative humidity above 0 to 1
/// @param policy `extrapolate` to go past the range of the saturation pressure
/// @return       surface temperature, dew point, margin, surface humidity, verdicts
/// @throws       invalid_input (also when the two inside temperatures differ), out_of_range, no_convergence
/// @accuracy     plane elements in steady weather
/// @source       ISO 13788, with the saturation pressure of Hyland and Wexler
[[nodiscard]] inline surface_verdict judge_surface(const building_element& e, const air& a,
                                                   range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::judge_surface";
  const double surface = detail::surface_kelvin(here, e);
  if (!(std::fabs(in_kelvins(e.inside) - in_kelvins(a.temperature)) <= 1e-6)) {
    core::fail<invalid_input>(here, "inside temperature", in_celsius(e.inside), "degC",
                              "is not that of the air, " + core::number_with_unit(in_celsius(a.temperature), "degC"));
  }
  const temperature dew = dew_point(a, policy);
  const double vapour = vapour_pressure(a, policy).value();
  const double humidity = vapour / detail::saturation_pressure(surface);
  const bool drips = humidity > 1.0;
  return {.surface = kelvins(surface),
          .dew_point = dew,
          .margin = kelvin_steps(surface - in_kelvins(dew)),
          .humidity = relative_humidity::from_fraction(std::min(1.0, humidity)),
          .drips = drips,
          .mould = humidity >= mould_humidity.value(),
          .caution = mould_caution};
}

/// The highest humidity the room may have before its pane or wall reaches a surface humidity: 100 % drips, 80 % grows
/// mould.
///
///   phi = phi_surface p_sat(T_si) / p_sat(T_i)
///
/// @param e       the pane or wall, as for surface_temperature
/// @param surface humidity allowed at the surface, above 0 to 1: dripping_humidity or mould_humidity
/// @param policy  `extrapolate` to go past the range of the saturation pressure
/// @return        relative humidity of the room, at most 1
/// @throws        invalid_input, out_of_range
/// @accuracy      plane elements in steady weather; allow 5 points
/// @source        ISO 13788, with the saturation pressure of Hyland and Wexler
[[nodiscard]] inline relative_humidity highest_humidity(const building_element& e,
                                                        relative_humidity surface = dripping_humidity,
                                                        range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::highest_humidity";
  const double face = detail::surface_kelvin(here, e);
  core::check(here, surface_humidity_limits, surface.value());
  constexpr interval range = saturation_temperature_limits.published;
  core::check(here, {"inside temperature", "degC", possible_surroundings, range}, in_celsius(e.inside), policy);
  const double humidity =
      surface.value() * detail::saturation_pressure(face) / detail::saturation_pressure(in_kelvins(e.inside));
  return relative_humidity::from_fraction(std::min(1.0, humidity));
}

/// The lowest temperature a surface may have in the air of the room for a given surface humidity.
///
///   p_sat(T) = phi p_sat(T_i) / phi_surface
///
/// @param a       the air of the room: relative humidity above 0 to 1
/// @param surface humidity allowed at the surface, above 0 to 1: dripping_humidity or mould_humidity
/// @param policy  `extrapolate` to go past the range of the saturation pressure
/// @return        temperature
/// @throws        invalid_input, out_of_range, no_convergence
/// @accuracy      0.05 K against the rounded figure of DIN 4108-2
/// @source        ISO 13788, with the saturation pressure of Hyland and Wexler
[[nodiscard]] inline temperature lowest_surface_temperature(const air& a, relative_humidity surface = mould_humidity,
                                                            range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::lowest_surface_temperature";
  core::check(here, surface_humidity_limits, surface.value());
  const pressure vapour = vapour_pressure(a, policy);
  return saturation_temperature(vapour / surface.value(), policy);
}

/// The lowest temperature factor a pane or wall may have in the air of the room for a given surface humidity.
///
///   f_Rsi = (T_si - T_e) / (T_i - T_e)
///
/// @param a       the air of the room: relative humidity above 0 to 1
/// @param outside temperature outdoors, below that of the room
/// @param surface humidity allowed at the surface, above 0 to 1: dripping_humidity or mould_humidity
/// @param policy  `extrapolate` to go past the range of the saturation pressure
/// @return        temperature factor; a plane element has it with U = (1 - f) / R_si
/// @throws        invalid_input (also when it is no colder outdoors, or the air too moist for any wall), out_of_range
/// @accuracy      the rule 0.70 is for 20 degC, 50 % and -5 degC; this one is for the room as it is
/// @source        ISO 13788; DIN 4108-2
[[nodiscard]] inline proportion lowest_temperature_factor(const air& a, temperature outside,
                                                          relative_humidity surface = mould_humidity,
                                                          range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::room::lowest_temperature_factor";
  core::check(here, {"outside temperature", "degC", possible_surroundings}, in_celsius(outside));
  const double inside = in_kelvins(a.temperature);
  if (!(in_kelvins(outside) < inside)) {
    core::fail<invalid_input>(
        here, "outside temperature", in_celsius(outside), "degC",
        "is not below the room's, " + core::number_with_unit(inside - 273.15, "degC") + ": no wall is cooled");
  }
  const double needed = in_kelvins(lowest_surface_temperature(a, surface, policy));
  if (!(needed <= inside)) {
    core::fail<invalid_input>(
        here, relative_humidity_limits.argument, a.humidity.get().value(), "",
        "is above what any surface may have, " + core::number_text(surface.value()) + ": dry the air first");
  }
  return fraction(std::max(0.0, (needed - in_kelvins(outside)) / (inside - in_kelvins(outside))));
}

}  // namespace tankwright::room
