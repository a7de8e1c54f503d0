// SPDX-License-Identifier: BSL-1.0
#include <tankwright/numerics/uncertainty.hpp>

#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <vector>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::numerics;
using namespace tankwright::testing;

namespace {

const evidence h1{"tankwright::numerics::propagate", kind::published, "JCGM 100:2008, H.1 (read in two reproductions)"};
const evidence h2{"tankwright::numerics::propagate", kind::published, "JCGM 100:2008, H.2 (read in two reproductions)"};
const evidence analytic{"tankwright::numerics::propagate", kind::identity, "analytic derivatives"};

measured<double> normal(double value, double uncertainty, double freedom = std::numeric_limits<double>::infinity()) {
  return {value, uncertainty, spread::normal, freedom};
}

/// Pearson's coefficient of two columns of readings.
double coefficient(const std::vector<double>& a, const std::vector<double>& b) {
  const auto n = static_cast<double>(a.size());
  double mean_a = 0.0, mean_b = 0.0;
  for (std::size_t i = 0; i < a.size(); ++i) mean_a += a[i] / n, mean_b += b[i] / n;
  double aa = 0.0, bb = 0.0, ab = 0.0;
  for (std::size_t i = 0; i < a.size(); ++i) {
    aa += (a[i] - mean_a) * (a[i] - mean_a);
    bb += (b[i] - mean_b) * (b[i] - mean_b);
    ab += (a[i] - mean_a) * (b[i] - mean_b);
  }
  return ab / std::sqrt(aa * bb);
}

}  // namespace

TEST_CASE("uncertainty: the end gauge, H.1 of the GUM") {
  // Comparison of two gauges: d is read with three effects, H.1.3.2.
  const auto d = propagate([](double a, double b, double c) { return 215.0 + a + b + c; }, normal(0.0, 5.8, 24.0),
                           normal(0.0, 10.0 / 2.571, 5.0), normal(0.0, 20.0 / 3.0, 8.0));
  TW_CHECK(h1, d.uncertainty, 9.7, tolerance{.absolute = 0.05});
  TW_CHECK(h1, d.degrees_of_freedom, 25.6, tolerance{.absolute = 0.05});

  const auto length_of_gauge = [](double ls, double difference, double dalpha, double theta, double alpha,
                                  double dtheta) { return ls + difference - ls * (dalpha * theta + alpha * dtheta); };
  const auto l =
      propagate({.coverage = 0.99}, length_of_gauge, normal(50000623.0, 25.0, 18.0), normal(215.0, 9.7, 25.6),
                normal(0.0, 0.58e-6, 50.0), normal(-0.1, 0.41), normal(11.5e-6, 1.2e-6), normal(0.0, 0.029, 2.0));
  TW_CHECK(h1, l.value, 50000838.0, tolerance{.absolute = 0.5});
  TW_CHECK(h1, l.uncertainty, 32.0, tolerance{.absolute = 0.5});
  TW_CHECK(h1, l.inputs[0].uncertainty, 25.0, tolerance{.absolute = 0.5});
  TW_CHECK(h1, l.inputs[1].uncertainty, 9.7, tolerance{.absolute = 0.05});
  TW_CHECK(h1, l.inputs[2].uncertainty, 2.9, tolerance{.absolute = 0.05});
  TW_CHECK(h1, l.inputs[3].uncertainty, 0.0, tolerance{.absolute = 1e-6});
  TW_CHECK(h1, l.inputs[4].uncertainty, 0.0, tolerance{.absolute = 1e-6});
  TW_CHECK(h1, l.inputs[5].uncertainty, 16.6, tolerance{.absolute = 0.1});  // 16.68 from the rounded 0.029
  TW_CHECK(h1, std::floor(l.degrees_of_freedom), 16.0, tolerance{});
  TW_CHECK(h1, l.factor, 2.92, tolerance{.absolute = 0.005});
  TW_CHECK(h1, 0.5 * (l.high - l.low), 93.0, tolerance{.absolute = 0.5});
  // H.1.7: the second-order terms raise u to 34 nm.
  TW_CHECK(h1, l.uncertainty * std::hypot(1.0, l.nonlinearity), 34.0, tolerance{.absolute = 0.5});
}

