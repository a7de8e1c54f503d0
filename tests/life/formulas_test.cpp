// SPDX-License-Identifier: BSL-1.0
// The equations of nitrification and the method that steps them, each against a second way: differences, elimination of a
// full matrix, and the classical Runge-Kutta method in small steps.
#include <array>
#include <cmath>
#include <random>

#include <tankwright/life/detail/nitrogen_cycle.hpp>
#include <tankwright/life/detail/start_up_run.hpp>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twd = tankwright::life::detail;

namespace {

using real = long double;
using pools = twd::pools<real>;

struct growing {
  real mu, half, yield, decay;
};
constexpr growing oxidisers{1.18L, 0.5L, 0.15L, 0.2L}, others{1.05L, 0.2L, 0.05L, 0.16L};
constexpr real load = 0.4L;

twd::nitrogen_cycle<real> cycle() {
  return {{oxidisers.mu, oxidisers.half, oxidisers.yield, oxidisers.decay},
          {others.mu, others.half, others.yield, others.decay},
          load};
}

/// The Monod equations as the docstring prints them: ammonia, its oxidisers, nitrite, its oxidisers, nitrate.
pools monod(const pools& y) {
  const real qa = oxidisers.mu / oxidisers.yield * y[0] / (oxidisers.half + y[0]);
  const real qn = others.mu / others.yield * y[2] / (others.half + y[2]);
  return {load - qa * y[1], (oxidisers.yield * qa - oxidisers.decay) * y[1], qa * y[1] - qn * y[3],
          (others.yield * qn - others.decay) * y[3], qn * y[3]};
}

pools plus(const pools& a, real by, const pools& b) {
  pools sum = a;
  for (std::size_t i = 0; i < 5; ++i) sum[i] += by * b[i];
  return sum;
}

/// After a time, by the classical method of Runge and Kutta in a thousand steps.
pools after(pools y, real time) {
  const real h = time / 1000;
  for (int i = 0; i < 1000; ++i) {
    const pools k1 = monod(y), k2 = monod(plus(y, h / 2, k1)), k3 = monod(plus(y, h / 2, k2)),
                k4 = monod(plus(y, h, k3));
    y = plus(plus(plus(plus(y, h / 6, k1), h / 3, k2), h / 3, k3), h / 6, k4);
  }
  return y;
}

std::vector<pools> states() {
  std::mt19937 random{5};
  const auto between = [&](double a, double b) {
    return static_cast<real>(std::uniform_real_distribution<double>{a, b}(random));
  };
  std::vector<pools> all;
  for (int i = 0; i < 6; ++i) {
    all.push_back({between(0.01, 2.0), between(0.01, 0.3), between(0.01, 1.0), between(0.01, 0.2), between(0.0, 5.0)});
  }
  return all;
}

}  // namespace

TEST_CASE("formulas: the Monod equations, and the matrix of a stage against their differences") {
  for (const pools& y : states()) {
    const pools f = cycle().derivative(y), wanted = monod(y);
    for (std::size_t i = 0; i < 5; ++i) CHECK(std::fabs(f[i] - wanted[i]) < 1e-17L);
    const real d = 7.3L;
    const pools r{0.3L, -0.7L, 1.1L, 0.2L, -0.4L};
    const pools u = twd::nitrogen_cycle<real>::stage_matrix{cycle(), y, d}.solve(r);
    // (d I - J) u = r, with J u as a central difference along u.
    const real h = 1e-5L;
    const pools above = monod(plus(y, h, u)), below = monod(plus(y, -h, u));
    for (std::size_t i = 0; i < 5; ++i) {
      CHECK(std::fabs(d * u[i] - (above[i] - below[i]) / (2 * h) - r[i]) < 1e-7L);
    }
  }
}

TEST_CASE("formulas: a step of the method, and its error, against small steps of another") {
  for (const pools& y : states()) {
    for (const real h : {0.02L, 0.01L, 0.001L}) {
      const auto found = twd::rosenbrock_step(cycle(), y, h);
      const pools wanted = after(y, h);
      for (std::size_t i = 0; i < 5; ++i) {
        // Fourth order: the fifth power of the step is left; the embedded solution is of the third.
        CHECK(std::fabs(found.state[i] - wanted[i]) < 10.0L * std::pow(h, 5.0L));
        CHECK(std::fabs(found.error[i]) < 10.0L * std::pow(h, 4.0L));
        CHECK(std::fabs(found.state[i] - found.error[i] - wanted[i]) < 10.0L * std::pow(h, 4.0L));
      }
    }
  }
}

