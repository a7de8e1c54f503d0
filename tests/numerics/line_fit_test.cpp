// SPDX-License-Identifier: BSL-1.0
#include <tankwright/numerics/line_fit.hpp>

#include <limits>
#include <vector>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::numerics;
using namespace tankwright::testing;

TEST_CASE("line fit: NIST StRD Norris, certified values") {
  const std::vector<double> x{0.2, 337.4, 118.2, 884.6, 10.1,  226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4,
                              0.6, 775.5, 666.9, 338.0, 447.5, 11.6,  556.0, 228.1, 995.8, 887.6, 120.2, 0.3,
                              0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1,  118.3, 229.2, 669.1, 448.9, 0.5};
  const std::vector<double> y{0.1, 338.8, 118.1, 888.0, 9.2,   228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3,
                              0.1, 778.1, 668.8, 339.3, 448.9, 10.8,  557.7, 228.3, 998.0, 888.8, 119.6, 0.3,
                              0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2,  117.6, 228.9, 668.4, 449.2, 0.2};
  const auto fit = fit_line<double>(x, y);
  const auto norris = evidence{"tankwright::numerics::fit_line", kind::published, "NIST StRD Norris, certified values"};
  TW_CHECK(norris, fit.intercept, -0.262323073774029, relative(1e-9));
  TW_CHECK(norris, fit.slope, 1.00211681802045, relative(1e-12));
  TW_CHECK(norris, fit.intercept_error, 0.232818234301152, relative(1e-9));
  TW_CHECK(norris, fit.slope_error, 0.429796848199937e-3, relative(1e-9));
  TW_CHECK(norris, fit.scatter, 0.884796396144373, relative(1e-9));
}

TEST_CASE("line fit: a straight line is found exactly, in long double too") {
  const evidence line{"tankwright::numerics::fit_line", kind::identity, "points on a line"};
  const std::vector<double> x{1e6, 1e6 + 1.0, 1e6 + 2.0, 1e6 + 7.0};
  std::vector<double> y;
  for (const double at : x) y.push_back(3.0 - 0.25 * at);
  const auto fit = fit_line<double>(x, y);
  TW_CHECK(line, fit.slope, -0.25, relative(1e-14));
  TW_CHECK(line, fit.intercept, 3.0, tolerance{.absolute = 1e-9});
  TW_CHECK(line, fit.scatter, 0.0, tolerance{.absolute = 1e-10});
  const std::vector<long double> wide{0.0L, 1.0L, 2.0L}, tall{1.0L, 3.0L, 5.0L};
  CHECK(fit_line<long double>(wide, tall).slope == 2.0L);
}

TEST_CASE("line fit: what has no line is refused") {
  using points = std::vector<double>;
  const auto refused = [](const points& x, const points& y, const char* text) {
    CHECK_THROWS_WITH_AS((void)fit_line<double>(x, y), doctest::Contains(text), invalid_input);
  };
  refused({1.0, 2.0}, {1.0, 2.0}, "tankwright::numerics::fit_line: number of points = 2");
  refused({1.0, 2.0, 3.0}, {1.0, 2.0}, "number of y = 2");
  refused({2.0, 2.0, 2.0}, {1.0, 2.0, 3.0}, "x = 2 is the same in all points");
  refused({1.0, 2.0, std::numeric_limits<double>::quiet_NaN()}, {1.0, 2.0, 3.0}, "x = nan");
  refused({1.0, 2.0, 3.0}, {1.0, 2.0, std::numeric_limits<double>::infinity()}, "y = inf");
  refused({1.0, 2.0, 1e101}, {1.0, 2.0, 3.0}, "x = 1e+101");
  CHECK(std::isfinite(fit_line<double>(points{1e100, -1e100, 0.0}, points{1e100, 0.0, -1e100}).slope_error));
}