TEST_CASE("uncertainty: resistance and reactance, H.2 of the GUM, correlated") {
  const std::vector<double> volts{5.007, 4.994, 5.005, 4.990, 4.999};
  const std::vector<double> amperes{19.663e-3, 19.639e-3, 19.640e-3, 19.685e-3, 19.678e-3};
  const std::vector<double> radians_{1.0456, 1.0438, 1.0468, 1.0428, 1.0433};
  const auto mean = [](const std::vector<double>& readings) { return mean_of(std::span<const double>{readings}); };
  const propagation how{.correlations = {{0, 1, coefficient(volts, amperes)},
                                         {0, 2, coefficient(volts, radians_)},
                                         {1, 2, coefficient(amperes, radians_)}}};
  TW_CHECK(h2, how.correlations[0].coefficient, -0.36, tolerance{.absolute = 0.005});
  TW_CHECK(h2, how.correlations[1].coefficient, 0.86, tolerance{.absolute = 0.005});
  TW_CHECK(h2, how.correlations[2].coefficient, -0.65, tolerance{.absolute = 0.005});

  const auto of = [&](auto f) { return propagate(how, f, mean(volts), mean(amperes), mean(radians_)); };
  const auto r = of([](double v, double i, double phi) { return v / i * std::cos(phi); });
  const auto x = of([](double v, double i, double phi) { return v / i * std::sin(phi); });
  const auto z = of([](double v, double i, double) { return v / i; });
  TW_CHECK(h2, r.value, 127.732, tolerance{.absolute = 5e-4});
  TW_CHECK(h2, r.uncertainty, 0.071, tolerance{.absolute = 5e-4});
  TW_CHECK(h2, x.value, 219.847, tolerance{.absolute = 5e-4});
  TW_CHECK(h2, x.uncertainty, 0.295, tolerance{.absolute = 1e-3});  // 0.2956; the GUM works with rounded numbers
  TW_CHECK(h2, z.value, 254.260, tolerance{.absolute = 5e-4});
  TW_CHECK(h2, z.uncertainty, 0.236, tolerance{.absolute = 5e-4});
  CHECK(r.degrees_of_freedom == 4.0);  // correlated: the least freedom of the inputs

  // The correlation of two results follows from the uncertainty of their sum.
  const auto between = [&](auto f, auto g, double uf, double ug) {
    const auto sum = of([&](double v, double i, double phi) { return f(v, i, phi) + g(v, i, phi); });
    return (sum.uncertainty * sum.uncertainty - uf * uf - ug * ug) / (2.0 * uf * ug);
  };
  const auto fr = [](double v, double i, double phi) { return v / i * std::cos(phi); };
  const auto fx = [](double v, double i, double phi) { return v / i * std::sin(phi); };
  const auto fz = [](double v, double i, double) { return v / i; };
  const evidence table_h4{"tankwright::numerics::propagate", kind::from_memory,
                          "JCGM 100:2008, table H.4, correlations"};
  TW_CHECK(table_h4, between(fr, fx, r.uncertainty, x.uncertainty), -0.588, tolerance{.absolute = 5e-4});
  TW_CHECK(table_h4, between(fr, fz, r.uncertainty, z.uncertainty), -0.485, tolerance{.absolute = 5e-4});
  TW_CHECK(table_h4, between(fx, fz, x.uncertainty, z.uncertainty), 0.993, tolerance{.absolute = 5e-4});
}