TEST_CASE("formulas: the highest of a pool, and since when it is clear") {
  twd::pool_watch w{.limit = 0.5};
  w.jump(0.2, 0.0);
  CHECK(*w.clear_since == 0.0);
  CHECK(w.highest == 0.2);
  w.jump(0.3, 0.5);  // still clear, since the start
  CHECK(*w.clear_since == 0.0);
  w.move(0.3, 0.8, 1.0, [] { return 99.0; });
  CHECK_FALSE(w.clear_since);
  CHECK(w.highest == 0.8);
  CHECK(w.highest_at == 1.0);
  w.move(0.8, 0.6, 2.0, [] { return 99.0; });
  CHECK_FALSE(w.clear_since);
  CHECK(w.highest_at == 1.0);
  w.move(0.6, 0.5, 3.0, [] { return 2.9; });  // at the limit is clear
  CHECK(*w.clear_since == 2.9);
  w.move(0.5, 0.4, 4.0, [] { return 3.9; });
  CHECK(*w.clear_since == 2.9);
  w.move(0.4, 0.5, 5.0, [] { return 4.9; });
  CHECK(*w.clear_since == 2.9);
  w.jump(0.9, 6.0);
  CHECK_FALSE(w.clear_since);
  CHECK(w.highest_at == 6.0);
  w.jump(0.9, 7.0);
  CHECK(w.highest_at == 6.0);
  w.jump(0.5, 8.0);
  CHECK(*w.clear_since == 8.0);
}

TEST_CASE("formulas: a run from stop to stop, its peak and its crossing, against small steps") {
  const twd::nitrogen_cycle<double> system{{1.18, 0.5, 0.15, 0.2}, {1.05, 0.2, 0.05, 0.16}, 0.4};
  // Nitrite rises to its peak and falls below its limit again.
  const twd::pools<double> start{0.3, 0.2, 0.1, 0.05, 0.0};
  twd::start_up_run run{system, start, {.limit = 0.25}, {.limit = 0.15}};
  CHECK(run.now() == 0.0);
  run.run_until("tankwright::test", 1.5);
  CHECK(run.now() == 1.5);
  run.run_until("tankwright::test", 6.0);
  CHECK(run.now() == 6.0);
  pools y{0.3L, 0.2L, 0.1L, 0.05L, 0.0L};
  double top = 0.1, top_at = 0.0, crossed = -1.0, ammonia_crossed = -1.0;
  const int steps = 60000;  // each of 1e-4 d
  for (int i = 1; i <= steps; ++i) {
    const real h = 1e-4L;
    const pools before = y;
    const pools k1 = monod(y), k2 = monod(plus(y, h / 2, k1)), k3 = monod(plus(y, h / 2, k2)),
                k4 = monod(plus(y, h, k3));
    y = plus(plus(plus(plus(y, h / 6, k1), h / 3, k2), h / 3, k3), h / 6, k4);
    if (static_cast<double>(y[2]) > top) top = static_cast<double>(y[2]), top_at = i * 1e-4;
    const auto meets = [&](std::size_t p, real limit, double& at) {
      if (before[p] > limit && y[p] <= limit) {
        at = (i - 1) * 1e-4 + 1e-4 * static_cast<double>((before[p] - limit) / (before[p] - y[p]));
      }
    };
    meets(2, 0.15L, crossed);
    meets(0, 0.25L, ammonia_crossed);
  }
  for (std::size_t i = 0; i < 5; ++i) {
    CHECK(compare(run.state[i], static_cast<double>(y[i]), relative(2e-7)).good);
  }
  CHECK(top > 0.15);
  CHECK(crossed > 0.0);
  CHECK(ammonia_crossed > 0.0);
  CHECK(compare(run.nitrite_watch.highest, top, relative(1e-7)).good);
  CHECK(std::fabs(run.nitrite_watch.highest_at - top_at) < 1.1e-4);
  REQUIRE(run.nitrite_watch.clear_since);
  CHECK(std::fabs(*run.nitrite_watch.clear_since - crossed) < 1e-6);
  REQUIRE(run.ammonia_watch.clear_since);
  CHECK(std::fabs(*run.ammonia_watch.clear_since - ammonia_crossed) < 1e-6);
}

