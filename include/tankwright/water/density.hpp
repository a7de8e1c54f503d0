// SPDX-License-Identifier: BSL-1.0
/// @file
/// How heavy is the water? Density of seawater at the surface from salinity and temperature, by TEOS-10 (the default of
/// the library). The older EOS-80 is in `density_eos80.hpp`.
#pragma once

#include <algorithm>
#include <cmath>
#include <span>

#include <tankwright/core/batch.hpp>
#include <tankwright/core/quantities.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/numerics/root.hpp>
#include <tankwright/water/freezing.hpp>
#include <tankwright/water/kernel.hpp>
#include <tankwright/water/salinity.hpp>

namespace tankwright::water {

inline constexpr citation feistel_2008{
    "Feistel R.", 2008, "A Gibbs function for seawater thermodynamics for -6 to 80 degC and salinity up to 120 g/kg",
    "Deep-Sea Research I 55:1639-1671; first pressure derivative at p = 0"};

/// Temperatures of the Gibbs function. Of these, water below its freezing point is refused too. What is possible is
/// liquid water at the surface, supercooled at most; beyond, the polynomial turns negative.
inline constexpr limits gibbs_temperature_limits{
    "temperature", "degC", {-40.0, 110.0}, celsius_range(-6.0, 80.0), "Feistel 2008"};
/// Densities that salt water can have; a specific gravity is not one.
inline constexpr limits density_limits{"density", "kg/m3", {500.0, 2000.0}};

namespace detail {

/// Absolute salinity [g/kg] of water of density rho, between 0 and `highest`; beyond the ends, the nearer end.
template <class T>
[[nodiscard]] inline T absolute_from_density(T rho, T t, T highest) {
  if (rho <= kernel::density_teos10(T(0), t)) return T(0);
  if (rho >= kernel::density_teos10(highest, t)) return highest;
  return numerics::bracketed_root<T>(
      "tankwright::water::salinity_from_density", "absolute salinity",
      [&](T sa) { return kernel::density_teos10(sa, t) - rho; }, T(0), highest);
}

/// A density, or a number that stands for one, as the caller gave it.
struct density_reading {
  std::string_view function;
  std::string_view argument;
  std::string_view unit;
  double value;
  double density_per_unit;  ///< [kg/m^3] for each 1 of `value`
};

/// Practical salinity behind a density; refuses what lies outside in the caller's terms. A part in 10^12 beyond the
/// ends is rounding.
[[nodiscard]] inline practical_salinity salinity_of(const density_reading& reading, double t, range_policy policy) {
  const double rho = reading.value * reading.density_per_unit;
  const double highest = policy == range_policy::published ? u_ps<double> * practical_salinity_limits.published.high
                                                           : absolute_salinity_limits.published.high;
  const auto refuse_beyond = [&](std::string_view comparison, double end, std::string_view advice = {}) {
    std::string reason{comparison};
    reason.append(" at ").append(core::number_with_unit(t, "degC")).append(", ");
    reason.append(core::number_with_unit(kernel::density_teos10(end, t) / reading.density_per_unit, reading.unit));
    reason.append(advice);
    core::fail<out_of_range>(reading.function, reading.argument, reading.value, reading.unit, reason);
  };
  constexpr double rounding = 1e-12;
  const double fresh = kernel::density_teos10(0.0, t);
  if (!(rho >= fresh * (1.0 - rounding))) refuse_beyond("is less than that of pure water", 0.0);
  if (!(rho <= kernel::density_teos10(highest, t) * (1.0 + rounding))) {
    if (policy == range_policy::extrapolate) refuse_beyond("is more than that of a brine of 120 g/kg", highest);
    refuse_beyond("is more than that of practical salinity 42", highest,
                  "; pass tankwright::extrapolate to go past it");
  }
  const practical_salinity s{within_rounding(absolute_from_density(rho, t, highest) / u_ps<double>)};
  check_liquid(reading.function, s.value(), t, policy);
  return s;
}

}  // namespace detail

/// Density of seawater at the surface, from absolute salinity (TEOS-10).
///
///   rho = 1 / (dg/dp at p = 0),   g the Gibbs function of seawater
///
/// @param s      absolute salinity S_A [g/kg], 0 to 120
/// @param t      temperature [ITS-90], from freezing to 80 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       density [kg/m^3]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.004 kg/m^3 for seawater of standard composition (from memory), 1e-6 kg/m^3 against TEOS-10 itself;
///               a synthetic salt mix departs by about 0.05 kg/m^3; above 40 degC, where the water part of the closed
///               form (IAPWS SR7-09) was not fitted, 0.004 at 63 and 0.08 kg/m^3 at 75 degC
/// @source       Feistel 2008; IOC, SCOR and IAPSO 2010 (TEOS-10 manual), appendices G and H
[[nodiscard]] inline mass_density density(absolute_salinity s, temperature t,
                                          range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::density";
  core::check(here, absolute_salinity_limits, in_grams_per_kilogram(s), policy);
  core::check(here, gibbs_temperature_limits, in_celsius(t), policy);
  detail::check_liquid(here, in_grams_per_kilogram(s) / detail::u_ps<double>, in_celsius(t), policy);
  return mass_density::from_value(kernel::density_teos10(in_grams_per_kilogram(s), in_celsius(t)));
}

/// Density of seawater at the surface, from practical salinity (TEOS-10, reference composition).
///
///   rho(S_A, t) with S_A = u_PS S_P
///
/// @param s      practical salinity, 0 to 42
/// @param t      temperature [ITS-90], from freezing to 80 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       density [kg/m^3]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     as for absolute salinity
/// @source       Feistel 2008; Millero et al. 2008
[[nodiscard]] inline mass_density density(practical_salinity s, temperature t,
                                          range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::density";
  core::check(here, practical_salinity_limits, s.value(), policy);
  core::check(here, gibbs_temperature_limits, in_celsius(t), policy);
  detail::check_liquid(here, s.value(), in_celsius(t), policy);
  return mass_density::from_value(kernel::density_teos10(detail::u_ps<double> * s.value(), in_celsius(t)));
}

/// Density of many samples of seawater at the surface (TEOS-10): element i of the result from element i of both inputs.
///
///   rho(S_A, t) with S_A = u_PS S_P
///
/// @param s      practical salinities, 0 to 42
/// @param t      temperatures [ITS-90], from freezing to 80 degC; as many as `s`
/// @param result densities [kg/m^3]; as many as `s`. May not overlap the inputs. Untouched when the call throws.
/// @param policy `extrapolate` to go past these ranges
/// @throws       invalid_input, out_of_range (for the first bad element)
/// @accuracy     as the scalar function, to 2e-16 relative
/// @source       Feistel 2008; Millero et al. 2008
inline void density(std::span<const practical_salinity> s, std::span<const temperature> t,
                    std::span<mass_density> result, range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::density";
  const std::size_t size = s.size();
  core::check_same_size(here, size, t.size());
  core::check_same_size(here, size, result.size());
  core::check_all(
      here, practical_salinity_limits, size, [&](std::size_t i) { return s[i].value(); }, policy);
  detail::check_all_liquid(
      here, gibbs_temperature_limits, size, [&](std::size_t i) { return s[i].value(); },
      [&](std::size_t i) { return in_celsius(t[i]); }, policy);

  constexpr double x2_per_practical = detail::teos10_sfac<double> * detail::u_ps<double>;
  core::block x{}, x2{}, y{};
  for (std::size_t start = 0; start < size; start += core::block_size) {
    const std::size_t count = std::min(core::block_size, size - start);
    for (std::size_t i = 0; i < count; ++i) {
      x[i] = x2[i] = x2_per_practical * s[start + i].value();
      y[i] = in_celsius(t[start + i]) * 0.025;
    }
    core::square_roots(x);
    for (std::size_t i = 0; i < core::block_size; ++i) {
      x[i] = 1.0 / detail::teos10_specific_volume(x[i], x2[i], y[i]);
    }
    for (std::size_t i = 0; i < count; ++i) result[start + i] = mass_density::from_value(x[i]);
  }
}

/// Practical salinity from a density that was measured at the surface. What a scale shows for a known volume is not yet
/// a density: air bears a part of the water, 1.05 kg/m^3, which is 1.35 in salinity (`density_by_weighing`).
///
///   rho(u_PS S_P, t) = rho, solved for S_P by a bracketed root
///
/// @param rho    density [kg/m^3]; the salinity must come out at 0 to 42
/// @param t      temperature [ITS-90], from freezing to 80 degC
/// @param policy `extrapolate` to go past these ranges, to 120 g/kg
/// @return       practical salinity
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     there and back to 4e-13; 1 kg/m^3 is 1.3 in salinity
/// @source       Feistel 2008; Millero et al. 2008
[[nodiscard]] inline practical_salinity salinity_from_density(mass_density rho, temperature t,
                                                              range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::salinity_from_density";
  core::check(here, density_limits, rho.value(), policy);
  core::check(here, gibbs_temperature_limits, in_celsius(t), policy);
  return detail::salinity_of({here, density_limits.argument, density_limits.unit, rho.value(), 1.0}, in_celsius(t),
                             policy);
}

}  // namespace tankwright::water