TEST_CASE("uncertainty: the Stefan-Boltzmann constant from the constants of 2010") {
  const evidence codata{"tankwright::numerics::propagate", kind::published,
                        "NIST Uncertainty Machine, example 10 (read in a reproduction); CODATA 2010"};
  const auto sigma = [](double h, double gas, double rydberg, double electron, double alpha) {
    return 32.0 * std::pow(std::acos(-1.0), 5) * h * std::pow(gas, 4) * std::pow(rydberg, 4) /
           (15.0 * std::pow(electron, 4) * 1e-12 * std::pow(299792458.0, 6) * std::pow(alpha, 8));
  };
  const auto result = propagate(sigma, normal(6.62606957e-34, 0.00000029e-34), normal(8.3144621, 0.0000075),
                                normal(10973731.568539, 0.000055), normal(5.4857990946e-4, 0.0000000022e-4),
                                normal(7.2973525698e-3, 0.0000000024e-3));
  TW_CHECK(codata, result.value, 5.67037e-8, tolerance{.absolute = 0.5e-13});
  TW_CHECK(codata, result.uncertainty, 2.05e-13, tolerance{.absolute = 0.005e-13});
  CHECK(result.inputs[1].share > 0.999);  // the gas constant
}

TEST_CASE("uncertainty: slopes against analytic derivatives, from tiny to large uncertainties") {
  for (const double part : {1e-12, 1e-8, 1e-4, 1e-2, 0.3}) {
    for (const double x : {-2.0, 1e-3, 1.0, 40.0, 1e5}) {
      const double u = std::fabs(x) * part;
      const auto slope_of = [&](auto f, double at) { return propagate(f, normal(at, u)).uncertainty / u; };
      const double allowed = 1e-9;
      const double noise = 2e-15 * 7.0 / std::fmax(u, 1e-5 * std::fabs(x));  // of a result of 7 over the step
      TW_CHECK(analytic, slope_of([](double t) { return 3.0 * t - 7.0; }, x), 3.0,
               (tolerance{.absolute = noise, .relative = allowed}));
      TW_CHECK(analytic, slope_of([](double t) { return t * t; }, x), 2.0 * std::fabs(x), relative(allowed));
      if (u < 0.3) {
        TW_CHECK(analytic, slope_of([](double t) { return std::sin(t); }, x), std::fabs(std::cos(x)),
                 (tolerance{.absolute = 2e-9, .relative = 1e-8}));
      }
      if (x > 0.0) {
        TW_CHECK(analytic, slope_of([](double t) { return std::sqrt(t); }, x), 0.5 / std::sqrt(x), relative(allowed));
        TW_CHECK(analytic, slope_of([](double t) { return 1.0 / t; }, x), 1.0 / (x * x), relative(allowed));
      }
    }
  }
}

