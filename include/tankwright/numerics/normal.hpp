// SPDX-License-Identifier: BSL-1.0
/// @file
/// The normal law: its tail and its quantile.
#pragma once

#include <cmath>
#include <numbers>

#include <tankwright/core/validity.hpp>

namespace tankwright::numerics {

inline constexpr citation wichura_1988{"Wichura M.J.", 1988,
                                       "Algorithm AS 241: The percentage points of the normal distribution",
                                       "Applied Statistics 37:477-484, PPND16", standing::from_memory};

inline constexpr limits probability_limits{"probability", "", {0.0, 1.0, edge::open, edge::open}};

namespace kernel {

/// Probability that a normal number (mean 0, deviation 1) exceeds z.
template <class T>
[[nodiscard]] inline T normal_above(T z) noexcept {
  return T(0.5) * std::erfc(z / std::numbers::sqrt2_v<T>);
}

/// The normal number that is not exceeded with probability p, 0 < p < 1: Wichura's rational functions.
[[nodiscard]] inline double normal_quantile(double p) noexcept {
  const auto ratio = [](const double(&above)[8], const double(&below)[8], double x) {
    double a = above[7], b = below[7];
    for (int i = 6; i >= 0; --i) {
      a = a * x + above[i];
      b = b * x + below[i];
    }
    return a / b;
  };
  constexpr double a[8] = {3.3871328727963666080e0, 1.3314166789178437745e2, 1.9715909503065514427e3,
                           1.3731693765509461125e4, 4.5921953931549871457e4, 6.7265770927008700853e4,
                           3.3430575583588128105e4, 2.5090809287301226727e3};
  constexpr double b[8] = {1.0,
                           4.2313330701600911252e1,
                           6.8718700749205790830e2,
                           5.3941960214247511077e3,
                           2.1213794301586595867e4,
                           3.9307895800092710610e4,
                           2.8729085735721942674e4,
                           5.2264952788528545610e3};
  constexpr double c[8] = {1.42343711074968357734e0,  4.63033784615654529590e0, 5.76949722146069140550e0,
                           3.64784832476320460504e0,  1.27045825245236838258e0, 2.41780725177450611770e-1,
                           2.27238449892691845833e-2, 7.74545014278341407640e-4};
  constexpr double d[8] = {1.0,
                           2.05319162663775882187e0,
                           1.67638483018380384940e0,
                           6.89767334985100004550e-1,
                           1.48103976427480074590e-1,
                           1.51986665636164571966e-2,
                           5.47593808499534494600e-4,
                           1.05075007164441684324e-9};
  constexpr double e[8] = {6.65790464350110377720e0,  5.46378491116411436990e0,  1.78482653991729133580e0,
                           2.96560571828504891230e-1, 2.65321895265761230930e-2, 1.24266094738807843860e-3,
                           2.71155556874348757815e-5, 2.01033439929228813265e-7};
  constexpr double f[8] = {1.0,
                           5.99832206555887937690e-1,
                           1.36929880922735805310e-1,
                           1.48753612908506148525e-2,
                           7.86869131145613259100e-4,
                           1.84631831751005468180e-5,
                           1.42151175831644588870e-7,
                           2.04426310338993978564e-15};
  const double q = p - 0.5;
  if (std::fabs(q) <= 0.425) return q * ratio(a, b, 0.180625 - q * q);
  const double r = std::sqrt(-std::log(q < 0.0 ? p : 1.0 - p));
  const double z = r <= 5.0 ? ratio(c, d, r - 1.6) : ratio(e, f, r - 5.0);
  return q < 0.0 ? -z : z;
}

}  // namespace kernel

/// The probability that a normal number of mean 0 and deviation 1 exceeds z.
///
///   Q(z) = erfc(z / sqrt(2)) / 2
///
/// @param z any finite number
/// @return  probability, 0 to 1
/// @throws  invalid_input (names the argument and its value)
/// @accuracy 1e-15 + 2e-16 z^2 relative
/// @source  the definition
[[nodiscard]] inline double normal_above(double z) {
  core::check("tankwright::numerics::normal_above", {"z", "", core::any_double}, z);
  return kernel::normal_above(z);
}

/// The normal number of mean 0 and deviation 1 that is exceeded with probability 1 - p.
///
///   z with 1 - Q(z) = p
///
/// @param p probability not to be exceeded, between 0 and 1
/// @return  the quantile, -38.5 to 8.3
/// @throws  invalid_input (names the argument and its value)
/// @accuracy 1e-15 relative, 1e-16 absolute near the middle
/// @source  Wichura 1988
[[nodiscard]] inline double normal_quantile(double p) {
  core::check("tankwright::numerics::normal_quantile", probability_limits, p);
  return kernel::normal_quantile(p);
}

}  // namespace tankwright::numerics
