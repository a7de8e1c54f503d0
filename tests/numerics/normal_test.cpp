// SPDX-License-Identifier: BSL-1.0
#include <tankwright/numerics/normal.hpp>

#include <boost/math/distributions/normal.hpp>
#include <limits>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::numerics;
using namespace tankwright::testing;

namespace {

const boost::math::normal_distribution<long double> law;

/// The quantile by Boost in long double, with all the digits that p has at either end.
double by_boost(double p) {
  return static_cast<double>(p < 0.5 ? quantile(law, static_cast<long double>(p))
                                     : quantile(complement(law, 1.0L - static_cast<long double>(p))));
}

}  // namespace

TEST_CASE("normal: the quantile against Boost.Math over all probabilities") {
  const evidence boost{"tankwright::numerics::normal_quantile", kind::library, "Boost.Math normal"};
  for (int i = 1; i < 2000; ++i) {
    const double p = i / 2000.0;
    TW_CHECK(boost, normal_quantile(p), by_boost(p), (tolerance{.absolute = 2e-16, .relative = 2e-15}));
  }
  for (double p = 0.07; p > 1e-307; p *= 0.37) {
    TW_CHECK(boost, normal_quantile(p), by_boost(p), relative(2e-15));
    TW_CHECK(boost, normal_quantile(1.0 - p), p < 1e-16 ? by_boost(std::nextafter(1.0, 0.0)) : by_boost(1.0 - p),
             p < 1e-16 ? tolerance{.absolute = 40.0} : relative(2e-15));
    if (1.0 - p == std::nextafter(1.0, 0.0)) break;
  }
  // Where one rational function gives way to the next.
  for (const double end : {0.075, 0.925, std::exp(-25.0), 1.0 - std::exp(-25.0)}) {
    for (const double p : {std::nextafter(end, 0.0), end, std::nextafter(end, 1.0)}) {
      TW_CHECK(boost, normal_quantile(p), by_boost(p), relative(2e-15));
    }
  }
}

TEST_CASE("normal: the tail against Boost.Math, and the printed table") {
  const evidence boost{"tankwright::numerics::normal_above", kind::library, "Boost.Math normal"};
  for (double z = -8.0; z < 37.0; z += 0.125) {
    TW_CHECK(boost, normal_above(z), static_cast<double>(cdf(complement(law, static_cast<long double>(z)))),
             relative(1e-15 + 2e-16 * z * z));  // z / sqrt(2) is rounded
  }
  const evidence table{"tankwright::numerics::normal_above", kind::published, "Abramowitz and Stegun 1964, table 26.1"};
  TW_CHECK(table, normal_above(1.0), 1.0 - 0.841344746068543, tolerance{.absolute = 5e-16});
  TW_CHECK(table, normal_above(2.0), 1.0 - 0.977249868051821, tolerance{.absolute = 5e-16});
}

TEST_CASE("normal: what is no probability and no number is refused") {
  for (const double bad :
       {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity(), 0.0, 1.0, -0.5, 1.5}) {
    CHECK_THROWS_AS((void)normal_quantile(bad), invalid_input);
  }
  CHECK_THROWS_AS((void)normal_above(std::numeric_limits<double>::quiet_NaN()), invalid_input);
  CHECK_THROWS_AS((void)normal_above(std::numeric_limits<double>::infinity()), invalid_input);
  CHECK(std::isfinite(normal_quantile(std::numeric_limits<double>::denorm_min())));
  CHECK(normal_above(1e100) == 0.0);
  CHECK(normal_above(-1e100) == 1.0);
}
