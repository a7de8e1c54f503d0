// SPDX-License-Identifier: BSL-1.0
/// @file
/// Student's t distribution: its tail, its density and its quantile.
///
/// Boost.Math has them too and would add the compile time of the whole umbrella again; these lines are held against it
/// in the tests.
#pragma once

#include <cmath>
#include <limits>
#include <numbers>

#include <tankwright/core/measured.hpp>
#include <tankwright/numerics/normal.hpp>

namespace tankwright::numerics {

inline constexpr citation hill_1970{"Hill G.W.", 1970, "Algorithm 395: Student's t-distribution",
                                    "Communications of the ACM 13:617-619, the series for many degrees of freedom",
                                    standing::from_memory};

namespace detail {

/// From here on Hill's series holds to the last digits.
template <class T>
inline constexpr T many_degrees = T(100'000);

/// ln(Gamma(a + 1/2) / Gamma(a)). The difference of two large logarithms would lose the digits: Stirling's series. And
/// std::lgamma writes a variable that all threads share (signgam, POSIX).
template <class T>
[[nodiscard]] T log_gamma_step(T a) {
  if (a < T(50)) return std::log(std::tgamma(a + T(0.5)) / std::tgamma(a));
  const T f = T(1) / a, f2 = f * f;
  return T(0.5) * std::log(a) - f * (T(1) / T(8) - f2 * (T(1) / T(192) - f2 * (T(1) / T(640) - f2 * T(17) / T(14336))));
}

/// The continued fraction of the incomplete beta function, I_x(a, b) = x^a (1 - x)^b / (a B(a, b)) times it; modified
/// Lentz. It converges for x < (a + 1) / (a + b + 2).
template <class T>
[[nodiscard]] T beta_fraction(std::string_view function, T a, T b, T x) {
  constexpr T tiny = T(1e-300L);
  T c = T(1);
  T d = T(1) - (a + b) * x / (a + T(1));
  d = T(1) / (std::fabs(d) < tiny ? tiny : d);
  T fraction = d;
  for (int m = 1; m < 3000; ++m) {
    const T k = T(m);
    const T even = k * (b - k) * x / ((a + T(2) * k - T(1)) * (a + T(2) * k));
    const T odd = -(a + k) * (a + b + k) * x / ((a + T(2) * k) * (a + T(2) * k + T(1)));
    T step = T(1);
    for (const T term : {even, odd}) {
      d = T(1) + term * d;
      d = T(1) / (std::fabs(d) < tiny ? tiny : d);
      c = T(1) + term / c;
      c = std::fabs(c) < tiny ? tiny : c;
      step = c * d;
      fraction *= step;
    }
    if (std::fabs(step - T(1)) < std::numeric_limits<T>::epsilon()) return fraction;
  }
  core::fail<no_convergence>(function, "x", static_cast<double>(x), "", "did not converge");
}

template <class T>
[[nodiscard]] T student_t_above(std::string_view function, T t, T nu) {
  if (std::isinf(nu)) return kernel::normal_above(t);
  const T excess = std::log1p(t / nu * t);
  if (nu >= many_degrees<T>) {
    const T a = std::fmin(nu, T(1e100L)) - T(0.5), b = T(48) * a * a, y = nu > a + T(1) ? t * t : a * excess;
    if (y > T(1e4)) return t < T(0) ? T(1) : T(0);  // less than any number
    const T z =
        (((((T(-0.4L) * y - T(3.3L)) * y - T(24)) * y - T(85.5L)) / (T(0.8L) * y * y + T(100) + b) + y + T(3)) / b +
         T(1)) *
        std::sqrt(y);
    return kernel::normal_above(t < T(0) ? -z : z);
  }
  if (t == T(0)) return T(0.5);
  const T half = nu / T(2), square = t * t, x = nu / (nu + square), y = square / (nu + square);
  const T front = std::exp(log_gamma_step(half) - half * excess + T(0.5) * std::log(y / std::numbers::pi_v<T>));
  const T tail = x < (half + T(1)) / (half + T(2.5)) ? front * beta_fraction(function, half, T(0.5), x) / nu
                                                     : T(0.5) - front * beta_fraction(function, T(0.5), half, y);
  return t >= T(0) ? tail : T(1) - tail;
}

template <class T>
[[nodiscard]] T student_t_density(T t, T nu) {
  constexpr T two_pi = T(2) * std::numbers::pi_v<T>;
  if (std::isinf(nu)) return std::exp(-t * t / T(2)) / std::sqrt(two_pi);
  const T half = nu / T(2);
  const T front = log_gamma_step(half) - T(0.5) * std::log(half);
  return std::exp(front - (half + T(0.5)) * std::log1p(t / nu * t)) / std::sqrt(two_pi);
}

/// About the t that is exceeded with probability `above` < 0.5, as a start: Abramowitz & Stegun 26.2.23 and the first
/// terms of 26.7.5; below three degrees the closed form of two.
template <class T>
[[nodiscard]] T student_t_start(T above, T nu) {
  if (nu < T(3)) return (T(1) - T(2) * above) / std::sqrt(T(2) * above * (T(1) - above));
  const T s = std::sqrt(T(-2) * std::log(above));
  const T x = s - (T(2.515517L) + s * (T(0.802853L) + s * T(0.010328L))) /
                      (T(1) + s * (T(1.432788L) + s * (T(0.189269L) + s * T(0.001308L))));
  const T x2 = x * x, f = T(1) / nu;
  return x + f * x * (x2 + T(1)) / T(4) + f * f * x * ((T(5) * x2 + T(16)) * x2 + T(3)) / T(96) +
         f * f * f * x * (((T(3) * x2 + T(19)) * x2 + T(17)) * x2 - T(15)) / T(384);
}

/// The t that is exceeded with probability `above` < 0.5. Newton's method: in the tail, which falls about as a power of
/// t, it runs on logarithms: there it is concave, in the middle convex, and converges from anywhere.
template <class T>
[[nodiscard]] T student_t_exceeded(std::string_view function, T above, T nu) {
  const bool in_tail = above < T(0.25);
  const T enough = std::sqrt(std::numeric_limits<T>::epsilon()) / T(4);  // the next step would be its square
  T t = std::fmax(student_t_start(above, nu), T(0));
  for (int i = 0; i < 100; ++i) {
    const T tail = student_t_above(function, t, nu), density = student_t_density(t, nu);
    const T step = in_tail ? std::log(tail / above) * tail / (t * density) : (tail - above) / density;
    t = in_tail ? t * std::exp(step) : std::fmax(t + step, T(0));
    if (std::fabs(step) <= (in_tail ? enough : enough * t + std::numeric_limits<T>::epsilon())) return t;
  }
  core::fail<no_convergence>(function, "probability", static_cast<double>(above), "", "did not converge");
}

inline constexpr limits student_t_limits{"t", "", {-1e100, 1e100}};
/// The quantile of a smaller probability can be past any number.
inline constexpr limits student_t_probability_limits{"probability", "", {1e-100, 1.0, edge::closed, edge::open}};

}  // namespace detail

/// Probability that Student's t exceeds a number. With infinite degrees of freedom this is the normal law.
///
///   P = I_x(nu/2, 1/2) / 2 for t >= 0,   x = nu / (nu + t^2),   I the regularised incomplete beta function
///
/// @param t                  the number, -1e100 to 1e100
/// @param degrees_of_freedom nu, 1 to infinity
/// @return                   probability, 0 to 1
/// @throws                   invalid_input (names the argument and its value)
/// @accuracy                 1e-12 relative
/// @source                   Abramowitz and Stegun 1964, 26.7.1; from 100 000 degrees on Hill 1970
template <class T>
[[nodiscard]] T student_t_above(T t, T degrees_of_freedom) {
  constexpr std::string_view here = "tankwright::numerics::student_t_above";
  core::check(here, detail::student_t_limits, static_cast<double>(t));
  core::check(here, core::degrees_of_freedom_limits, static_cast<double>(degrees_of_freedom));
  return detail::student_t_above(here, t, degrees_of_freedom);
}

/// Density of Student's t; with infinite degrees of freedom that of the normal law.
///
///   f = Gamma((nu + 1)/2) / (Gamma(nu/2) sqrt(nu pi)) (1 + t^2/nu)^(-(nu + 1)/2)
///
/// @param t                  the number, -1e100 to 1e100
/// @param degrees_of_freedom nu, 1 to infinity
/// @return                   density
/// @throws                   invalid_input (names the argument and its value)
/// @accuracy                 1e-12 relative
/// @source                   Abramowitz and Stegun 1964, 26.7
template <class T>
[[nodiscard]] T student_t_density(T t, T degrees_of_freedom) {
  constexpr std::string_view here = "tankwright::numerics::student_t_density";
  core::check(here, detail::student_t_limits, static_cast<double>(t));
  core::check(here, core::degrees_of_freedom_limits, static_cast<double>(degrees_of_freedom));
  return detail::student_t_density(t, degrees_of_freedom);
}

/// The t that is not exceeded with a probability.
///
///   t with 1 - P(t) = p
///
/// @param p                  probability not to be exceeded, 1e-100 to below 1
/// @param degrees_of_freedom nu, 1 to infinity
/// @return                   the quantile
/// @throws                   invalid_input (names the argument and its value)
/// @accuracy                 1e-12 relative, 1e-15 near the middle
/// @source                   the definition, by Newton's method
template <class T>
[[nodiscard]] T student_t_quantile(T p, T degrees_of_freedom) {
  constexpr std::string_view here = "tankwright::numerics::student_t_quantile";
  core::check(here, detail::student_t_probability_limits, static_cast<double>(p));
  core::check(here, core::degrees_of_freedom_limits, static_cast<double>(degrees_of_freedom));
  if (p == T(0.5)) return T(0);
  return p < T(0.5) ? -detail::student_t_exceeded(here, p, degrees_of_freedom)
                    : detail::student_t_exceeded(here, T(1) - p, degrees_of_freedom);
}

}  // namespace tankwright::numerics
