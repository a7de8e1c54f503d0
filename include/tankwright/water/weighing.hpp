// SPDX-License-Identifier: BSL-1.0
/// @file
/// How dense is the water, by weighing a known volume of it? A scale that is calibrated with weights of steel shows
/// less than the mass of water, because air bears more of the water than of the steel.
#pragma once

#include <tankwright/core/required.hpp>
#include <tankwright/water/density.hpp>

namespace tankwright::water {

inline constexpr citation oiml_d28{"OIML", 2004, "D 28, Conventional value of the result of weighing in air",
                                   "weights of 8000 kg/m3, air of 1.2 kg/m3", standing::from_memory};

/// A known volume on a scale.
struct weighed_water {
  required<mass> shown;                 ///< by the scale, without the vessel
  required<tankwright::volume> volume;  ///< at the water's temperature: of a flask that was filled to its mark
  mass_density air = kilograms_per_cubic_metre(1.2);         ///< around it; 0 for a weighing in a vacuum
  mass_density weights = kilograms_per_cubic_metre(8000.0);  ///< that the scale was calibrated with
};

inline constexpr limits weighed_mass_limits{"shown", "kg", {0.0, 1e6, edge::open}};
inline constexpr limits weighed_volume_limits{"volume", "L", {0.0, 1e6, edge::open}};
inline constexpr limits weighing_air_limits{"air", "kg/m3", {0.0, 10.0}};
inline constexpr limits weights_limits{"weights", "kg/m3", {500.0, 25000.0}};

/// Density of water by weighing a known volume of it in air.
///
///   rho = (m/V) (1 - a/w) + a,   a the density of air, w that of the weights
///
/// @param weighed mass shown [kg] > 0; volume [m^3] > 0; air [kg/m^3] 0 to 10; weights [kg/m^3] 500 to 25000
/// @return        density [kg/m^3]
/// @throws        invalid_input (names the argument, its value and the limits)
/// @accuracy      exact; air between 1.1 and 1.3 kg/m^3 is 0.1 kg/m^3, which is 0.13 in salinity; a flask good to 0.1 %
///                is 1 kg/m^3
/// @source        equilibrium of forces; OIML D 28 for the weights
[[nodiscard]] inline mass_density density_from_weighing(const weighed_water& weighed) {
  constexpr std::string_view here = "tankwright::water::density_from_weighing";
  core::check(here, weighed_mass_limits, in_kilograms(weighed.shown));
  core::check(here, weighed_volume_limits, in_litres(weighed.volume));
  core::check(here, weighing_air_limits, weighed.air.value());
  core::check(here, weights_limits, weighed.weights.value());
  const double shown = (weighed.shown.get() / weighed.volume.get()).value();
  return mass_density::from_value(shown * (1.0 - weighed.air.value() / weighed.weights.value()) + weighed.air.value());
}

}  // namespace tankwright::water
