// SPDX-License-Identifier: BSL-1.0
#include <tankwright/numerics/student_t.hpp>

#include <array>
#include <boost/math/distributions/students_t.hpp>
#include <utility>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::numerics;
using namespace tankwright::testing;

namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();

evidence boost_of(const char* name) {
  return {std::string{"tankwright::numerics::"} + name, kind::library, "Boost.Math students_t"};
}

}  // namespace

TEST_CASE("student t: tail, density and quantile against Boost.Math, few degrees of freedom and many") {
  const auto above = boost_of("student_t_above"), density = boost_of("student_t_density"),
             quantiles = boost_of("student_t_quantile");
  for (const double nu :
       {1.0, 1.5, 2.0, 5.0, 10.0, 23.0, 200.0, 99.9, 100.1, 5000.0, 99999.9, 1e5, 1e6, 1e9, 1e15, 1e40}) {
    CAPTURE(nu);
    const boost::math::students_t_distribution<long double> t{nu};
    for (const double p : {1e-100, 1e-30, 1e-6, 0.02, 0.2, 0.49, 0.500001, 0.6, 0.75, 0.9, 0.95, 0.975, 0.99, 0.9999}) {
      // As many digits as the probability has: those of 1 - p count.
      const double expected = p < 0.5 ? -static_cast<double>(quantile(complement(t, static_cast<long double>(p))))
                                      : static_cast<double>(quantile(complement(t, static_cast<long double>(1.0 - p))));
      TW_CHECK(quantiles, student_t_quantile(p, nu), expected, (tolerance{.absolute = 1e-15, .relative = 1e-12}));
    }
    for (const double x : {-30.0, -2.0, -0.1, 0.0, 0.3, 1.0, 4.0, 30.0}) {
      TW_CHECK(above, student_t_above(x, nu), static_cast<double>(cdf(complement(t, static_cast<long double>(x)))),
               relative(2e-12));
      TW_CHECK(density, student_t_density(x, nu), static_cast<double>(pdf(t, static_cast<long double>(x))),
               relative(2e-12));
    }
  }
}

TEST_CASE("student t: the printed table") {
  const evidence table{"tankwright::numerics::student_t_quantile", kind::published,
                       "table of Student's t, one-sided 95 %"};
  constexpr std::array<std::pair<double, double>, 4> printed{{{5, 2.0150}, {10, 1.8125}, {23, 1.7139}, {47, 1.6779}}};
  for (const auto& [nu, t] : printed) TW_CHECK(table, student_t_quantile(0.95, nu), t, tolerance{.absolute = 5e-5});
}

TEST_CASE("student t: one degree is the law of Cauchy, infinitely many the normal law") {
  const evidence cauchy{"tankwright::numerics::student_t_above", kind::identity, "1/2 - atan(t)/pi"};
  for (const double t : {0.1, 1.0, 3.0, 100.0, 1e9}) {
    TW_CHECK(cauchy, student_t_above(t, 1.0), std::atan(1.0 / t) / std::numbers::pi, relative(1e-13));
  }
  const evidence normal{"tankwright::numerics::student_t_quantile", kind::identity, "the normal law"};
  for (const double p : {1e-12, 0.1, 0.5, 0.975}) {
    TW_CHECK(normal, student_t_quantile(p, infinity), normal_quantile(p), relative(1e-13));
  }
}

TEST_CASE("student t: where Hill's series takes over, nothing jumps") {
  for (const double t : {0.01, 0.5, 2.0, 8.0, 30.0}) {
    const double before = student_t_above(t, 1e5 * (1.0 - 1e-15)), after = student_t_above(t, 1e5);
    CHECK(std::fabs(before / after - 1.0) < 1e-12);
  }
}

TEST_CASE("student t: any input gives a number or is refused") {
  for (const double bad : {std::numeric_limits<double>::quiet_NaN(), 0.999, 0.0, -1.0, -infinity}) {
    CHECK_THROWS_AS((void)student_t_above(1.0, bad), invalid_input);
    CHECK_THROWS_AS((void)student_t_density(1.0, bad), invalid_input);
    CHECK_THROWS_AS((void)student_t_quantile(0.5, bad), invalid_input);
  }
  for (const double bad : {std::numeric_limits<double>::quiet_NaN(), infinity, -infinity, 1.1e100}) {
    CHECK_THROWS_AS((void)student_t_above(bad, 3.0), invalid_input);
    CHECK_THROWS_AS((void)student_t_density(bad, 3.0), invalid_input);
    CHECK_THROWS_AS((void)student_t_quantile(bad, 3.0), invalid_input);
  }
  CHECK_THROWS_WITH_AS((void)student_t_quantile(1.0, 3.0),
                       doctest::Contains("tankwright::numerics::student_t_quantile: probability = 1"), invalid_input);
  for (const double nu : {1.0, 2.0, 1e5 - 1.0, 1e5, 1e100, 1e308, infinity}) {
    for (const double t : {-1e100, -1.0, 0.0, 1e-300, 1.0, 1e100}) {
      CHECK(std::isfinite(student_t_density(t, nu)));
      const double tail = student_t_above(t, nu);
      CHECK((tail >= 0.0 && tail <= 1.0));
    }
    for (const double p : {1e-100, 0.4999999999999999, 0.5, std::nextafter(1.0, 0.0)}) {
      CHECK(std::isfinite(student_t_quantile(p, nu)));
    }
  }
}
