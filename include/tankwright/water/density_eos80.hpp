// SPDX-License-Identifier: BSL-1.0
/// @file
/// How heavy is the water by the older equation of state, EOS-80? For comparing with tables and instruments of 1981 to
/// 2010; `density.hpp` is the default of the library. Values from such tables go with `ipts68_celsius(t)`.
#pragma once

#include <cmath>

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/water/freezing.hpp>
#include <tankwright/water/salinity.hpp>

namespace tankwright::water {

inline constexpr citation millero_poisson_1981{
    "Millero F.J., Poisson A.", 1981, "International one-atmosphere equation of state of seawater",
    "Deep-Sea Research 28A:625-629; as in Fofonoff and Millard 1983, eqs 13-14"};

inline constexpr limits eos80_temperature_limits{"temperature", "degC", above_absolute_zero_celsius,
                                                 celsius_range(-2.0, 40.0), "Millero and Poisson 1981"};

namespace detail {

/// Standard Mean Ocean Water [kg/m^3] at one atmosphere; t in degC (IPTS-68).
template <class T>
[[nodiscard]] constexpr T density_smow(T t) noexcept {
  return T(999.842594L) +
         t * (T(6.793952e-2L) +
              t * (T(-9.095290e-3L) + t * (T(1.001685e-4L) + t * (T(-1.120083e-6L) + t * T(6.536332e-9L)))));
}

/// Seawater [kg/m^3] at one atmosphere; s = S_P, t in degC (IPTS-68).
template <class T>
[[nodiscard]] inline T density_eos80(T s, T t) noexcept {
  using std::sqrt;
  const T a = T(8.24493e-1L) + t * (T(-4.0899e-3L) + t * (T(7.6438e-5L) + t * (T(-8.2467e-7L) + t * T(5.3875e-9L))));
  const T b = T(-5.72466e-3L) + t * (T(1.0227e-4L) + t * T(-1.6546e-6L));
  const T c = T(4.8314e-4L);
  return density_smow(t) + s * (a + b * sqrt(s) + c * s);
}

}  // namespace detail

/// Density of seawater at the surface by the one-atmosphere equation of state of 1980.
///
///   rho = rho_w + A S + B S^1.5 + C S^2,   rho_w, A, B, C polynomials in t68
///
/// @param s      practical salinity S, 0 to 42
/// @param t      temperature [ITS-90; converted to IPTS-68 inside], from freezing to 40 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       density [kg/m^3]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     standard error of the fit 0.0036 kg/m^3 (from memory); its pure water is 0.001 to 0.002 kg/m^3 lighter
///               than the IAPWS value
/// @source       Millero and Poisson 1981; Fofonoff and Millard 1983, eqs 13-14
[[nodiscard]] inline mass_density density_eos80(practical_salinity s, temperature t,
                                                range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::density_eos80";
  core::check(here, practical_salinity_limits, s.value(), policy);
  core::check(here, eos80_temperature_limits, in_celsius(t), policy);
  detail::check_liquid(here, s.value(), in_celsius(t), policy);
  return mass_density::from_value(detail::density_eos80(s.value(), core::t68_from_t90(in_celsius(t))));
}

/// Density of pure water (Standard Mean Ocean Water) at the surface, as EOS-80 has it.
///
///   rho_w, a polynomial of degree five in t68
///
/// @param t      temperature [ITS-90; converted to IPTS-68 inside], 0 to 40 degC
/// @param policy `extrapolate` to go past this range
/// @return       density [kg/m^3]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.001 to 0.002 kg/m^3 below the IAPWS value
/// @source       Fofonoff and Millard 1983, eq. 14
[[nodiscard]] inline mass_density pure_water_density_eos80(temperature t,
                                                           range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::pure_water_density_eos80";
  core::check(here, eos80_temperature_limits, in_celsius(t), policy);
  detail::check_liquid(here, 0.0, in_celsius(t), policy);
  return mass_density::from_value(detail::density_smow(core::t68_from_t90(in_celsius(t))));
}

}  // namespace tankwright::water
