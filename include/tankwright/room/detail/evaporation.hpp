// SPDX-License-Identifier: BSL-1.0
/// @file
/// The evaporation correlations on raw numbers, in the unit in which most were published: kg per square metre and hour.
#pragma once

#include <cmath>

#include <tankwright/room/air.hpp>
#include <tankwright/water/heat.hpp>

namespace tankwright::room {

namespace detail {

/// What drives vapour across a water surface, raw SI numbers.
template <class T>
struct across {
  T water;     ///< surface temperature [K]
  T air;       ///< air temperature [K]
  T at_water;  ///< vapour pressure at the surface, water activity included [Pa]
  T in_air;    ///< vapour pressure in the air [Pa]
  T total;     ///< air pressure [Pa]
  T speed{};   ///< [m/s]
};

template <class T>
[[nodiscard]] constexpr T dry_air_density(T kelvin, T vapour, T total) noexcept {
  return (total - vapour) / (dry_air_gas_constant<T> * kelvin);
}

/// Shah's evaporation per vapour pressure difference [kg/(m^2 h Pa)]: positive, and smooth through no difference. With
/// W_w - W_r = 0.621945 P (p_w - p_r) / ((P - p_w)(P - p_r)) the difference cancels.
template <class T>
[[nodiscard]] inline T shah_conductance(const across<T>& s) noexcept {
  using std::cbrt;
  const T rho_w = dry_air_density(s.water, s.at_water, s.total);
  const T lighter = dry_air_density(s.air, s.in_air, s.total) - rho_w;
  constexpr T floor = T(5e-5L);
  const T natural =
      T(35) * rho_w * cbrt(lighter) * molar_mass_ratio<T> * s.total / ((s.total - s.at_water) * (s.total - s.in_air));
  return natural > floor ? natural : floor;
}

/// VDI 2089 [kg/(m^2 h Pa)], transfer coefficient in m/h.
template <class T>
[[nodiscard]] constexpr T vdi_conductance(const across<T>& s, T metres_per_hour) noexcept {
  return metres_per_hour / (T(461.52L) * T(0.5L) * (s.water + s.air));
}

/// Latent heat of the water [kJ/kg], T in K: the Y of the correlations.
template <class T>
[[nodiscard]] constexpr T latent_heat_kilojoules(T kelvin) noexcept {
  return T(1e-3L) * water::kernel::latent_heat_of_water(kelvin - T(273.15L));
}

/// Smith et al. 1994 [kg/(m^2 h Pa)].
template <class T>
[[nodiscard]] constexpr T smith_conductance(const across<T>& s, T speed) noexcept {
  return (T(30.6L) + T(32.1L) * speed) / (T(133.322387415L) * latent_heat_kilojoules(s.water));
}

/// Carrier [kg/(m^2 h Pa)].
template <class T>
[[nodiscard]] constexpr T carrier_conductance(const across<T>& s, T speed) noexcept {
  return T(3600) * T(1e-3L) * (T(0.089L) + T(0.0782L) * speed) / latent_heat_kilojoules(s.water);
}

/// Diffusivity of water vapour in air [m^2/s], T in K, p in Pa (Marrero and Mason).
template <class T>
[[nodiscard]] inline T vapour_diffusivity(T kelvin, T total) noexcept {
  using std::pow;
  return T(1.87e-10L) * pow(kelvin, T(2.072L)) / (total / T(101325));
}

/// The analogy [kg/(m^2 h)] with a given diffusivity; zero where the air over the water is stable.
template <class T>
[[nodiscard]] inline T analogy_rate(const across<T>& s, T diffusivity) noexcept {
  using std::cbrt;
  using std::sqrt;
  const auto moist = [&](T kelvin, T vapour) {
    return dry_air_density(kelvin, vapour, s.total) * (T(1) + humidity_ratio(vapour, s.total));
  };
  const T rho_s = moist(s.water, s.at_water);
  const T rho_r = moist(s.air, s.in_air);
  if (!(rho_r > rho_s)) return T(0);
  // Viscosity of air by Sutherland's formula.
  const T film = T(0.5L) * (s.water + s.air);
  const T mu = T(1.716e-5L) * (film / T(273.15L)) * sqrt(film / T(273.15L)) * T(383.55L) / (film + T(110.4L));
  const T transfer = T(0.15L) * diffusivity * cbrt(T(9.80665L) * (rho_r - rho_s) / (mu * diffusivity));  // m/s
  return T(3600) * transfer * molar_mass_ratio<T> / dry_air_gas_constant<T> * (s.at_water / s.water - s.in_air / s.air);
}

/// Rafferty's pond [kg/(m^2 h)] in the units of the paper: psi, degF, ft/s.
template <class T>
[[nodiscard]] constexpr T rafferty_rate(T psi, T fahrenheit, T feet_per_second) noexcept {
  const T pounds =
      (T(1) + T(0.225L) * feet_per_second) / T(0.018L) * psi * T(144) / (T(85.74L) * (fahrenheit + T(460)));
  return pounds * T(0.45359237L) / T(0.09290304L);
}

}  // namespace detail
}  // namespace tankwright::room
