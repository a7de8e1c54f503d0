// SPDX-License-Identifier: BSL-1.0
/// @file
/// The TEOS-10 Gibbs function of seawater at surface pressure (p = 0 dbar), reduced to what a tank needs.
///
/// At p = 0 the pressure terms vanish, so the specific volume is a closed form in absolute salinity and ITS-90
/// temperature: the first pressure derivative of the water part (Feistel 2003) and of the saline part (Feistel 2008).
/// Symbols: sa = S_A in g/kg, t = ITS-90 degC, x^2 = sa / (40 * 35.16504/35), y = t / 40.
#pragma once

namespace tankwright::water::detail {

/// 1 / (40 g/kg * u_PS), u_PS = 35.16504/35: the reduction factor of the salinity variable x^2.
template <class T>
inline constexpr T teos10_sfac = T(0.0248826675584615L);

/// Specific volume [m^3/kg] from x = sqrt(x2), x2 = sfac * sa, y = t/40. Coefficients in the paper's order.
template <class T>
[[nodiscard]] constexpr T teos10_specific_volume(T x, T x2, T y) noexcept {
  const T water =
      T(100015.695367145L) +
      y * (T(-270.983805184062L) +
           y * (T(1455.0364540468L) +
                y * (T(-672.50778314507L) +
                     y * (T(397.968445406972L) +
                          y * (T(-194.618310617595L) + y * (T(63.5113936641785L) + y * T(-9.63108119393062L)))))));

  const T saline =
      x2 *
      (T(-3310.49154044839L) +
       x * (T(199.459603073901L) + x * (T(-54.7919133532887L) + T(36.0284195611086L) * x + T(-22.6683558512829L) * y) +
            y * (T(-175.292041186547L) +
                 y * (T(383.058066002476L) + y * (T(-460.319931801257L) + y * T(234.565187611355L))))) +
       y * (T(729.116529735046L) +
            y * (T(-860.764303783977L) + y * (T(694.244814133268L) + y * T(-297.728741987187L)))));

  return (water + saline) * T(1e-8L);
}

}  // namespace tankwright::water::detail
