// SPDX-License-Identifier: BSL-1.0
/// @file
/// What comes of mixing waters? Salinity, temperature and volume of any number of waters together.
///
/// Salt, mass and heat are conserved; volume is not quite, and salinity is not the average by volume.
#pragma once

#include <span>
#include <string>
#include <string_view>

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/thin_types.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/water/density.hpp>
#include <tankwright/water/heat.hpp>
#include <tankwright/water/salinity.hpp>

namespace tankwright::water {

/// A water that goes into the blend, by volume.
struct portion {
  std::string_view label{};  ///< names it in an error: "old tank"
  required<tankwright::volume> volume;
  required<practical_salinity> salinity;
  required<tankwright::temperature> temperature;
};

/// A water that goes into the blend, by mass.
struct weighed_portion {
  std::string_view label{};
  required<tankwright::mass> mass;
  required<practical_salinity> salinity;
};

/// The waters together.
struct blended_water {
  practical_salinity salinity;
  tankwright::temperature temperature;
  tankwright::mass mass;
  tankwright::volume volume;
};

inline constexpr limits portion_volume_limits{"volume", "L", not_negative};
inline constexpr limits portion_mass_limits{"mass", "kg", not_negative};

namespace detail {

/// `check`, with the portion's label before the name of the argument.
inline void check_portion(std::string_view function, std::string_view label, limits limit, double value,
                          range_policy policy) {
  if (core::closed_interval(limit, policy).contains(value)) [[likely]]
    return;
  const std::string name = std::string{label}.append(label.empty() ? "" : ": ").append(limit.argument);
  limit.argument = name;
  core::check(function, limit, value, policy);
}

inline void check_some_water(std::string_view function, double kilograms, std::size_t portions) {
  if (!(kilograms > 0.0)) {
    core::fail<invalid_input>(function, "water in all the portions", kilograms, "kg",
                              "is not possible; expected more than 0 kg in " +
                                  core::number_text(static_cast<double>(portions)) + " portions");
  }
}

}  // namespace detail

/// Any number of waters together.
///
///   S = sum M_i S_i / sum M_i,   T = sum M_i c_i T_i / sum M_i c_i,   V = sum M_i / rho(S, T),   M_i = rho_i V_i;
///   c_i halfway between T_i and T
///
/// @param waters volume >= 0, not all zero; practical salinity, 0 to 42; temperature, from freezing to 80 degC
/// @param policy `extrapolate` to go past the published ranges
/// @return       salinity, temperature, mass and volume; no heat is lost to vessel or air
/// @throws       invalid_input, out_of_range (names the portion by its label, the argument, its value and the limits)
/// @accuracy     the balance of salt is exact; temperature 0.07 K at worst from 0 to 80 degC, 0.03 K from 10 to 35: the
///               heat of mixing is left out
/// @source       conservation of mass and heat; density and specific heat by TEOS-10
[[nodiscard]] inline blended_water blend(std::span<const portion> waters,
                                         range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::blend";
  double kilograms = 0.0, salt = 0.0, heat = 0.0, capacity = 0.0;
  for (const portion& water : waters) {
    const double s = water.salinity->value(), t = in_celsius(water.temperature);
    detail::check_portion(here, water.label, portion_volume_limits, in_litres(water.volume), policy);
    detail::check_portion(here, water.label, practical_salinity_limits, s, policy);
    detail::check_portion(here, water.label, gibbs_temperature_limits, t, policy);
    const double m = (density(water.salinity, water.temperature, policy) * water.volume.get()).value();
    const double c = m * specific_heat(water.salinity, water.temperature, policy).value();
    kilograms += m;
    salt += m * s;
    capacity += c;
    heat += c * t;
  }
  detail::check_some_water(here, kilograms, waters.size());
  const practical_salinity s{salt / kilograms};
  temperature t = celsius(heat / capacity);
  for (int i = 0; i < 2; ++i) {  // each brings its heat on the way to t
    capacity = heat = 0.0;
    for (const portion& water : waters) {
      const double own = in_celsius(water.temperature);
      const double m = (density(water.salinity, water.temperature, policy) * water.volume.get()).value();
      const double c = m * specific_heat(water.salinity, celsius(0.5 * (own + in_celsius(t))), extrapolate).value();
      capacity += c;
      heat += c * own;
    }
    t = celsius(heat / capacity);
  }
  const mass m = tankwright::kilograms(kilograms);
  return {s, t, m, m / density(s, t, range_policy::extrapolate)};
}

/// Salinity of any number of weighed waters together.
///
///   S = sum M_i S_i / sum M_i
///
/// @param waters mass >= 0, not all zero; practical salinity, 0 to 42
/// @param policy `extrapolate` to go past practical salinity 42
/// @return       practical salinity
/// @throws       invalid_input, out_of_range (names the portion by its label, the argument, its value and the limits)
/// @accuracy     exact
/// @source       conservation of salt
[[nodiscard]] inline practical_salinity blend(std::span<const weighed_portion> waters,
                                              range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::blend";
  double kilograms = 0.0, salt = 0.0;
  for (const weighed_portion& water : waters) {
    const double m = in_kilograms(water.mass), s = water.salinity->value();
    detail::check_portion(here, water.label, portion_mass_limits, m, policy);
    detail::check_portion(here, water.label, practical_salinity_limits, s, policy);
    kilograms += m;
    salt += m * s;
  }
  detail::check_some_water(here, kilograms, waters.size());
  return practical_salinity{salt / kilograms};
}

}  // namespace tankwright::water
