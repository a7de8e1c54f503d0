// SPDX-License-Identifier: BSL-1.0
/// @file
/// How strongly does this water bend light? Refractive index of seawater from salinity, temperature and colour, and the
/// salinity behind it. What a hand refractometer makes of it is in `refractometer.hpp`.
#pragma once

#include <cmath>

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/water/salinity.hpp>

namespace tankwright::water {

inline constexpr citation millard_seaver_1990{
    "Millard R.C., Seaver G.", 1990,
    "An index of refraction algorithm for seawater over temperature, pressure, salinity, density, and wavelength",
    "Deep-Sea Research 37:1909-1926, the terms without pressure; coefficients from reproductions", standing::secondary};
inline constexpr citation quan_fry_1995{
    "Quan X., Fry E.S.", 1995, "Empirical equation for the index of refraction of seawater",
    "Applied Optics 34:3477-3480, eq. 3; coefficients from reproductions", standing::secondary};

/// The yellow of sodium, for which a refractometer is made.
inline constexpr length sodium_d = nanometres(589.26);

inline constexpr limits millard_seaver_salinity_limits{
    "practical salinity", "", practical_salinity_limits.possible, {0.0, 43.0}, "Millard and Seaver 1990"};
inline constexpr limits millard_seaver_temperature_limits{"temperature", "degC", above_absolute_zero_celsius,
                                                          celsius_range(0.0, 30.0), "Millard and Seaver 1990"};
inline constexpr limits millard_seaver_wavelength_limits{
    "wavelength", "nm", positive, {500.0 - 1e-9, 700.0 + 1e-9}, "Millard and Seaver 1990"};
inline constexpr limits quan_fry_salinity_limits{
    "practical salinity", "", practical_salinity_limits.possible, {0.0, 35.0}, "Quan and Fry 1995"};
inline constexpr limits quan_fry_temperature_limits{"temperature", "degC", above_absolute_zero_celsius,
                                                    celsius_range(0.0, 30.0), "Quan and Fry 1995"};
inline constexpr limits quan_fry_wavelength_limits{
    "wavelength", "nm", positive, {400.0 - 1e-9, 700.0 + 1e-9}, "Quan and Fry 1995"};
/// Indices that water can have in visible light; a salinity or a specific gravity is not one.
inline constexpr limits refractive_index_limits{"refractive index", "", {1.2, 1.6}};

/// Refractive index relative to air at the temperature of the water.
class refractive_index : public core::scalar<refractive_index> {
  using scalar::scalar;
};

/// Light of one colour in seawater.
struct lit_seawater {
  required<practical_salinity> salinity;
  required<tankwright::temperature> temperature;
  length wavelength = sodium_d;
};

/// A measured index.
struct refraction {
  required<refractive_index> index;
  required<tankwright::temperature> temperature;
  length wavelength = sodium_d;
};

namespace detail {

/// Index of pure water at atmospheric pressure (N_I of Millard and Seaver); t in degC, l in micrometres.
template <class T>
[[nodiscard]] constexpr T millard_seaver_water(T t, T l) noexcept {
  const T l2 = l * l;
  return T(1.3280657L) - T(4.5536802e-3L) * l2 + T(2.5471707e-3L) / l2 + T(7.501966e-6L) / (l2 * l2) +
         T(2.802632e-6L) / (l2 * l2 * l2) +
         t * (T(-5.2883907e-6L) + t * (T(-3.0738272e-6L) + t * (T(3.0124687e-8L) - T(2.0883178e-10L) * t))) +
         l * t * (T(1.0508621e-5L) + t * (T(2.1282248e-7L) - T(1.705881e-9L) * t));
}

/// What each unit of salinity adds to it (N_II).
template <class T>
[[nodiscard]] constexpr T millard_seaver_per_salinity(T t, T l) noexcept {
  return T(1.9029121e-4L) + T(2.4239607e-6L) / (l * l) +
         t * (T(-7.3960297e-7L) + t * (T(8.9818478e-9L) + T(1.2078804e-10L) * t)) - T(3.589495e-7L) * t * l;
}

/// Index of seawater by Quan and Fry; t in degC, nm in nanometres.
template <class T>
[[nodiscard]] constexpr T quan_fry(T s, T t, T nm) noexcept {
  return T(1.31405L) + (T(1.779e-4L) - T(1.05e-6L) * t + T(1.6e-8L) * t * t) * s - T(2.02e-6L) * t * t +
         (T(15.868L) + T(0.01155L) * s - T(0.00423L) * t) / nm - T(4382.0L) / (nm * nm) + T(1.1455e6L) / (nm * nm * nm);
}

}  // namespace detail

/// Refractive index of seawater at the surface by Millard and Seaver, the default of the library.
///
///   n = N_I(t, l) + S N_II(t, l),   l the wavelength
///
/// @param water  practical salinity S 0 to 43; temperature [ITS-90] 0 to 30 degC; wavelength 500 to 700 nm (sodium
///               light when not said)
/// @param policy `extrapolate` to go past these ranges
/// @return       refractive index relative to air at the temperature of the water
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     4e-7 for pure water, 5e-6 for seawater as published; against IAPWS R9-97 for pure water 3.5e-6 in
///               sodium light, 1e-5 from 500 to 700 nm
/// @source       Millard and Seaver 1990, terms without pressure
[[nodiscard]] inline refractive_index refractive_index_millard_seaver(const lit_seawater& water,
                                                                      range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::refractive_index_millard_seaver";
  const double s = water.salinity.get().value();
  const double t = in_celsius(water.temperature);
  const double nm = in_nanometres(water.wavelength);
  core::check(here, millard_seaver_salinity_limits, s, policy);
  core::check(here, millard_seaver_temperature_limits, t, policy);
  core::check(here, millard_seaver_wavelength_limits, nm, policy);
  const double l = nm * 1e-3;
  return refractive_index{detail::millard_seaver_water(t, l) + s * detail::millard_seaver_per_salinity(t, l)};
}

/// Refractive index of seawater at the surface by Quan and Fry: ten terms, and blue light too.
///
///   n = n0 + (n1 + n2 t + n3 t^2) S + n4 t^2 + (n5 + n6 S + n7 t)/l + n8/l^2 + n9/l^3
///
/// @param water  practical salinity S 0 to 35; temperature [ITS-90] 0 to 30 degC; wavelength 400 to 700 nm (sodium
///               light when not said)
/// @param policy `extrapolate` to go past these ranges
/// @return       refractive index relative to air at the temperature of the water
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     1.5e-5 (from memory); within 2.5e-5 of Millard and Seaver in sodium light
/// @source       Quan and Fry 1995, eq. 3
[[nodiscard]] inline refractive_index refractive_index_quan_fry(const lit_seawater& water,
                                                                range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::refractive_index_quan_fry";
  const double s = water.salinity.get().value();
  const double t = in_celsius(water.temperature);
  const double nm = in_nanometres(water.wavelength);
  core::check(here, quan_fry_salinity_limits, s, policy);
  core::check(here, quan_fry_temperature_limits, t, policy);
  core::check(here, quan_fry_wavelength_limits, nm, policy);
  return refractive_index{detail::quan_fry(s, t, nm)};
}

/// Practical salinity from the refractive index of the water.
///
///   S = (n - N_I(t, l)) / N_II(t, l)
///
/// @param light  index n relative to air, whose salinity must come out at 0 to 43; temperature [ITS-90] 0 to 30 degC;
///               wavelength 500 to 700 nm (sodium light when not said)
/// @param policy `extrapolate` to go past these ranges
/// @return       practical salinity
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.03 for the formula; 0.0001 in the index is 0.55 in salinity, one kelvin 0.6
/// @source       Millard and Seaver 1990, terms without pressure
[[nodiscard]] inline practical_salinity salinity_from_refractive_index(const refraction& light,
                                                                       range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::salinity_from_refractive_index";
  const double n = light.index.get().value();
  const double t = in_celsius(light.temperature);
  const double nm = in_nanometres(light.wavelength);
  core::check(here, refractive_index_limits, n, policy);
  core::check(here, millard_seaver_temperature_limits, t, policy);
  core::check(here, millard_seaver_wavelength_limits, nm, policy);
  const double l = nm * 1e-3;
  const double water = detail::millard_seaver_water(t, l);
  // The index carries 2e-16, which is 1e-12 in salinity: digits that small are noise and would refuse pure water.
  const double s = std::round((n - water) / detail::millard_seaver_per_salinity(t, l) * 1e11) * 1e-11;
  if (s < 0.0) {
    core::fail<out_of_range>(
        here, refractive_index_limits.argument, n, "",
        "is less than that of pure water at " + core::number_with_unit(t, "degC") + ", " + core::number_text(water));
  }
  core::check(here, millard_seaver_salinity_limits, s, policy);
  return practical_salinity{s};
}

}  // namespace tankwright::water
