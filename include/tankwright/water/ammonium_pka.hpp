// SPDX-License-Identifier: BSL-1.0
/// @file
/// At which pH is half of the ammonia free? The dissociation constant of ammonium in seawater, on each pH scale: Clegg
/// and Whitfield (the default of the library), with two other formulas to compare.
#pragma once

#include <cmath>

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/water/ph.hpp>
#include <tankwright/water/salinity.hpp>

namespace tankwright::water {

inline constexpr citation clegg_whitfield_1995{
    "Clegg S.L., Whitfield M.", 1995,
    "A chemical model of seawater including dissolved ammonia and the stoichiometric dissociation constant of ammonia "
    "in estuarine water and seawater from -2 to 40 degC",
    "Geochimica et Cosmochimica Acta 59:2403-2421, eq. 18 and table 8", standing::secondary};
inline constexpr citation emerson_1975{"Emerson K., Russo R.C., Lund R.E., Thurston R.V.", 1975,
                                       "Aqueous ammonia equilibrium calculations: effect of pH and temperature",
                                       "J. Fish. Res. Board Can. 32:2379-2383", standing::secondary};
inline constexpr citation bell_2008{
    "Bell T.G., Johnson M.T., Jickells T.D., Liss P.S.", 2008,
    "Ammonia/ammonium dissociation coefficient in seawater: a significant numerical correction (corrigendum)",
    "Environ. Chem. 5:258, to 4:183 (2007)", standing::secondary};
inline constexpr citation khoo_1977{"Khoo K.H., Culberson C.H., Bates R.G.", 1977,
                                    "Thermodynamics of the dissociation of ammonium ion in seawater from 5 to 40 degC",
                                    "J. Solution Chem. 6:281-290, the difference form of the abstract"};

inline constexpr limits ammonia_salinity_limits{
    "practical salinity", "", practical_salinity_limits.possible, {0.0, 40.0}, "Clegg and Whitfield 1995"};
inline constexpr limits ammonia_temperature_limits{"temperature", "degC", above_absolute_zero_celsius,
                                                   celsius_range(-2.0, 40.0), "Clegg and Whitfield 1995"};
inline constexpr limits ammonia_fresh_temperature_limits{"temperature", "degC", above_absolute_zero_celsius,
                                                         celsius_range(0.0, 50.0), "Emerson et al. 1975"};

namespace detail {

/// pK* of ammonium on the total scale [mol/kg of water], Clegg and Whitfield 1995; temperature in K.
template <class T>
[[nodiscard]] inline T ammonium_pka_total(T s, T kelvin) noexcept {
  using std::sqrt;
  const T root = sqrt(kelvin);
  const T half = sqrt(s);
  return T(9.244605L) - T(2729.33L) * (T(1) / T(298.15L) - T(1) / kelvin) +
         (T(0.04203362L) - T(11.24742L) / kelvin) * sqrt(half) +
         (T(-13.6416L) + T(1.176949L) * root - T(0.02860785L) * kelvin + T(545.4834L) / kelvin) * half +
         (T(-0.1462507L) + T(0.009022648L) * root - T(1.471361e-4L) * kelvin + T(10.5425L) / kelvin) * half * s +
         (T(0.004669309L) - T(1.691742e-4L) * root - T(0.5677934L) / kelvin) * s * s +
         (T(-2.354039e-5L) + T(0.009698623L) / kelvin) * half * s * s;
}

/// pK* of ammonium on the free scale [mol/kg of water], Clegg and Whitfield 1995; temperature in K.
template <class T>
[[nodiscard]] inline T ammonium_pka_free(T s, T kelvin) noexcept {
  using std::sqrt;
  return T(9.244605L) - T(2729.33L) * (T(1) / T(298.15L) - T(1) / kelvin) +
         (T(0.0500616L) - T(9.412696L) / kelvin - T(2.029559e-7L) * kelvin * kelvin) * sqrt(s) +
         (T(-0.0142372L) + T(1.46041e-5L) * kelvin + T(3.730005L) / kelvin) * s +
         (T(7.1047e-5L) - T(0.0229021L) / kelvin) * s * s + (T(-5.521278e-7L) + T(1.95413e-4L) / kelvin) * s * s * s;
}

/// pKa of ammonium in fresh water, Emerson et al. 1975; temperature in K.
template <class T>
[[nodiscard]] constexpr T ammonium_pka_fresh(T kelvin) noexcept {
  return T(0.09018L) + T(2729.92L) / kelvin;
}

}  // namespace detail

/// Stoichiometric pK* of ammonium on the total scale: the pH at which half of the ammonia is free.
///
///   pK* = pK0 + sum of terms in S^0.25, S^0.5, S^1.5, S^2, S^2.5 with coefficients in T^0.5, T and 1/T
///
/// @param s      practical salinity, 0 to 40
/// @param t      temperature [ITS-90], -2 to 40 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       pK* on the total scale [molal]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     5 % of K*, 0.02 of pK*
/// @source       Clegg and Whitfield 1995
[[nodiscard]] inline ph_total ammonium_pka_total(practical_salinity s, temperature t,
                                                 range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::ammonium_pka_total";
  core::check(here, ammonia_salinity_limits, s.value(), policy);
  core::check(here, ammonia_temperature_limits, in_celsius(t), policy);
  return ph_total{detail::ammonium_pka_total(s.value(), in_kelvins(t))};
}

/// Stoichiometric pK* of ammonium on the free scale: the pH at which half of the ammonia is free.
///
///   pK* = pK0 + sum of terms in S^0.5, S, S^2, S^3 with coefficients in T, T^2 and 1/T
///
/// @param s      practical salinity, 0 to 40
/// @param t      temperature [ITS-90], -2 to 40 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       pK* on the free scale [molal]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     5 % of K*, 0.02 of pK*
/// @source       Clegg and Whitfield 1995
[[nodiscard]] inline ph_free ammonium_pka_free(practical_salinity s, temperature t,
                                               range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::ammonium_pka_free";
  core::check(here, ammonia_salinity_limits, s.value(), policy);
  core::check(here, ammonia_temperature_limits, in_celsius(t), policy);
  return ph_free{detail::ammonium_pka_free(s.value(), in_kelvins(t))};
}

/// Bell et al.'s linear pKa of ammonium in seawater, to compare with the default; near the free scale.
///
///   pKa = 10.0423 - 0.0315536 t + 0.003071 S
///
/// @param s      practical salinity, 0 to 40
/// @param t      temperature [ITS-90], -2 to 40 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       pKa near the free scale
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.04 of pK* against Clegg and Whitfield from 15 to 30 degC at S 30 to 40
/// @source       Bell et al. 2007 with its corrigendum of 2008
[[nodiscard]] constexpr ph_free ammonium_pka_bell(practical_salinity s, temperature t,
                                                  range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::ammonium_pka_bell";
  core::check(here, ammonia_salinity_limits, s.value(), policy);
  core::check(here, ammonia_temperature_limits, in_celsius(t), policy);
  return ph_free{10.0423 - 0.0315536 * in_celsius(t) + 0.003071 * s.value()};
}

/// Khoo et al.'s pKa of ammonium in seawater, to compare with the default; near the free scale.
///
///   pKa = pKa(fresh) + (0.1552 - 0.0003142 t) I,   I = 19.9273 S / (1000 - 1.005109 S)
///
/// @param s      practical salinity, 0 to 40
/// @param t      temperature [ITS-90], -2 to 40 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       pKa near the free scale
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     0.04 of pK* against Clegg and Whitfield from 15 to 30 degC at S 30 to 40
/// @source       Khoo, Culberson and Bates 1977, abstract; fresh water by Emerson et al. 1975
[[nodiscard]] constexpr ph_free ammonium_pka_khoo(practical_salinity s, temperature t,
                                                  range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::ammonium_pka_khoo";
  core::check(here, ammonia_salinity_limits, s.value(), policy);
  core::check(here, ammonia_temperature_limits, in_celsius(t), policy);
  const double ionic_strength = 19.9273 * s.value() / (1000.0 - 1.005109 * s.value());
  return ph_free{detail::ammonium_pka_fresh(in_kelvins(t)) + (0.1552 - 0.0003142 * in_celsius(t)) * ionic_strength};
}

}  // namespace tankwright::water
