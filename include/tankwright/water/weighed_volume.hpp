// SPDX-License-Identifier: BSL-1.0
/// @file
/// What is the density of the water in a flask that was weighed? A known volume on a kitchen scale is the best home
/// instrument for salinity; the air that the water displaces carries a thousandth of it and counts as 1.5 in salinity.
#pragma once

#include <tankwright/core/estimate.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/water/density.hpp>

namespace tankwright::water {

inline constexpr citation iso_8655_6{"ISO", 2002, "ISO 8655-6: piston-operated volumetric apparatus",
                                     "annex: correction factors Z", standing::secondary};

inline constexpr mass_density air_at_sea_level = kilograms_per_cubic_metre(1.20);
/// What scales are adjusted with, by convention.
inline constexpr mass_density conventional_weights = kilograms_per_cubic_metre(8000.0);

/// A flask full to its mark, on a scale.
struct weighed_volume {
  required<tankwright::volume> volume;
  required<mass> shown;  ///< full less empty, as the scale shows
  proportion volume_error = fraction(0.001);
  mass scale_error = grams(1.0);  ///< of the difference
  mass_density air = air_at_sea_level;
};

inline constexpr limits flask_volume_limits{"volume", "L", {1e-3, 1e5}};
inline constexpr limits flask_mass_limits{"shown", "kg", {1e-6, 1e6}};
inline constexpr limits flask_error_limits{"volume error", "", {0.0, 0.5}};
inline constexpr limits scale_error_limits{"scale error", "kg", {0.0, 1e5}};
inline constexpr limits flask_air_limits{"density of the air", "kg/m3", {0.0, 10.0}};

/// Density of the water in a known volume, from what a scale shows.
///
///   rho = (m/V) (1 - rho_a/rho_w) + rho_a,   rho_w = 8000 kg/m^3
///
/// @param flask volume V [m^3] 1 mL to 100 m^3, known within a part of 0 to 0.5; mass m [kg] 1 mg to 1000 t, known
///              within an error >= 0; air rho_a [kg/m^3] 0 to 10
/// @return      density [kg/m^3]; the band: volume and scale, both at their worst
/// @throws      invalid_input (names the argument, its value and the limits)
/// @accuracy    the band; the flask's own expansion is 1e-5 of it a kelvin
/// @source      Archimedes; conventional mass (OIML D 28)
[[nodiscard]] inline estimate<mass_density> density_by_weighing(const weighed_volume& flask) {
  constexpr std::string_view here = "tankwright::water::density_by_weighing";
  const double v = flask.volume->value(), m = flask.shown->value(), air = flask.air.value();
  core::check(here, flask_volume_limits, in_litres(flask.volume));
  core::check(here, flask_mass_limits, m);
  core::check(here, flask_error_limits, flask.volume_error.value());
  core::check(here, scale_error_limits, flask.scale_error.value());
  core::check(here, flask_air_limits, air);
  const double part = 1.0 - air / conventional_weights.value();
  const auto rho = [&](double mass, double volume) { return mass_density::from_value(mass / volume * part + air); };
  const double e = flask.volume_error.value(), d = flask.scale_error.value();
  return {rho(m > d ? m - d : 0.0, v * (1.0 + e)), rho(m, v), rho(m + d, v * (1.0 - e)),
          "volume of the flask and error of the scale, both at their worst"};
}

}  // namespace tankwright::water