TEST_CASE("uncertainty: quantities go in and come out") {
  const auto box = [](length l, length w, length h) { return volume{l * w * h}; };
  const auto result =
      propagate(box, rectangular(metres(2.4), millimetres(6.0)), rectangular(metres(0.9), millimetres(6.0)),
                to_the_nearest(metres(0.8), millimetres(10.0)));
  static_assert(std::is_same_v<decltype(result.value), volume>);
  TW_CHECK(analytic, result.value, litres(1728.0), relative(1e-15));
  const double a = 0.006 / std::sqrt(3.0) / 2.4, b = 0.006 / std::sqrt(3.0) / 0.9, c = 0.01 / std::sqrt(12.0) / 0.8;
  TW_CHECK(analytic, result.uncertainty, litres(1728.0 * std::hypot(a, b, c)), relative(1e-12));
  TW_CHECK(analytic, result.inputs[1].share, b * b / (a * a + b * b + c * c), relative(1e-11));
  TW_CHECK(analytic, result.inputs[1].uncertainty, litres(1728.0 * b), relative(1e-12));
  TW_CHECK(analytic, result.factor, 1.959963984540054, relative(1e-13));
  CHECK(result.nonlinearity < 0.01);
  CHECK(result.coverage == 0.95);

  // A temperature is a point, its uncertainty a difference; a proportion and a salinity keep their types.
  const auto warmer = propagate([](temperature t) { return t + kelvin_steps(1.0); },
                                with_uncertainty(celsius(25.0), kelvin_steps(0.2)));
  static_assert(std::is_same_v<decltype(warmer.uncertainty), temperature_difference>);
  CHECK(compare(warmer.uncertainty, kelvin_steps(0.2), relative(1e-10)).good);
  const auto half = propagate([](practical_salinity s) { return practical_salinity{0.5 * s.value()}; },
                              rectangular(practical_salinity{35.0}, practical_salinity{0.6}));
  CHECK(compare(half.uncertainty, practical_salinity{0.3 / std::sqrt(3.0)}, relative(1e-10)).good);

  // What goes on with the result.
  const evidence same{"tankwright::numerics::as_measured", kind::identity, "the same numbers"};
  TW_CHECK(same, as_measured(result).value.get(), result.value, tolerance{});
  TW_CHECK(same, as_measured(result).uncertainty.get(), result.uncertainty, tolerance{});
  const evidence band{"tankwright::numerics::as_estimate", kind::identity, "the same numbers"};
  TW_CHECK(band, as_estimate(result).low, result.low, tolerance{});
  TW_CHECK(band, as_estimate(result).central, result.value, tolerance{});
  TW_CHECK(band, as_estimate(result).high, result.high, tolerance{});
}

TEST_CASE("uncertainty: correlations") {
  const auto sum = [](double a, double b) { return a + b; };
  const auto difference = [](double a, double b) { return a - b; };
  for (const double r : {-1.0, -0.5, 0.0, 0.5, 1.0}) {
    const propagation how{.correlations = {{0, 1, r}}};
    TW_CHECK(analytic, propagate(how, sum, normal(1.0, 3.0), normal(2.0, 4.0)).uncertainty, std::sqrt(25.0 + 24.0 * r),
             (tolerance{.absolute = 1e-7, .relative = 1e-11}));
    TW_CHECK(analytic, propagate(how, difference, normal(1.0, 3.0), normal(2.0, 4.0)).uncertainty,
             std::sqrt(25.0 - 24.0 * r), (tolerance{.absolute = 1e-7, .relative = 1e-11}));
  }
  const auto shares = propagate({.correlations = {{0, 1, 0.5}}}, sum, normal(1.0, 3.0), normal(2.0, 4.0)).inputs;
  TW_CHECK(analytic, shares[0].share + shares[1].share, 1.0, relative(1e-14));
  TW_CHECK(analytic, shares[0].share, (9.0 + 6.0) / 37.0, relative(1e-10));
}

TEST_CASE("uncertainty: coverage factors against Boost.Math") {
  const evidence boost{"tankwright::numerics::propagate", kind::library,
                       "Boost.Math, Student's t and normal quantiles"};
  for (const double coverage : {0.5, 0.6827, 0.9, 0.95, 0.99}) {
    for (const double freedom : {1.0, 2.0, 5.5, 16.0, 100.0}) {
      const double k = propagate(
                           {.coverage = coverage}, [](double x) { return x; }, normal(0.0, 1.0, freedom))
                           .factor;
      TW_CHECK(boost, k, quantile(boost::math::students_t{std::floor(freedom)}, 0.5 + 0.5 * coverage), relative(1e-11));
    }
    const double k = propagate(
                         {.coverage = coverage}, [](double x) { return x; }, normal(0.0, 1.0))
                         .factor;
    TW_CHECK(boost, k, quantile(boost::math::normal{}, 0.5 + 0.5 * coverage), relative(1e-12));
  }
}