TEST_CASE("formulas: every pool is held by its own tolerance, however large the others are") {
  // Traces of bacteria in plenty of food grow by e^(rate t): the food stays as it is. Each group by itself.
  const twd::nitrogen_cycle<double> plenty{{1.18, 0.5, 0.15, 0.2}, {1.05, 0.2, 0.05, 0.16}, 0.0};
  twd::start_up_run first{plenty, {2.0, 1e-13, 0.0, 0.0, 0.0}, {.limit = 0.1}, {.limit = 0.1}};
  first.run_until("tankwright::test", 8.0);
  CHECK(compare(first.state[1], 1e-13 * std::exp(8.0 * (1.18 * 2.0 / 2.5 - 0.2)), relative(1e-6)).good);
  twd::start_up_run second{plenty, {0.0, 0.0, 3.0, 1e-13, 0.0}, {.limit = 0.1}, {.limit = 0.1}};
  second.run_until("tankwright::test", 8.0);
  CHECK(compare(second.state[3], 1e-13 * std::exp(8.0 * (1.05 * 3.0 / 3.2 - 0.16)), relative(1e-6)).good);
  // A little ammonia over a sea of nitrite.
  twd::start_up_run little{plenty, {1.0, 10.0, 1e6, 0.0, 0.0}, {.limit = 1e-9}, {.limit = 0.1}};
  little.run_until("tankwright::test", 0.014);
  pools y{1.0L, 10.0L, 1e6L, 0.0L, 0.0L};
  for (int i = 0; i < 7000; ++i) {
    const real h = 2e-6L;
    const auto fall = [&](const pools& s) {  // no load
      pools d = monod(s);
      d[0] -= load;
      return d;
    };
    const pools k1 = fall(y), k2 = fall(plus(y, h / 2, k1)), k3 = fall(plus(y, h / 2, k2)), k4 = fall(plus(y, h, k3));
    y = plus(plus(plus(plus(y, h / 6, k1), h / 3, k2), h / 3, k3), h / 6, k4);
  }
  CHECK(compare(little.state[0], static_cast<double>(y[0]), relative(1e-7)).good);
}

TEST_CASE("formulas: what is missing comes out of the fullest pool, of equally full ones out of the first") {
  const auto clipped = twd::positive_part({2.0, 0.1, 2.0, 0.1, -0.5});
  CHECK(clipped == twd::pools<double>{1.5, 0.1, 2.0, 0.1, 0.0});
  const auto of_nitrate = twd::positive_part({-0.25, 0.1, 2.0, 0.1, 3.0});
  CHECK(of_nitrate == twd::pools<double>{0.0, 0.1, 2.0, 0.1, 2.75});
}

TEST_CASE("formulas: a peak of a few nanograms a litre is found inside a step too") {
  // Everything a ten-thousandth of what it was: with K far above, the equations are nearly linear.
  const twd::nitrogen_cycle<double> system{{1.18, 0.5, 0.15, 0.2}, {1.05, 0.2, 0.05, 0.16}, 0.0};
  const twd::pools<double> start{1e-4, 0.2, 1e-5, 0.05, 0.0};
  twd::start_up_run run{system, start, {.limit = 1.0}, {.limit = 1.0}};
  run.run_until("tankwright::test", 4.0);
  pools y{1e-4L, 0.2L, 1e-5L, 0.05L, 0.0L};
  double top = 0.0;
  for (int i = 0; i < 40000; ++i) {
    const real h = 1e-4L;
    const auto fall = [&](const pools& s) {  // no load
      pools d = monod(s);
      d[0] -= load;
      return d;
    };
    const pools k1 = fall(y), k2 = fall(plus(y, h / 2, k1)), k3 = fall(plus(y, h / 2, k2)), k4 = fall(plus(y, h, k3));
    y = plus(plus(plus(plus(y, h / 6, k1), h / 3, k2), h / 3, k3), h / 6, k4);
    top = std::fmax(top, static_cast<double>(y[2]));
  }
  CHECK(top > 2e-5);
  CHECK(compare(run.nitrite_watch.highest, top, relative(1e-6)).good);
}
