// SPDX-License-Identifier: BSL-1.0
/// @file
/// How heavy is the water under pressure? TEOS-10 as a polynomial in salinity, temperature and pressure. A tank does
/// not need it (ten metres of water add 0.004 %); it compares with oceanographic software and serves deep shafts.
#pragma once

#include <array>
#include <cmath>

#include <tankwright/core/quantities.hpp>
#include <tankwright/core/required.hpp>
#include <tankwright/core/temperature.hpp>
#include <tankwright/core/units.hpp>
#include <tankwright/water/density.hpp>

namespace tankwright::water {

inline constexpr citation roquet_2015{
    "Roquet F., Madec G., McDougall T.J., Barker P.M.", 2015,
    "Accurate polynomial expressions for the density and specific volume of seawater using the TEOS-10 standard",
    "Ocean Modelling 90:29-43, 75-term polynomial; coefficients as published by the author", standing::secondary};

inline constexpr limits roquet_salinity_limits{
    "absolute salinity", "g/kg", {0.0, 1000.0, edge::closed, edge::open}, {0.0, 42.0}, "Roquet et al. 2015"};
inline constexpr limits conservative_temperature_limits{"conservative temperature", "degC", above_absolute_zero_celsius,
                                                        celsius_range(-2.0, 40.0), "Roquet et al. 2015"};
inline constexpr limits roquet_pressure_limits{"pressure", "dbar", not_negative, {0.0, 8000.0}, "Roquet et al. 2015"};
/// Conservative temperature: potential enthalpy over a fixed heat capacity. The temperature of TEOS-10; within 0.1 K of
/// the thermometer's at the surface, and not to be mixed with it.
class conservative_temperature {
 public:
  constexpr explicit conservative_temperature(temperature value) noexcept : value_{value} {}
  [[nodiscard]] constexpr temperature value() const noexcept { return value_; }

