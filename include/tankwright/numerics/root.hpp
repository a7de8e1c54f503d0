// SPDX-License-Identifier: BSL-1.0
/// @file
/// One bracketed root finder for the whole library: Chandrupatla's hybrid of bisection and inverse quadratic
/// interpolation (Adv. Eng. Softw. 28:145, 1997). Boost.Math's TOMS 748 does the same and costs twice the compile time
/// of Boost.Units; this is forty lines.
#pragma once

#include <cmath>
#include <limits>
#include <string>
#include <string_view>

#include <tankwright/core/errors.hpp>

namespace tankwright::numerics {

/// How close is close enough, and when to give up.
template <class T>
struct root_options {
  T absolute = T(0);                                      ///< on x
  T relative = T(4) * std::numeric_limits<T>::epsilon();  ///< on x
  int iterations = 100;
};

namespace detail {

/// Give up: the diagnosis carries the last value and its bracket.
template <class T>
[[noreturn, gnu::cold]] void no_root(std::string_view function, std::string_view unknown, T last, T a, T b,
                                     std::string_view reason) {
  const auto value = static_cast<double>(last);
  const auto low = static_cast<double>(a < b ? a : b);
  const auto high = static_cast<double>(a < b ? b : a);
  std::string line{function};
  line.append(": ").append(unknown).append(" between ").append(core::number_text(low)).append(" and ");
  line.append(core::number_text(high)).append(" ").append(reason);
  throw no_convergence{line, {std::string{function}, std::string{unknown}, value, low, high, {}, {}}};
}

}  // namespace detail

/// The x between a and b with f(x) = 0. f(a) and f(b) must differ in sign, or one of them be zero.
///
/// @param function who asks: named in the error
/// @param unknown  what x is: named in the error
/// @param f        any callable on a number; it may jump, then its jump through zero is found
/// @param a        one end of the bracket
/// @param b        the other end
/// @param options  tolerances on x, and the most steps (100), each of which calls f once
/// @return         the root
/// @throws         no_convergence when the signs agree, f is not a number, or the steps are used up; what f throws
/// @accuracy       the tolerances; by default 4 units of the last place
/// @source         Chandrupatla 1997
template <class T, class F>
[[nodiscard]] T bracketed_root(std::string_view function, std::string_view unknown, F f, T a, T b,
                               root_options<T> options = {}) {
  T fa = f(a);
  T fb = f(b);
  if (fa == T(0)) return a;
  if (fb == T(0)) return b;
  if (std::isnan(fa) || std::isnan(fb)) detail::no_root(function, unknown, a, a, b, "gives no number at an end");
  if ((fa < T(0)) == (fb < T(0))) detail::no_root(function, unknown, a, a, b, "gives no change of sign");
  T c = a;
  T fc = fa;
  T step = T(0.5);
  for (int i = 0; i < options.iterations; ++i) {
    const T x = a + step * (b - a);
    const T fx = f(x);
    if (std::isnan(fx)) detail::no_root(function, unknown, x, a, b, "gives no number at a point inside");
    if ((fx < T(0)) == (fa < T(0))) {
      c = a, fc = fa;
    } else {
      c = b, b = a, fc = fb, fb = fa;
    }
    a = x, fa = fx;
    const bool a_is_best = std::fabs(fa) < std::fabs(fb);
    const T best = a_is_best ? a : b;
    const T tolerance = options.absolute + options.relative * std::fabs(best);
    const T half_width = T(0.5) * std::fabs(b - a);
    if (fa == T(0) || fb == T(0) || half_width <= tolerance) return best;
    const T xi = (a - b) / (c - b);
    const T phi = (fa - fb) / (fc - fb);
    step = T(0.5);
    if (phi * phi < xi && (T(1) - phi) * (T(1) - phi) < T(1) - xi) {  // inverse quadratic interpolation stays inside
      step = fa / (fb - fa) * fc / (fb - fc) + (c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb);
      const T least = tolerance / (T(2) * half_width);
      step = step < least ? least : step > T(1) - least ? T(1) - least : step;
    }
  }
  detail::no_root(function, unknown, a, a, b, "did not converge");
}

}  // namespace tankwright::numerics
