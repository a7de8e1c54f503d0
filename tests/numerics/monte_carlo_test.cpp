// SPDX-License-Identifier: BSL-1.0
#include <tankwright/numerics/monte_carlo.hpp>

#include <bit>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <thread>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::numerics;
using namespace tankwright::testing;

namespace {

evidence about(kind rests_on, const char* source) { return {"tankwright::numerics::simulate", rests_on, source}; }

measured<double> few_readings(double value, double uncertainty, double freedom) {
  return {value, uncertainty, spread::student, freedom};
}

const auto sum_of_four = [](double a, double b, double c, double d) { return a + b + c + d; };

}  // namespace

TEST_CASE("monte carlo: the numbers are spread as they should be") {
  const numerics::counter_random random{42};
  // Kolmogorov-Smirnov: at most 1.95/sqrt(n) in all but one of a thousand runs.
  constexpr std::size_t n = 100'000;
  const auto distance = [&](auto draw, auto probability_below) {
    std::vector<double> values(n);
    for (std::size_t i = 0; i < n; ++i) values[i] = draw(i);
    std::sort(values.begin(), values.end());
    double largest = 0.0;
    for (std::size_t i = 0; i < n; ++i) {
      largest = std::fmax(largest, std::fabs(probability_below(values[i]) - (static_cast<double>(i) + 0.5) / n));
    }
    return largest * std::sqrt(static_cast<double>(n));
  };
  const auto normal_below = [](double x) { return 0.5 * std::erfc(-x / std::sqrt(2.0)); };
  const auto rectangular_below = [](double x) { return 0.5 + x / (2.0 * std::sqrt(3.0)); };
  const auto triangular_below = [](double x) {
    const double t = x / std::sqrt(6.0);
    return t < 0.0 ? 0.5 * (1.0 + t) * (1.0 + t) : 1.0 - 0.5 * (1.0 - t) * (1.0 - t);
  };
  const auto arcsine_below = [](double x) { return 0.5 + std::asin(x / std::sqrt(2.0)) / std::numbers::pi; };
  CHECK(distance([&](std::size_t i) { return random.uniform(i); }, [](double x) { return x; }) < 1.95);
  CHECK(distance([&](std::size_t i) { return random.normal(i); }, normal_below) < 1.95);
  for (const double freedom : {1.0, 4.0, 30.0}) {
    const boost::math::students_t t{freedom};
    CHECK(distance([&](std::size_t i) { return random.student(i, freedom); }, [&](double x) { return cdf(t, x); }) <
          1.95);
  }
  const auto of_shape = [&](spread shape, auto below) {
    const detail::raw_input input{0.0, 1.0, shape, 1.0};
    CHECK(distance([&](std::size_t i) { return input.drawn(random, i); }, below) < 1.95);
    CHECK(distance([&](std::size_t i) { return input.at_normal(random.normal(i)); }, below) < 1.95);
  };
  of_shape(spread::normal, normal_below);
  of_shape(spread::rectangular, rectangular_below);
  of_shape(spread::triangular, triangular_below);
  of_shape(spread::arcsine, arcsine_below);
}

