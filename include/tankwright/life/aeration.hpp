// SPDX-License-Identifier: BSL-1.0
/// @file
/// How fast do the surface and the air stones bring oxygen in? One first-order rate for all ways in together.
#pragma once

#include <cmath>
#include <span>
#include <string_view>

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/life/ranges.hpp>

namespace tankwright::life {

inline constexpr citation cole_caraco_1998{"Cole J.J., Caraco N.F.", 1998,
                                           "Atmospheric exchange of carbon dioxide in a low-wind oligotrophic lake",
                                           "Limnology and Oceanography 43:647-656", standing::from_memory};
inline constexpr citation asce_2006{"ASCE/EWRI", 2006, "Measurement of Oxygen Transfer in Clean Water",
                                    "ASCE/EWRI 2-06", standing::from_memory};

/// The velocity with which oxygen crosses an undisturbed surface: 2.07 cm/h without wind.
inline constexpr velocity still_surface_transfer = metres_per_second(0.0207 / 3600.0);

/// A way in for oxygen: an open surface, an air stone, the fall over an overflow.
struct aeration {
  std::string_view label = "aeration";
  area surface = {};                 ///< open surface, with the next
  velocity transfer = {};            ///< transfer velocity k_L of that surface: `still_surface_transfer`
  rate bubbles = {};                 ///< KLa of air stones or falls in this volume at 20 degC
  proportion alpha = fraction(1.0);  ///< KLa here over KLa in clean water: 0.6 to 0.9 where a data sheet is used
};

inline constexpr limits open_surface_limits{"surface", "m2", {0.0, 1e6}};
inline constexpr limits transfer_velocity_limits{"transfer velocity", "cm/h", {0.0, 1e6}};
inline constexpr limits bubbles_limits{"KLa", "1/h", {0.0, 1e5}};
inline constexpr limits alpha_limits{"alpha", "", zero_to_one};

/// Temperature correction of an oxygen transfer coefficient.
///
///   KLa(T) = KLa(20 degC) 1.024^(T - 20)
///
/// @param at_20_celsius KLa at 20 degC >= 0
/// @param water         temperature of the tank
/// @return              KLa at that temperature [1/s]
/// @throws              invalid_input
/// @accuracy            conventional between 10 and 30 degC
/// @source              ASCE/EWRI 2-06 (from memory)
[[nodiscard]] inline rate transfer_at(rate at_20_celsius, temperature water) {
  constexpr std::string_view here = "tankwright::life::transfer_at";
  core::check(here, bubbles_limits, in_per_hour(at_20_celsius));
  core::check(here, water_temperature_limits, in_celsius(water));
  return at_20_celsius * std::pow(1.024, in_celsius(water) - 20.0);
}

/// A tank and the ways in for its oxygen.
struct aerated_tank {
  required<volume> net;  ///< net volume of water
  required<tankwright::temperature> temperature;
  required<std::span<const aeration>> ways;  ///< of an array that outlives the call
};

/// How fast all ways in together pull the water towards saturation.
///
///   k = sum( k_L A / V + alpha KLa(T) )
///
/// @param tank    net volume > 0; temperature; each way in with surface, transfer velocity and KLa >= 0, alpha 0 to 1
/// @return        first-order rate [1/s]
/// @throws        invalid_input (names the way in)
/// @accuracy      exact for the coefficients given; a data sheet's KLa is seldom better than 30 %
/// @source        two-film theory; ASCE/EWRI 2-06 and Cole and Caraco 1998 for the coefficients (from memory)
[[nodiscard]] inline rate aeration_rate(const aerated_tank& tank) {
  constexpr std::string_view here = "tankwright::life::aeration_rate";
  core::check(here, net_volume_limits, in_litres(tank.net));
  core::check(here, water_temperature_limits, in_celsius(tank.temperature));
  rate sum = {};
  for (const aeration& way : tank.ways.get()) {
    core::check_element(here, way.label, open_surface_limits, in_square_metres(way.surface));
    core::check_element(here, way.label, transfer_velocity_limits, way.transfer.value() * 3.6e5);
    core::check_element(here, way.label, bubbles_limits, in_per_hour(way.bubbles));
    core::check_element(here, way.label, alpha_limits, way.alpha.value());
    sum += way.surface * way.transfer / tank.net.get() + transfer_at(way.bubbles, tank.temperature) * way.alpha.value();
  }
  return sum;
}

}  // namespace tankwright::life
