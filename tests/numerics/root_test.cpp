// SPDX-License-Identifier: BSL-1.0
#include <tankwright/numerics/root.hpp>

#include <cmath>
#include <numbers>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::numerics;
using namespace tankwright::testing;

namespace {

constexpr auto here = "tankwright::test";
constexpr double eps = std::numeric_limits<double>::epsilon();
const evidence known{"tankwright::numerics::bracketed_root", kind::identity, "functions with known roots"};

/// The root of f in [a, b], held against the known one, with the number of evaluations counted.
template <class F>
int evaluations(F f, double a, double b, double root) {
  int count = 0;
  const double x = numerics::bracketed_root(
      here, "x", [&](double at) { return ++count, f(at); }, a, b);
  TW_CHECK(known, x, root, relative(8.0 * eps));
  return count;
}

}  // namespace

TEST_CASE("root: known roots, from either end of the bracket") {
  for (const bool swapped : {false, true}) {
    const auto find = [&](auto f, double a, double b, double root) {
      return swapped ? evaluations(f, b, a, root) : evaluations(f, a, b, root);
    };
    CHECK(find([](double x) { return x * x - 2.0; }, 0.0, 2.0, std::numbers::sqrt2) < 15);
    CHECK(find([](double x) { return std::exp(x) - 10.0; }, -5.0, 5.0, std::numbers::ln10) < 20);
    CHECK(find([](double x) { return std::sin(x); }, 3.0, 4.0, std::numbers::pi) < 12);
    CHECK(find([](double x) { return std::cos(x) - x; }, 0.0, 1.0, 0.73908513321516064166) < 12);
    CHECK(find([](double x) { return 3.0 - x; }, 0.0, 100.0, 3.0) < 8);
  }
}

TEST_CASE("root: flat, steep, odd and discontinuous functions") {
  // Nearly vertical, and nearly flat on one side: what a friction factor or a drain near its switch looks like.
  CHECK(evaluations([](double x) { return std::tanh(1e6 * (x - 0.3)); }, 0.0, 1.0, 0.3) < 60);
  CHECK(evaluations([](double x) { return x - 1e-9; }, 0.0, 1e9, 1e-9) < 100);
  const auto colebrook = [](double f) { return 1.0 / std::sqrt(f) + 2.0 * std::log10(2.51 / (1e5 * std::sqrt(f))); };
  CHECK(std::fabs(colebrook(numerics::bracketed_root(here, "f", colebrook, 1e-4, 1.0))) < 1e-13);
  // A root of ninth order is flat over a wide interval: the answer can only be as good as the function shows it.
  const double flat = numerics::bracketed_root(
      here, "x", [](double x) { return std::pow(x - 1.0, 9); }, 0.0, 5.0);
  CHECK(std::fabs(flat - 1.0) < 1e-14);
  // A jump through zero is found as if it were a root.
  const double jump = numerics::bracketed_root(
      here, "x", [](double x) { return x < 0.7 ? -1.0 : 2.0; }, 0.0, 1.0);
  CHECK(std::fabs(jump - 0.7) <= 4.0 * eps);
}

TEST_CASE("root: an end of the bracket may be the root") {
  CHECK(numerics::bracketed_root(
            here, "x", [](double x) { return x; }, 0.0, 1.0) == 0.0);
  CHECK(numerics::bracketed_root(
            here, "x", [](double x) { return x - 1.0; }, 0.0, 1.0) == 1.0);
  CHECK(numerics::bracketed_root(
            here, "x", [](double x) { return x * 0.0; }, 2.0, 3.0) == 2.0);
}

TEST_CASE("root: the tolerances are kept, and in long double too") {
  int count = 0;
  const auto counted = [&](double x) { return ++count, std::exp(x) - 10.0; };
  const double rough = numerics::bracketed_root(here, "x", counted, -5.0, 5.0, {.absolute = 1e-2, .relative = 0.0});
  CHECK(std::fabs(rough - std::numbers::ln10) <= 2e-2);
  CHECK(count < 14);
  const long double fine = numerics::bracketed_root(
      here, "x", [](long double x) { return x * x - 2.0L; }, 0.0L, 2.0L);
  CHECK(std::fabs(fine - std::numbers::sqrt2_v<long double>) < 1e-18L);
}

TEST_CASE("root: no change of sign, NaN, and the cap on iterations") {
  const auto squared = [](double x) { return x * x + 1.0; };
  CHECK_THROWS_WITH_AS((void)numerics::bracketed_root(here, "flow", squared, -1.0, 2.0),
                       "tankwright::test: flow between -1 and 2 gives no change of sign", no_convergence);
  try {
    (void)numerics::bracketed_root(here, "flow", squared, 2.0, -1.0);
  } catch (const no_convergence& e) {
    CHECK(e.details().argument == "flow");
    CHECK(e.details().low == -1.0);
    CHECK(e.details().high == 2.0);
  }
  constexpr double nan = std::numeric_limits<double>::quiet_NaN();
  CHECK_THROWS_AS((void)numerics::bracketed_root(
                      here, "x", [](double) { return nan; }, 0.0, 1.0),
                  no_convergence);
  CHECK_THROWS_AS((void)numerics::bracketed_root(
                      here, "x", [](double x) { return x; }, nan, 1.0),
                  no_convergence);
  // NaN inside the bracket must not end as an answer.
  CHECK_THROWS_AS((void)numerics::bracketed_root(
                      here, "x", [](double x) { return x > 0.2 && x < 0.8 ? nan : x - 0.5; }, 0.0, 1.0),
                  no_convergence);
  CHECK_THROWS_WITH_AS((void)numerics::bracketed_root(
                           here, "x", [](double x) { return std::exp(x) - 10.0; }, -5.0, 5.0,
                           numerics::root_options<double>{.iterations = 2}),
                       doctest::Contains("did not converge"), no_convergence);
}