TEST_CASE("monte carlo: JCGM 101, 9.2, sums of four inputs") {
  const auto table_2 = about(kind::published, "JCGM 101:2008, 9.2.2, table 2 (read in a reproduction)");
  const auto unit = with_uncertainty(0.0, 1.0);
  const auto normal = simulate({.samples = 400'000}, sum_of_four, unit, unit, unit, unit);
  TW_CHECK(table_2, normal.value, 0.0, tolerance{.absolute = 0.01});
  TW_CHECK(table_2, normal.uncertainty, 2.0, tolerance{.absolute = 0.005});
  TW_CHECK(table_2, normal.low, -3.92, tolerance{.absolute = 0.015});
  TW_CHECK(table_2, normal.high, 3.92, tolerance{.absolute = 0.015});
  for (const double share : normal.shares) TW_CHECK(table_2, share, 0.25, tolerance{.absolute = 0.005});

  // 9.2.3: the sum of four rectangular inputs; the interval is 2 sqrt(3) (2 - (3/5)^(1/4)).
  const auto table_3 = about(kind::published, "JCGM 101:2008, 9.2.3, table 3 (read in a reproduction)");
  const auto exact = about(kind::identity, "fourth-order spline: sum of four rectangular variables");
  const auto flat = rectangular(0.0, std::sqrt(3.0));
  const auto equal = simulate({.samples = 400'000}, sum_of_four, flat, flat, flat, flat);
  TW_CHECK(table_3, equal.uncertainty, 2.0, tolerance{.absolute = 0.005});
  TW_CHECK(table_3, equal.high, 3.88, tolerance{.absolute = 0.015});
  TW_CHECK(exact, equal.high, 2.0 * std::sqrt(3.0) * (2.0 - std::pow(0.6, 0.25)), tolerance{.absolute = 0.01});
  TW_CHECK(exact, equal.low, -2.0 * std::sqrt(3.0) * (2.0 - std::pow(0.6, 0.25)), tolerance{.absolute = 0.01});

  // 9.2.4: one of them ten times as wide. The GUM's +/- 19.8 is too wide by far.
  const auto table_4 = about(kind::from_memory, "JCGM 101:2008, 9.2.4, table 4");
  const auto wide = rectangular(0.0, 10.0 * std::sqrt(3.0));
  const auto dominated = simulate({.samples = 400'000}, sum_of_four, flat, flat, flat, wide);
  TW_CHECK(table_4, dominated.uncertainty, 10.1, tolerance{.absolute = 0.1});
  TW_CHECK(table_4, dominated.high, 17.0, tolerance{.absolute = 0.1});
  CHECK(dominated.shares[3] > 0.95);
}

TEST_CASE("monte carlo: JCGM 101, 9.3, calibration of a weight") {
  const auto deviation = [](double reference, double difference, double air, double weight, double brass) {
    return (reference + difference) * (1.0 + (air - 1.2) * (1.0 / weight - 1.0 / brass)) - 100000.0;
  };
  const auto reference = with_uncertainty(100000.0, 0.050);
  const auto difference = with_uncertainty(1.234, 0.020);
  const auto air = rectangular(1.2, 0.1);
  const auto weight = rectangular(8000.0, 1000.0);
  const auto brass = rectangular(8000.0, 50.0);
  const auto result = simulate({.samples = 400'000}, deviation, reference, difference, air, weight, brass);
  const auto table_6 = about(kind::from_memory, "JCGM 101:2008, 9.3, table 6 (inputs read in a reproduction)");
  TW_CHECK(table_6, result.value, 1.2340, tolerance{.absolute = 3e-4});
  TW_CHECK(table_6, result.uncertainty, 0.0754, tolerance{.absolute = 2e-4});
  TW_CHECK(table_6, result.shortest_low, 1.0834, tolerance{.absolute = 2e-3});
  TW_CHECK(table_6, result.shortest_high, 1.3825, tolerance{.absolute = 2e-3});

  // The same variance in closed form: the factors are independent, and E[1/rho], E[1/rho^2] of a rectangle are logs.
  const auto mean_inverse = [](double low, double high) { return std::log(high / low) / (high - low); };
  const auto mean_inverse_square = [](double low, double high) { return 1.0 / (low * high); };
  const double inverse_difference_square = mean_inverse_square(7000.0, 9000.0) + mean_inverse_square(7950.0, 8050.0) -
                                           2.0 * mean_inverse(7000.0, 9000.0) * mean_inverse(7950.0, 8050.0);
  const double mass_square = 100001.234 * 100001.234 + 0.05 * 0.05 + 0.02 * 0.02;
  const double variance = 0.05 * 0.05 + 0.02 * 0.02 + mass_square * 0.01 / 3.0 * inverse_difference_square;
  TW_CHECK(about(kind::identity, "variance in closed form"), result.uncertainty, std::sqrt(variance),
           tolerance{.absolute = 2e-4});
  // First order does not see it (0.0539), and says so.
  const auto first = propagate(deviation, reference, difference, air, weight, brass);
  const evidence guf{"tankwright::numerics::propagate", kind::from_memory, "JCGM 101:2008, 9.3, table 6"};
  TW_CHECK(guf, first.uncertainty, 0.0539, tolerance{.absolute = 5e-5});
  CHECK(first.nonlinearity > 0.5);
}

TEST_CASE("monte carlo: JCGM 101, 9.5, calibration of a gauge block") {
  // The two curvilinear trapezoids are rectangles whose half width is itself uncertain.
  const auto deviation = [](double ls, double d, double d1, double d2, double alpha, double theta, double swing,
                            double width_a, double part_a, double width_t, double part_t) {
    return ls + d + d1 + d2 - ls * (width_a * part_a * (theta + swing) + alpha * width_t * part_t) - 50e6;
  };
  const auto result =
      simulate({.samples = 200'000, .coverage = 0.99}, deviation, few_readings(50000623.0, 25.0, 18.0),
               few_readings(215.0, 6.0, 24.0), few_readings(0.0, 4.0, 5.0), few_readings(0.0, 7.0, 8.0),
               rectangular(11.5e-6, 2e-6), with_uncertainty(-0.1, 0.2), arcsine(0.0, 0.5), rectangular(1e-6, 0.1e-6),
               rectangular(0.0, 1.0), rectangular(0.050, 0.025), rectangular(0.0, 1.0));
  const auto table_11 = about(kind::published, "JCGM 101:2008, 9.5, table 11 (read in a reproduction)");
  TW_CHECK(table_11, result.uncertainty, 36.0, tolerance{.absolute = 0.5});
  const auto recalled = about(kind::from_memory, "JCGM 101:2008, 9.5, table 11");
  TW_CHECK(recalled, result.value, 838.0, tolerance{.absolute = 0.5});
  TW_CHECK(recalled, result.low, 745.0, tolerance{.absolute = 1.5});
  TW_CHECK(recalled, result.high, 932.0, tolerance{.absolute = 1.5});
}

TEST_CASE("monte carlo: a logarithm, where the spread leans to a side") {
  // Table 9.2 of NPL DEM-ES-011, and its closed form: ln x with x rectangular between 0.1 and 1.1.
  const auto npl = about(kind::published, "NPL DEM-ES-011, 9.2 (read in a reproduction)");
  const auto exact = about(kind::identity, "moments of ln x in closed form");
  const auto result = simulate(
      {.samples = 400'000}, [](double x) { return std::log(x); }, rectangular(0.6, 0.5));
  TW_CHECK(npl, result.value, -0.665, tolerance{.absolute = 2e-3});
  TW_CHECK(npl, result.uncertainty, 0.606, tolerance{.absolute = 2e-3});
  TW_CHECK(npl, result.shortest_low, -1.895, tolerance{.absolute = 5e-3});
  TW_CHECK(npl, result.shortest_high, 0.095, tolerance{.absolute = 2e-3});
  const auto moment = [](double x) { return x * std::log(x) - x; };
  const auto square = [](double x) { return x * std::log(x) * std::log(x) - 2.0 * (x * std::log(x) - x); };
  const double mean = moment(1.1) - moment(0.1);
  TW_CHECK(exact, result.value, mean, tolerance{.absolute = 2e-3});
  TW_CHECK(exact, result.uncertainty, std::sqrt(square(1.1) - square(0.1) - mean * mean), tolerance{.absolute = 2e-3});
}

TEST_CASE("monte carlo: correlations, normal and not") {
  const auto copula = about(kind::identity, "correlation of a Gaussian copula");
  const auto difference = [](double a, double b) { return a - b; };
  for (const double r : {-1.0, -0.6, 0.0, 0.6, 1.0}) {
    const simulation how{.samples = 200'000, .correlations = {{0, 1, r}}};
    const auto normal = simulate(how, difference, with_uncertainty(1.0, 3.0), with_uncertainty(2.0, 4.0));
    TW_CHECK(copula, normal.uncertainty, std::sqrt(25.0 - 24.0 * r), tolerance{.absolute = 0.03});
    // Rectangular inputs show (6/pi) asin(r/2).
    const double shown = 6.0 / std::numbers::pi * std::asin(0.5 * r);
    const auto flat =
        simulate(how, difference, rectangular(1.0, 3.0 * std::sqrt(3.0)), rectangular(2.0, 4.0 * std::sqrt(3.0)));
    TW_CHECK(copula, flat.uncertainty, std::sqrt(25.0 - 24.0 * shown), tolerance{.absolute = 0.03});
    CHECK(std::fabs(shown - r) <= 0.04 * std::fabs(r) + 1e-15);
  }
}

TEST_CASE("monte carlo: the first order agrees where the function is straight") {
  const auto box = [](length l, length w, length h) { return volume{l * w * h}; };
  const auto l = rectangular(metres(2.4), millimetres(6.0));
  const auto w = triangular(metres(0.9), millimetres(6.0));
  const auto h = to_the_nearest(metres(0.8), millimetres(10.0));
  const auto first = propagate(box, l, w, h);
  const auto drawn = simulate({}, box, l, w, h);
  const auto law = about(kind::identity, "law of propagation for a function that is nearly straight");
  TW_CHECK(law, drawn.value, first.value, within(litres(0.1)));
  TW_CHECK(law, drawn.uncertainty, first.uncertainty, relative(0.01));
  for (std::size_t i = 0; i < 3; ++i)
    TW_CHECK(law, drawn.shares[i], first.inputs[i].share, tolerance{.absolute = 0.01});
  const evidence band{"tankwright::numerics::as_estimate", kind::identity, "the same numbers"};
  TW_CHECK(band, as_estimate(drawn).low, drawn.low, tolerance{});
  TW_CHECK(band, as_estimate(drawn).high, drawn.high, tolerance{});
}

TEST_CASE("monte carlo: probabilities and quantiles of the results") {
  const auto result = simulate(
      {.samples = 100'000}, [](double x) { return x; }, rectangular(5.0, 5.0));
  CHECK(std::fabs(result.probability_below(3.0) - 0.3) < 0.005);
  CHECK(result.probability_below(-1.0) == 0.0);
  CHECK(result.probability_below(11.0) == 1.0);
  CHECK(std::fabs(result.quantile(percent(30.0)) - 3.0) < 0.05);
  CHECK(result.quantile(percent(0.0)) == result.results.front());
  CHECK(result.quantile(percent(100.0)) == result.results.back());
  CHECK_THROWS_AS((void)result.quantile(fraction(1.5)), invalid_input);
  CHECK(std::is_sorted(result.results.begin(), result.results.end()));
}

TEST_CASE("monte carlo: the interval has the coverage it claims, by the count of 7.7") {
  const auto result = simulate(
      {.samples = 1000, .coverage = 0.9}, [](double x) { return x; }, with_uncertainty(0.0, 1.0));
  // r = (M - q)/2 = 50 of the sorted results, counted from 1, and r + q.
  CHECK(result.low == result.results[49]);
  CHECK(result.high == result.results[949]);
  CHECK(result.shortest_high - result.shortest_low <= result.high - result.low);
}

TEST_CASE("monte carlo: reproducible by seed, also from several threads at once") {
  const auto run = [](std::uint64_t seed) {
    return simulate(
        {.samples = 20'000, .seed = seed}, [](double a, double b) { return a * b; }, with_uncertainty(3.0, 0.1),
        rectangular(2.0, 0.3));
  };
  const auto once = run(7);
  CHECK(run(7).results == once.results);
  CHECK(run(8).results != once.results);
  std::vector<std::vector<double>> results(4);
  {
    std::vector<std::jthread> threads;
    for (auto& place : results) threads.emplace_back([&place, &run] { place = run(7).results; });
  }
  for (const auto& place : results) CHECK(place == once.results);
  // The same on every machine: integers first, so a number can be pinned.
  CHECK(numerics::counter_random{1}.uniform(0) == numerics::counter_random{1}.uniform(0));
}

TEST_CASE("monte carlo: draws that the function refuses") {
  const auto not_below_zero = [](double x) {
    core::check("tankwright::test", {"x", "", not_negative}, x);
    return x;
  };
  const auto x = with_uncertainty(1.0, 1.0);  // one in six is negative
  CHECK_THROWS_WITH_AS((void)simulate({.samples = 1000}, not_below_zero, x),
                       doctest::Contains("tankwright::test: x = -"), invalid_input);
  CHECK_THROWS_AS((void)simulate({.samples = 1000, .refused_allowed = percent(10.0)}, not_below_zero, x),
                  invalid_input);
  const auto result = simulate({.samples = 10'000, .refused_allowed = percent(20.0)}, not_below_zero, x);
  CHECK(result.refused + result.results.size() == 10'000);
  CHECK(result.refused > 1400);
  CHECK(result.refused < 1800);
  CHECK(result.results.front() >= 0.0);
}

TEST_CASE("monte carlo: bad input is refused by name") {
  const auto same = [](double x) { return x; };
  const auto one = with_uncertainty(1.0, 0.1);
  CHECK_THROWS_WITH_AS((void)simulate({.samples = 0}, same, one),
                       doctest::Contains("tankwright::numerics::simulate: samples = 0"), invalid_input);
  CHECK_THROWS_WITH_AS((void)simulate({.samples = 100, .coverage = 0.999}, same, one),
                       "tankwright::numerics::simulate: samples = 100 are too few for the coverage", invalid_input);
  CHECK_THROWS_AS((void)simulate({.coverage = 0.0}, same, one), invalid_input);
  CHECK_THROWS_WITH_AS((void)simulate(
                           {.samples = 100}, [](double) { return std::nan(""); }, one),
                       doctest::Contains("result = nan"), invalid_input);
  const auto sum = [](double a, double b) { return a + b; };
  CHECK_THROWS_WITH_AS((void)simulate({.correlations = {{0, 1, 0.5}}}, sum, one, few_readings(1.0, 0.1, 4.0)),
                       doctest::Contains("correlated input = 1 is the mean of a few readings"), invalid_input);
  CHECK_THROWS_AS((void)simulate({.correlations = {{0, 5, 0.5}}}, sum, one, one), invalid_input);
  CHECK_THROWS_AS((void)simulate({}, same, measured<double>{1.0, -1.0}), invalid_input);
}
