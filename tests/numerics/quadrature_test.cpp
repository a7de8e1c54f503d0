// SPDX-License-Identifier: BSL-1.0
#include <tankwright/numerics/quadrature.hpp>

#include <cmath>
#include <numbers>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::numerics;
using namespace tankwright::testing;

TEST_CASE("quadrature: polynomials up to degree 15 are exact on one panel, the next one is not") {
  const evidence exact{"tankwright::numerics::integral", kind::identity, "integral of a power"};
  for (int degree = 0; degree <= 15; ++degree) {
    const auto power = [&](double x) { return std::pow(x, degree); };
    TW_CHECK(exact, integral(power, 0.0, 2.0, 1), std::pow(2.0, degree + 1) / (degree + 1), relative(2e-15));
  }
  const double sixteenth = integral([](double x) { return std::pow(x, 16.0); }, 0.0, 2.0, 1);
  CHECK(std::fabs(sixteenth / (std::pow(2.0, 17.0) / 17.0) - 1.0) > 1e-11);
}

TEST_CASE("quadrature: the points and weights of a panel") {
  double weights = 0.0, middle = 0.0;
  int points = 0;
  gauss_points(3.0, 7.0, [&](double x, double weight) {
    CHECK((x > 3.0 && x < 7.0));
    weights += weight, middle += weight * x, ++points;
  });
  const evidence sums{"tankwright::numerics::gauss_points", kind::identity, "length and middle of the panel"};
  CHECK(points == 8);
  TW_CHECK(sums, weights, 4.0, relative(1e-15));
  TW_CHECK(sums, middle / weights, 5.0, relative(1e-15));
}

TEST_CASE("quadrature: known integrals, either way round") {
  const evidence known{"tankwright::numerics::integral", kind::identity, "integrals of exp and sin"};
  TW_CHECK(known, integral([](double x) { return std::exp(x); }, 0.0, 1.0, 2), std::numbers::e - 1.0, relative(1e-15));
  TW_CHECK(known, integral([](double x) { return std::sin(x); }, std::numbers::pi, 0.0, 2), -2.0, relative(1e-13));
  CHECK(integral([](double) { return 5.0; }, 2.0, 2.0, 3) == 0.0);
}

TEST_CASE("quadrature: the work is bounded") {
  for (const int bad : {0, -1, 1'000'001}) {
    CHECK_THROWS_WITH_AS((void)integral([](double x) { return x; }, 0.0, 1.0, bad),
                         doctest::Contains("tankwright::numerics::integral: panels"), invalid_input);
  }
}