 private:
  temperature value_;
};

/// A state of seawater under pressure.
struct deep_seawater {
  required<absolute_salinity> salinity;
  required<conservative_temperature> temperature;
  required<gauge_pressure> pressure;  ///< above the atmosphere
};

namespace detail {

/// c[0] + c[1] y + c[2] y^2 + ...
template <class T, std::size_t N>
[[nodiscard]] constexpr T polynomial(const std::array<T, N>& c, T y) noexcept {
  T sum = c[N - 1];
  for (std::size_t j = N - 1; j-- > 0;) sum = sum * y + c[j];
  return sum;
}

/// Specific enthalpy [J/kg] that goes with the Gibbs energy sum c[j] y^j, y = t / 40 degC: h = g - T dg/dT.
template <class T, std::size_t N>
[[nodiscard]] constexpr T enthalpy_of(const std::array<T, N>& c, T y) noexcept {
  const T kelvin_per_step = T(273.15L) / T(40) + y;  // T / (40 K)
  T g = c[N - 1];
  T slope = T(0);
  for (std::size_t j = N - 1; j-- > 0;) {
    slope = slope * y + g;
    g = g * y + c[j];
  }
  return g - kelvin_per_step * slope;
}

/// Conservative temperature [degC] of seawater at p = 0: its enthalpy over 3991.86795711963 J/(kg K); sa in g/kg, t in
/// degC (ITS-90). The coefficients g_j and g_ij of the Gibbs function at p = 0, in the papers' order; of the ln x terms
/// (i = 1) the enthalpy keeps nothing.
template <class T>
[[nodiscard]] inline T conservative_temperature_teos10(T sa, T t) noexcept {
  using std::sqrt;
  const T x2 = teos10_sfac<T> * sa;
  const T x = sqrt(x2);
  const T y = t / T(40);
  const std::array<T, 8> g0{T(0.101342743139674e3L),  T(0.590578347909402e1L),  T(-0.123577859330390e5L),
                            T(0.736741204151612e3L),  T(-0.148185936433658e3L), T(0.580259125842571e2L),
                            T(-0.189843846514172e2L), T(0.305081646487967e1L)};
  const std::array<T, 7> g2{T(0.141627648484197e4L),  T(0.168072408311545e3L), T(0.880031352997204e3L),
                            T(-0.225267649263401e3L), T(0.914260447751259e2L), T(-0.216603240875311e2L),
                            T(0.213016970847183e1L)};
  const std::array<T, 5> g3{T(-0.243214662381794e4L), T(-0.493407510141682e3L), T(-0.430664675978042e2L),
                            T(-0.100227370861875e2L), T(0.875600661808945L)};
  const std::array<T, 6> g4{T(0.202580115603697e4L), T(0.543835333000098e3L),  T(-0.685572509204491e2L),
                            T(0.493667694856254e2L), T(-0.171397577419788e2L), T(0.249697009569508e1L)};
  const std::array<T, 2> g5{T(-0.109166841042967e4L), T(-0.196028306689776e3L)};
  const std::array<T, 2> g6{T(0.374601237877840e3L), T(0.367571622995805e2L)};
  const T g7 = T(-0.485891069025409e2L);
  const T enthalpy =
      enthalpy_of(g0, y) +
      x2 * (enthalpy_of(g2, y) +
            x * (enthalpy_of(g3, y) +
                 x * (enthalpy_of(g4, y) + x * (enthalpy_of(g5, y) + x * (enthalpy_of(g6, y) + x * g7)))));
  return enthalpy / T(3991.86795711963L);
}

/// Specific volume [m^3/kg]; sa in g/kg, ct in degC, p in dbar. s^2 = (sa + 24 g/kg) / (40 u_PS), y = ct / 40,
/// z = p / 10^4. One table per power of z, one row per power of y, rising powers of s along a row.
template <class T>
[[nodiscard]] inline T specific_volume_roquet(T sa, T ct, T p) noexcept {
  using std::sqrt;
  const T s = sqrt(teos10_sfac<T> * (sa + T(24)));
  const T y = ct / T(40);
  const T z = p / T(1e4L);
  // The reference profile: z^1 to z^6.
  const std::array<T, 7> profile{T(0),
                                 T(-4.4015007269e-05L),
                                 T(6.9232335784e-06L),
                                 T(-7.5004675975e-07L),
                                 T(1.7009109288e-08L),
                                 T(-1.6884162004e-08L),
                                 T(1.9613503930e-09L)};
  const std::array<T, 7> v0{
      polynomial<T, 7>({T(1.0769995862e-03L), T(-3.1038981976e-04L), T(6.6928067038e-04L), T(-8.5047933937e-04L),
                        T(5.8086069943e-04L), T(-2.1092370507e-04L), T(3.1932457305e-05L)},
                       s),
      polynomial<T, 6>({T(-1.5649734675e-05L), T(3.5009599764e-05L), T(-4.3592678561e-05L), T(3.4532461828e-05L),
                        T(-1.1959409788e-05L), T(1.3864594581e-06L)},
                       s),
      polynomial<T, 5>({T(2.7762106484e-05L), T(-3.7435842344e-05L), T(3.5907822760e-05L), T(-1.8698584187e-05L),
                        T(3.8595339244e-06L)},
                       s),
      polynomial<T, 4>({T(-1.6521159259e-05L), T(2.4141479483e-05L), T(-1.4353633048e-05L), T(2.2863324556e-06L)}, s),
      polynomial<T, 3>({T(6.9111322702e-06L), T(-8.7595873154e-06L), T(4.3703680598e-06L)}, s),
      polynomial<T, 2>({T(-8.0539615540e-07L), T(-3.3052758900e-07L)}, s),
      T(2.0543094268e-07L)};
  const std::array<T, 6> v1{
      polynomial<T, 6>({T(-1.6784136540e-05L), T(2.4262468747e-05L), T(-3.4792460974e-05L), T(3.7470777305e-05L),
                        T(-1.7322218612e-05L), T(3.0927427253e-06L)},
                       s),
      polynomial<T, 5>({T(1.8505765429e-05L), T(-9.5677088156e-06L), T(1.1100834765e-05L), T(-9.8447117844e-06L),
                        T(2.5909225260e-06L)},
                       s),
      polynomial<T, 4>({T(-1.1716606853e-05L), T(-2.3678308361e-07L), T(2.9283346295e-06L), T(-4.8826139200e-07L)}, s),
      polynomial<T, 3>({T(7.9279656173e-06L), T(-3.4558773655e-06L), T(3.1655306078e-07L)}, s),
      polynomial<T, 2>({T(-3.4102187482e-06L), T(1.2956717783e-06L)}, s),
      T(5.0736766814e-07L)};
  const std::array<T, 5> v2{
      polynomial<T, 5>({T(3.0623833435e-06L), T(-5.8484432984e-07L), T(-4.8122251597e-06L), T(4.9263106998e-06L),
                        T(-1.7811974727e-06L)},
                       s),
      polynomial<T, 4>({T(-1.1736386731e-06L), T(-5.5699154557e-06L), T(5.4620748834e-06L), T(-1.3544185627e-06L)}, s),
      polynomial<T, 3>({T(2.1305028740e-06L), T(3.9137387080e-07L), T(-6.5731104067e-07L)}, s),
      polynomial<T, 2>({T(-4.6132540037e-07L), T(7.7618888092e-09L)}, s), T(-6.3352916514e-08L)};
  const std::array<T, 3> v3{polynomial<T, 3>({T(-3.8088938393e-07L), T(3.6310188515e-07L), T(1.6746303780e-08L)}, s),
                            polynomial<T, 2>({T(-3.6527006553e-07L), T(-2.7295696237e-07L)}, s), T(2.8695905159e-07L)};
  const std::array<T, 2> v4{polynomial<T, 2>({T(8.8302421514e-08L), T(-1.1147125423e-07L)}, s), T(3.1454099902e-07L)};
  const std::array<T, 6> by_pressure{polynomial(v0, y), polynomial(v1, y), polynomial(v2, y),
                                     polynomial(v3, y), polynomial(v4, y), T(4.2369007180e-09L)};
  return polynomial(profile, z) + polynomial(by_pressure, z);
}

}  // namespace detail

/// Conservative temperature of seawater at the surface.
///
///   CT = h(S_A, t, p = 0) / c_p0,   h = g - T dg/dT, c_p0 = 3991.86795711963 J/(kg K)
///
/// @param s      absolute salinity S_A [g/kg], 0 to 120
/// @param t      temperature [ITS-90] at the surface (for water from a depth: its potential temperature), -6 to 80 degC
/// @param policy `extrapolate` to go past these ranges
/// @return       conservative temperature
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     1e-10 K against TEOS-10
/// @source       IOC, SCOR and IAPSO 2010 (TEOS-10 manual), section 3.3; Gibbs function of Feistel 2003 and 2008
[[nodiscard]] inline conservative_temperature conservative_temperature_at_surface(
    absolute_salinity s, temperature t, range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::conservative_temperature_at_surface";
  core::check(here, absolute_salinity_limits, in_grams_per_kilogram(s), policy);
  core::check(here, gibbs_temperature_limits, in_celsius(t), policy);
  return conservative_temperature{
      celsius(detail::conservative_temperature_teos10(in_grams_per_kilogram(s), in_celsius(t)))};
}

/// Density of seawater under pressure (TEOS-10, 75-term polynomial).
///
///   1/rho = sum v_ijk s^i y^j z^k,   s^2 = (S_A + 24 g/kg) / (40 u_PS), y = CT / 40 degC, z = p / 10^4 dbar
///
/// @param state  absolute salinity 0 to 42 g/kg; conservative temperature -2 to 40 degC; pressure above the atmosphere
///               0 to 8000 dbar (1 dbar = 10 kPa, about one metre of water)
/// @param policy `extrapolate` to go past these ranges
/// @return       density [kg/m^3]
/// @throws       invalid_input, out_of_range (names the argument, its value and the limits)
/// @accuracy     1e-8 kg/m^3 against the TEOS-10 toolbox; the polynomial itself within 0.001 kg/m^3 of the Gibbs
///               function for states found in the ocean. At the surface `density` is exact and needs no conversion.
/// @source       Roquet et al. 2015, 75-term polynomial
[[nodiscard]] inline mass_density density_at_depth(const deep_seawater& state,
                                                   range_policy policy = range_policy::published) {
  constexpr std::string_view here = "tankwright::water::density_at_depth";
  const double sa = in_grams_per_kilogram(state.salinity.get());
  const double ct = in_celsius(state.temperature.get().value());
  const double p = in_decibars(state.pressure.get().value());
  core::check(here, roquet_salinity_limits, sa, policy);
  core::check(here, conservative_temperature_limits, ct, policy);
  core::check(here, roquet_pressure_limits, p, policy);
  return mass_density::from_value(1.0 / detail::specific_volume_roquet(sa, ct, p));
}

}  // namespace tankwright::water
