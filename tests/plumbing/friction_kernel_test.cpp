// SPDX-License-Identifier: BSL-1.0
/// @file
/// The friction factor on raw numbers: its logarithms, its first guess and its seams.
#include <tankwright/plumbing/detail/friction_kernel.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using tankwright::plumbing::detail::colebrook;
using tankwright::plumbing::detail::colebrook_again;
using tankwright::plumbing::detail::friction_factor;
using tankwright::plumbing::detail::logarithm;
using tankwright::plumbing::detail::rough_log2;

namespace {

const evidence logs{"tankwright::plumbing::friction_factor", kind::library, "std::log and std::log2"};
const evidence seams{"tankwright::plumbing::friction_factor", kind::identity,
                     "64/Re, Colebrook-White by bisection, and the cubic between them by hand"};

/// 1/sqrt f of Colebrook-White by bisection.
double root_of_colebrook(double re, double e) {
  double low = 0.0, high = 100.0;
  for (int i = 0; i < 200; ++i) {
    const double x = 0.5 * (low + high);
    (x + 2.0 * std::log10(e / 3.7 + 2.51 * x / re) < 0.0 ? low : high) = x;
  }
  return high;
}
double by_bisection(double re, double e) { return std::pow(root_of_colebrook(re, e), -2.0); }

}  // namespace

TEST_CASE("friction kernel: the logarithm without a branch is std::log to rounding") {
  double worst = 0.0;
  for (int i = 0; i <= 20000; ++i) {  // of a mantissa from sqrt(1/2) to sqrt 2
    const double m = std::exp2(-0.5 + i / 20000.0);
    worst = std::max(worst, std::fabs(logarithm(m) - std::log(m)));
  }
  TW_CHECK(logs, worst, 0.0, within(2e-16));
  for (int power = -1000; power <= 1000; power += 7) {
    for (const double m : {0.7072, 0.9, 1.0, 1.3, 1.4142}) {
      const double y = std::ldexp(m, power);
      TW_CHECK(logs, logarithm(y), std::log(y), (tolerance{.absolute = 2e-16, .relative = 3e-16}));
    }
  }
  TW_CHECK(logs, logarithm(1.0), 0.0, tolerance{});
}

TEST_CASE(
    "friction kernel: the rough logarithm errs by less than 0.0432, the least that a line through a mantissa can") {
  // m - 1 + s against log2 m: off by s at m = 1 and 2, by s - 0.08607 where 1/(m ln 2) = 1; s = 0.043 shares that out.
  for (const double y : {1.0, 1.2, 1.4427, 1.7, 1.9999999, 2000.0, 4000.0, 1e5, 1e8, 3e-7}) {
    TW_CHECK(logs, rough_log2(y), std::log2(y), within(0.0432));
  }
  TW_CHECK(logs, rough_log2(1024.0), 10.043, within(1e-13));
}

TEST_CASE("friction kernel: laminar to 2000, turbulent from 4000, and the cubic that meets both") {
  for (const double e : {0.0, 1e-4, 0.02, 0.05}) {
    TW_CHECK(seams, friction_factor(2000.0, e).f, 0.032, relative(1e-15));
    TW_CHECK(seams, friction_factor(2000.0, e).slope, -1.0, relative(1e-15));
    TW_CHECK(seams, friction_factor(std::nextafter(2000.0, 0.0), e).f, 0.032, relative(1e-15));
    TW_CHECK(seams, friction_factor(std::nextafter(2000.0, 3000.0), e).f, 0.032, relative(1e-15));
    TW_CHECK(seams, friction_factor(500.0, e).f, 0.128, relative(1e-15));
    const double end = by_bisection(4000.0, e);
    for (const double re : {std::nextafter(4000.0, 0.0), 4000.0, std::nextafter(4000.0, 5000.0)}) {
      TW_CHECK(seams, friction_factor(re, e).f, end, relative(1e-14));
    }
    // d ln f/d ln Re = -2 c a/(b + a x + c a), c = 2/ln 10, by differentiating x + c ln(b + a x) = 0.
    const double a = 2.51 / 4000.0, b = e / 3.7, c = 2.0 / std::log(10.0), x = root_of_colebrook(4000.0, e);
    const double slope = -2.0 * c * a / (b + a * x + c * a);
    TW_CHECK(seams, friction_factor(4000.0, e).slope, slope, relative(1e-13));
    TW_CHECK(seams, friction_factor(std::nextafter(4000.0, 0.0), e).slope, slope, relative(1e-12));
    // Half way: the mean of the ends and an eighth of the difference of their slopes over the width.
    const double d0 = -0.032, d1 = 0.5 * end * slope;
    const double middle = 0.5 * (0.032 + end) + (d0 - d1) / 8.0;
    TW_CHECK(seams, friction_factor(3000.0, e).f, middle, relative(1e-14));
    // Its slope there: 3/2 of the secant and a quarter less of both, times Re/width = 3/2, over f.
    TW_CHECK(seams, friction_factor(3000.0, e).slope, (1.5 * (end - 0.032) - 0.25 * (d0 + d1)) * 1.5 / middle,
             relative(1e-13));
  }
}

TEST_CASE("friction kernel: two steps from the first guess give all digits, and one from the last answer") {
  for (const double re : {4000.0, 7e3, 1e5, 3e6, 1e8}) {
    for (const double e : {0.0, 1e-6, 1e-3, 0.05}) {
      TW_CHECK(seams, colebrook(re, e).f, by_bisection(re, e), relative(3e-15));
      double x = 0.0;  // cold: one step of Halley's from the guess
      const double cold = colebrook_again(re, e, x).f;
      TW_CHECK(seams, cold, by_bisection(re, e), relative(2e-2));
      TW_CHECK(seams, colebrook_again(re, e, x).f, by_bisection(re, e), relative(3e-15));
      TW_CHECK(seams, x, root_of_colebrook(re, e), relative(2e-15));
      TW_CHECK(seams, colebrook_again(1.01 * re, e, x).f, by_bisection(1.01 * re, e), relative(1e-9));
    }
  }
}
