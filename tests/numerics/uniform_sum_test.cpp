// SPDX-License-Identifier: BSL-1.0
#include <tankwright/numerics/uniform_sum.hpp>

#include <cmath>
#include <vector>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::numerics;
using namespace tankwright::testing;

TEST_CASE("sum of uniforms: the published sums of rectangular inputs") {
  const auto about = [](kind k, const char* source) {
    return evidence{"tankwright::numerics::tail_of_uniform_sum", k, source};
  };
  const double root3 = std::sqrt(3.0);
  const auto beyond = [](double x, std::initializer_list<double> widths) {
    const std::vector<double> w{widths};
    return tail_of_uniform_sum(x, w);
  };
  // 95 % of the sum of four rectangular inputs of unit deviation lie within 2 sqrt(3) (2 - (3/5)^(1/4)) = 3.88.
  TW_CHECK(about(kind::published, "JCGM 101:2008, 9.2.3, table 3 (read in a reproduction)"),
           beyond(2.0 * root3 * (2.0 - std::pow(0.6, 0.25)), {root3, root3, root3, root3}), 0.025, relative(1e-10));
  // One of them ten times as wide: +/- 17.0.
  TW_CHECK(about(kind::from_memory, "JCGM 101:2008, 9.2.4, table 4"),
           beyond(17.0, {root3, root3, root3, 10.0 * root3}), 0.025, tolerance{.absolute = 0.001});
  const auto geometry = about(kind::identity, "areas of a rectangle, a triangle and a trapezoid");
  TW_CHECK(geometry, beyond(0.5, {2.0}), 0.375, relative(1e-14));
  TW_CHECK(geometry, beyond(0.5, {1.0, 1.0}), 1.5 * 1.5 / 8.0, relative(1e-14));
  TW_CHECK(geometry, beyond(0.5, {2.0, 1.0}), 0.375, relative(1e-14));       // in the flat part
  TW_CHECK(geometry, beyond(2.5, {2.0, 1.0}), 0.25 / 16.0, relative(1e-13));  // in the slope
  TW_CHECK(geometry, beyond(-0.5, {2.0, 1.0}), 1.0 - 0.375, relative(1e-14));
  CHECK(beyond(3.0, {2.0, 1.0}) == 0.0);
  CHECK(beyond(0.0, {}) == 0.0);
  CHECK(beyond(-1.0, {}) == 1.0);
  // Widths far apart: the small ones hardly matter, and the digits hold.
  TW_CHECK(geometry, beyond(0.5, {1.0, 0.011, 0.011, 0.011, 0.011, 0.011, 0.011}), 0.25, tolerance{.absolute = 1e-9});
}
