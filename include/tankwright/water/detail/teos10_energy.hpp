// SPDX-License-Identifier: BSL-1.0
/// @file
/// The TEOS-10 Gibbs energy of seawater at surface pressure (p = 0 dbar) and what heat needs of it.
///
/// Water part after Feistel 2003 (IAPWS SR7-09), saline part after Feistel 2008 (IAPWS R13-08). Symbols as in
/// teos10.hpp: x^2 = sfac * S_A in g/kg, y = t / 40 with t in ITS-90 degC; energies in J/kg.
#pragma once

#include <cmath>
#include <cstddef>

#include <tankwright/water/detail/teos10.hpp>

namespace tankwright::water::detail {

/// A polynomial in y with its first and second derivative.
template <class T>
struct curve {
  T value = T(0);
  T slope = T(0);
  T bend = T(0);
};

template <class T, std::size_t N>
[[nodiscard]] constexpr curve<T> curve_of(const T (&c)[N], T y) noexcept {
  curve<T> p;
  for (std::size_t k = N; k-- > 0;) {
    p.bend = p.bend * y + T(2) * p.slope;
    p.slope = p.slope * y + p.value;
    p.value = p.value * y + c[k];
  }
  return p;
}

/// Coefficients of y^0, y^1, ... in the paper's order: pure water, and the saline terms in x^2 ln x and x^2 ... x^7.
template <class T>
struct teos10_energy_table {
  static constexpr T water[] = {T(101.342743139674L),  T(5.90578347909402L),  T(-12357.785933039L),
                                T(736.741204151612L),  T(-148.185936433658L), T(58.0259125842571L),
                                T(-18.9843846514172L), T(3.05081646487967L)};
  static constexpr T log[] = {T(5812.81456626732L), T(851.226734946706L)};
  static constexpr T x2[] = {T(1416.27648484197L), T(168.072408311545L),  T(880.031352997204L), T(-225.267649263401L),
                             T(91.4260447751259L), T(-21.6603240875311L), T(2.13016970847183L)};
  static constexpr T x3[] = {T(-2432.14662381794L), T(-493.407510141682L), T(-43.0664675978042L), T(-10.0227370861875L),
                             T(0.875600661808945L)};
  static constexpr T x4[] = {T(2025.80115603697L), T(543.835333000098L),  T(-68.5572509204491L),
                             T(49.3667694856254L), T(-17.1397577419788L), T(2.49697009569508L)};
  static constexpr T x5[] = {T(-1091.66841042967L), T(-196.028306689776L)};
  static constexpr T x6[] = {T(374.60123787784L), T(36.7571622995805L)};
  static constexpr T x7[] = {T(-48.5891069025409L)};
};

/// The Gibbs energy g(x, y) with its derivatives by y.
template <class T>
[[nodiscard]] inline curve<T> teos10_gibbs(T x, T y) noexcept {
  using std::log;
  using table = teos10_energy_table<T>;
  curve<T> g = curve_of(table::water, y);
  const T x2 = x * x;
  const auto add = [&g](const curve<T>& term, T factor) {
    g.value += factor * term.value;
    g.slope += factor * term.slope;
    g.bend += factor * term.bend;
  };
  add(curve_of(table::log, y), x > T(0) ? x2 * log(x) : T(0));  // the limit at x = 0
  add(curve_of(table::x2, y), x2);
  add(curve_of(table::x3, y), x2 * x);
  add(curve_of(table::x4, y), x2 * x2);
  add(curve_of(table::x5, y), x2 * x2 * x);
  add(curve_of(table::x6, y), x2 * x2 * x2);
  add(curve_of(table::x7, y), x2 * x2 * x2 * x);
  return g;
}

/// Specific heat [J/(kg K)]: -T d2g/dT2.
template <class T>
[[nodiscard]] inline T teos10_specific_heat(T x, T y) noexcept {
  return -(T(273.15L) + T(40) * y) * teos10_gibbs(x, y).bend / T(1600);
}

/// Enthalpy [J/kg]: g - T dg/dT. Conservative temperature at the surface is this over 3991.867 957 119 63 J/(kg K).
template <class T>
[[nodiscard]] inline T teos10_enthalpy(T x, T y) noexcept {
  const curve<T> g = teos10_gibbs(x, y);
  return g.value - (T(273.15L) + T(40) * y) * g.slope / T(40);
}

/// What salt takes from the chemical potential of the water [J/kg]: (g - S_A dg/dS_A) less that of pure water. The
/// logarithm cancels.
template <class T>
[[nodiscard]] constexpr T teos10_water_potential_shift(T x, T y) noexcept {
  using table = teos10_energy_table<T>;
  const auto at = [y](const auto& c) { return curve_of(c, y).value; };
  return -x * x *
         (T(0.5L) * at(table::log) +
          x * (T(0.5L) * at(table::x3) +
               x * (at(table::x4) +
                    x * (T(1.5L) * at(table::x5) + x * (T(2) * at(table::x6) + x * T(2.5L) * at(table::x7))))));
}

}  // namespace tankwright::water::detail