TEST_CASE("uncertainty: functions that end, bend or have no slope") {
  // A function that refuses negative values, met at zero, near zero, and with a wide uncertainty.
  const auto root = [](double x) {
    core::check("tankwright::test", {"x", "", not_negative}, x);
    return x * (1.0 + x);
  };
  for (const double x : {0.0, 1e-3, 0.1}) {
    const auto result = propagate(root, normal(x, 0.2));
    TW_CHECK(analytic, result.uncertainty, 0.2 * (1.0 + 2.0 * x), relative(1e-7));
    CHECK(std::isinf(result.nonlinearity));
  }
  // Bends as much as it rises: the warning is there.
  CHECK(propagate([](double x) { return x * x; }, normal(1.0, 1.0)).nonlinearity > 0.3);
  CHECK(propagate([](double x) { return x * x; }, normal(0.0, 1.0)).nonlinearity > 1e6);
  CHECK(propagate([](double x) { return std::sin(x); }, normal(1e5, 3e4)).nonlinearity > 0.5);
  CHECK(propagate([](double x) { return 3.0 * x; }, normal(1.0, 1.0)).nonlinearity < 1e-12);
  // Nothing uncertain, or nothing that matters.
  const auto sharp = propagate([](double x) { return 3.0 * x; }, normal(2.0, 0.0));
  CHECK(sharp.value == 6.0);
  CHECK(sharp.uncertainty == 0.0);
  CHECK(sharp.low == 6.0);
  CHECK(sharp.nonlinearity == 0.0);
  const auto flat = propagate([](double, double y) { return y; }, normal(2.0, 1.0), normal(3.0, 1.0));
  CHECK(flat.inputs[0].share == 0.0);
  CHECK(flat.inputs[1].share == 1.0);
}

TEST_CASE("uncertainty: bad input is refused by name") {
  const auto sum = [](double a, double b) { return a + b; };
  const auto one = normal(1.0, 0.1);
  const auto refused = [&](const propagation& how, const char* words) {
    CHECK_THROWS_WITH_AS((void)propagate(how, sum, one, one), doctest::Contains(words), invalid_input);
  };
  refused({.coverage = 1.0}, "tankwright::numerics::propagate: coverage = 1 is not possible");
  refused({.coverage = 95.0}, "coverage = 95 is not possible; expected more than 0 and below 1");
  refused({.correlations = {{0, 1, 1.5}}}, "correlation coefficient = 1.5 is not possible; expected -1 to 1");
  refused({.correlations = {{0, 1, std::numeric_limits<double>::quiet_NaN()}}}, "correlation coefficient = nan");
  refused({.correlations = {{0, 2, 0.5}}}, "correlated input = 2 does not exist; there are 2 inputs, counted from 0");
  refused({.correlations = {{1, 1, 0.5}}}, "correlated input = 1 is named as both of a pair");
  CHECK_THROWS_WITH_AS((void)propagate(
                           {.correlations = {{0, 1, 0.9}, {1, 2, 0.9}, {0, 2, -0.9}}},
                           [](double a, double b, double c) { return a + b + c; }, one, one, one),
                       doctest::Contains("contradicts the other correlations"), invalid_input);
  CHECK_THROWS_WITH_AS((void)propagate([](double) { return std::nan(""); }, one),
                       "tankwright::numerics::propagate: result = nan is not possible; expected a finite number",
                       invalid_input);
  CHECK_THROWS_AS((void)propagate([](double x) { return x; }, normal(1.0, -0.1)), invalid_input);
  CHECK_THROWS_AS((void)propagate([](double x) { return x; }, normal(1.0, 0.1, 0.5)), invalid_input);
  // What the function itself refuses at the measured value comes through as it is.
  CHECK_THROWS_WITH_AS((void)propagate(
                           [](double x) {
                             core::check("tankwright::test", {"depth", "m", not_negative}, x);
                             return x;
                           },
                           normal(-1.0, 0.1)),
                       doctest::Contains("tankwright::test: depth = -1 m"), invalid_input);
  // A function that has a value at one point only.
  CHECK_THROWS_AS((void)propagate([](double x) { return x == 1.0 ? 1.0 : std::nan(""); }, one), error);
}
