// SPDX-License-Identifier: BSL-1.0
#include <tankwright/numerics/course.hpp>

#include <cmath>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::numerics;
using namespace tankwright::testing;

namespace {

const evidence step_exact{"tankwright::numerics::dormand_prince", kind::identity, "polynomials and the exponential"};

}  // namespace

TEST_CASE("course: a step is exact for a course of fifth degree in time") {
  const auto slope = [](double t, double) { return 5.0 * std::pow(t, 4.0) - 3.0 * t * t + 2.0; };
  const step_end to = dormand_prince(slope, 1.0, 0.0, slope(1.0, 0.0), 2.0);
  TW_CHECK(step_exact, to.value, (243.0 - 27.0 + 6.0) - (1.0 - 1.0 + 2.0), relative(1e-14));
  TW_CHECK(step_exact, to.slope, slope(3.0, 0.0), relative(1e-14));
}

TEST_CASE("course: a decay by one step errs by (h/tau)^6 / 3600") {
  const auto decay = [](double, double y) { return -y; };
  for (const double h : {0.1, 0.2}) {
    const double error = dormand_prince(decay, 0.0, 1.0, -1.0, h).value - std::exp(-h);
    TW_CHECK(step_exact, error, std::pow(h, 6.0) / 3600.0, relative(0.15));
  }
}

TEST_CASE("course: a decay, and when it meets a value") {
  course decay{[](double, double y) { return -y; }, {.longest = 0.25, .tolerance = 1e-9}, 1.0};
  decay.go_to("tankwright::test", 2.0);
  CHECK(decay.time() == 2.0);
  CHECK(std::fabs(decay.value() - std::exp(-2.0)) < 1e-7);
  course falling{[](double, double y) { return -y; }, {.longest = 0.25, .tolerance = 1e-9}, 1.0};
  while (falling.value() > 0.5) falling.step("tankwright::test", 10.0);
  CHECK(std::fabs(falling.met("tankwright::test", 0.5) - std::log(2.0)) < 1e-6);
}

TEST_CASE("course: a kink at a known time is met, not stepped over") {
  const auto slope = [](double t, double) { return t < 1.0 ? 1.0 : -3.0; };
  course bent{slope, {.longest = 0.7, .tolerance = 1e-12, .kink = 1.0}, 0.0};
  bent.go_to("tankwright::test", 2.0);
  CHECK(std::fabs(bent.value() - (1.0 - 3.0)) < 1e-3);
}

TEST_CASE("course: one that runs away, or has no slope, is given up, and meets nothing") {
  constexpr double nan = std::numeric_limits<double>::quiet_NaN();
  course lost{[](double, double) { return nan; }, {.longest = 1.0, .tolerance = 1e-9}, 1.0};
  CHECK_THROWS_AS(lost.go_to("tankwright::test", 3.0), no_convergence);
  CHECK_THROWS_AS((void)lost.met("tankwright::test", 0.5), no_convergence);
  course away{[](double, double y) { return 1e9 * y * y; }, {.longest = 1.0, .tolerance = 1e-9}, 1.0};
  CHECK_THROWS_AS(away.go_to("tankwright::test", 3.0), no_convergence);
}
