// SPDX-License-Identifier: BSL-1.0
// Leak tests and their planning a second time, with Boost.Math's t distribution; ends of every argument.
#include <array>
#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <functional>
#include <tankwright/vessel.hpp>
#include <vector>

#include "support/edges.hpp"
#include "support/reference.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {

evidence second(std::string_view function, std::string_view source = "a second transcription, t by Boost.Math") {
  return {"tankwright::vessel::" + std::string{function}, kind::identity, std::string{source}};
}
double t_of(double confidence, double freedom) { return quantile(boost::math::students_t{freedom}, confidence); }
double above(double t, double freedom) { return cdf(complement(boost::math::students_t{freedom}, t)); }
velocity mm_a_day(double millimetres) { return millimetres_per_day(millimetres); }

/// A fall [mm/d] with a zigzag of +-`scatter` [mm], every six hours.
vs::leak_test zigzag(double fall, double scatter, int n = 13) {
  vs::leak_test test{.surface = square_metres(2), .depth = metres(0.5), .resolution = micrometres(1), .label = "z"};
  for (int i = 0; i < n; ++i) {
    const double bend = (i % 4 == 1 || i % 4 == 2 ? 1 : -1) * scatter;
    test.readings.push_back({.at = hours(6.0 * i), .level = millimetres(400 - fall * i / 4.0 + bend)});
  }
  return test;
}
/// Slope [mm/d], residual scatter [mm] and Sxx [d^2] of the readings by the plain sums.
struct fit {
  double slope, scatter, sxx;
};
fit line_of(const vs::leak_test& test) {
  const double n = static_cast<double>(test.readings.size());
  double x = 0, y = 0, xx = 0, xy = 0, yy = 0;
  for (const auto& r : test.readings) {
    const double t = in_days(r.at), l = in_millimetres(r.level) - 400;
    x += t, y += l, xx += t * t, xy += t * l, yy += l * l;
  }
  const double sxx = xx - x * x / n, sxy = xy - x * y / n, syy = yy - y * y / n;
  return {sxy / sxx, std::sqrt((syy - sxy * sxy / sxx) / (n - 2)), sxx};
}
const tolerance near{.absolute = 1e-20, .relative = 1e-8};

}  // namespace

TEST_CASE("leak test formulas: every number of a result") {
  for (const double fall : {0.2, 1.5, -0.1}) {
    auto test = zigzag(fall, 0.3);
    test.evaporation = estimate<velocity>{mm_a_day(0.1), mm_a_day(0.3), mm_a_day(0.6), "given"};
    test.confidence = fraction(0.9);
    test.leak_that_matters = litres_per_day(0.8);
    const auto [slope, scatter, sxx] = line_of(test);
    const double s = scatter / std::sqrt(sxx), u_e = 0.5 / std::sqrt(12.0), u = std::hypot(s, u_e), t = t_of(0.9, 11);
    const double leak = -slope - 0.3;
    const auto r = vs::read_leak_test(test);
    const auto what = second("read_leak_test");
    TW_CHECK(what, r.fall.central, mm_a_day(-slope), near);
    TW_CHECK(what, r.fall.low, mm_a_day(-slope - s), near);
    TW_CHECK(what, r.fall.high, mm_a_day(-slope + s), near);
    TW_CHECK(what, r.evaporation.low, mm_a_day(0.1), near);
    TW_CHECK(what, r.evaporation.central, mm_a_day(0.3), near);
    TW_CHECK(what, r.evaporation.high, mm_a_day(0.6), near);
    TW_CHECK(what, r.standard_error, mm_a_day(u), near);
    TW_CHECK(what, r.leak_fall.central, mm_a_day(leak), near);
    TW_CHECK(what, r.leak_fall.low, mm_a_day(leak - t * u), near);
    TW_CHECK(what, r.leak_fall.high, mm_a_day(leak + t * u), near);
    TW_CHECK(what, r.leak.low, litres_per_day(2 * (leak - t * u)), near);
    TW_CHECK(what, r.leak.central, litres_per_day(2 * leak), near);
    TW_CHECK(what, r.leak.high, litres_per_day(2 * (leak + t * u)), near);
    TW_CHECK(what, r.chance_without_leak, fraction(above(leak / u, 11)), near);
    TW_CHECK(what, r.chance_to_show, fraction(above(t - 0.4 / u, 11)), near);
    TW_CHECK(what, r.minimum_detectable_leak, litres_per_day(2 * 2 * t * u), near);
    CHECK(r.leak_that_matters == litres_per_day(0.8));
    CHECK(r.lasted == hours(72));
    CHECK(r.degrees_of_freedom == 11);
    CHECK(r.readers.empty());
    CHECK(r.caution.text == vs::leak_test_caution.text);
    CHECK(r.evaporation.reason == "given");
    // Four answers, by the limits.
    const auto answer = leak - t * u > 0           ? vs::leak_answer::proven
                        : leak + t * u < 0         ? vs::leak_answer::contradictory
                        : 2 * (leak + t * u) < 0.8 ? vs::leak_answer::excluded
                                                   : vs::leak_answer::undecided;
    CHECK(r.answer == answer);
    // In a pan with the same zigzag turned round the scatter doubles; a pan counts instead of the evaporation.
    auto pan = test;
    for (std::size_t i = 0; i < pan.readings.size(); ++i) {
      const double bend = (i % 4 == 1 || i % 4 == 2 ? 1 : -1) * 0.3;
      pan.readings[i].pan = millimetres(50 - bend);
    }
    const auto with_pan = vs::read_leak_test(pan);
    auto doubled = zigzag(fall, 0.6);
    const auto [pan_slope, pan_scatter, pan_sxx] = line_of(doubled);
    TW_CHECK(what, with_pan.fall.central, mm_a_day(-pan_slope), near);
    TW_CHECK(what, with_pan.standard_error, mm_a_day(pan_scatter / std::sqrt(pan_sxx)), near);
    CHECK(with_pan.evaporation.high.value() == 0.0);
    CHECK(with_pan.evaporation.reason == "taken out by the pan");
  }
  CHECK(vs::read_leak_test(zigzag(1, 0.1)).evaporation.reason == "not deducted");
  const auto rises = vs::read_leak_test(zigzag(-5, 0.1));
  CHECK(rises.answer == vs::leak_answer::contradictory);
  // A leak that matters just at the high limit is not excluded.
  auto edge = zigzag(0, 0.3);
  edge.leak_that_matters = vs::read_leak_test(edge).leak.high;
  CHECK(vs::read_leak_test(edge).answer == vs::leak_answer::undecided);
}

TEST_CASE("leak test formulas: a coarse gauge, in the tank and in the pan") {
  // 2 mm steps, a level that passes 1.5 of them in 3 days: r = 2/(sqrt 3 x 3 x 1.5), scatter at least 2/sqrt 12.
  // With a pan the fewer steps of the two count, 3 mm of 3 and 5.
  for (const auto& [tank, pan] : {std::pair{0.75, 0.0}, {0.75, 1.25}, {1.25, 0.75}}) {
    vs::leak_test test{.surface = square_metres(2), .depth = metres(0.5), .resolution = millimetres(2)};
    for (int i = 0; i < 5; ++i) {
      test.readings.push_back({.at = hours(18.0 * i), .level = millimetres(400 - tank * i)});
      if (pan > 0) test.readings.back().pan = millimetres(50 - pan * i);
    }
    const double two = pan > 0 ? std::sqrt(2.0) : 1.0, sxx = 10 * 0.75 * 0.75;
    const double by_step = 2 / (std::sqrt(3.0) * 3 * 1.5), by_scatter = 2 / std::sqrt(12.0) / std::sqrt(sxx);
    TW_CHECK(second("read_leak_test"), vs::read_leak_test(test).standard_error,
             mm_a_day(two * std::max(by_step, by_scatter)), near);
  }
}

TEST_CASE("leak test formulas: planning") {
  for (const bool pan : {false, true}) {
    for (const double resolution : {0.01, 0.5, 2.0}) {  // mm
      for (const double lasting : {0.3, 2.0, 9.4}) {
        for (const double power : {0.95, 0.8}) {
          const vs::leak_test_plan plan{.surface = square_metres(3),
                                        .resolution = millimetres(resolution),
                                        .scatter = millimetres(0.2),
                                        .readings_per_day = 5,
                                        .pan = pan,
                                        .evaporation = {mm_a_day(0.4), mm_a_day(0.7), mm_a_day(1.3), ""},
                                        .confidence = fraction(0.95),
                                        .power = fraction(power)};
          const double n = std::max(3.0, std::floor(lasting * 5) + 1),
                       sxx = lasting * lasting * n * (n + 1) / (12 * (n - 1));
          const double sigma = std::sqrt(resolution * resolution / 12 + 0.04),
                       steps = std::max(1.0, (0.4 * lasting + 1.7 * 0.2) / resolution);
          const double slope = (pan ? std::sqrt(2.0) : 1.0) *
                               std::max(sigma / std::sqrt(sxx), resolution / (std::sqrt(3.0) * lasting * steps));
          const double u = pan ? slope : std::hypot(slope, 0.9 / std::sqrt(12.0));
          const double leak = 3 * u * (t_of(0.95, n - 2) + t_of(power, n - 2));
          CAPTURE(resolution);
          CAPTURE(lasting);
          TW_CHECK(second("minimum_detectable_leak"), vs::minimum_detectable_leak(plan, days(lasting)),
                   litres_per_day(leak), near);
          // Found in the next reading at the latest, and not one before.
          const auto least = vs::required_duration(plan, litres_per_day(leak * (1 + 1e-9)));
          REQUIRE(least);
          const double readings = std::round(in_days(*least) * 5);
          TW_CHECK(second("required_duration", "whole readings"), in_days(*least), readings / 5, relative(1e-12));
          CHECK(vs::minimum_detectable_leak(plan, *least) <= litres_per_day(leak * (1 + 1e-9)));
          if (readings > 2)
            CHECK(vs::minimum_detectable_leak(plan, days((readings - 1) / 5)) > litres_per_day(leak * (1 + 1e-9)));
          const auto coarse = vs::required_resolution(plan, days(lasting), litres_per_day(leak));
          if (coarse) {
            auto other = plan;
            other.resolution = *coarse;
            TW_CHECK(second("required_resolution", "inverse"), vs::minimum_detectable_leak(other, days(lasting)),
                     litres_per_day(leak), relative(1e-7));
          }
        }
      }
    }
  }
  const vs::leak_test_plan plain{.surface = square_metres(2), .resolution = millimetres(1)};
  // A leak so large that two steps show it, one that needs a year, none at all; a gauge of a metre, none fine enough.
  CHECK(vs::required_duration(plain, litres_per_day(1e5)) == days(0.5));
  const flow_rate year = vs::minimum_detectable_leak(plain, days(366));
  REQUIRE(vs::required_duration(plain, year * (1 + 1e-9)));
  CHECK_FALSE(vs::required_duration(plain, year * (1 - 1e-6)));
  CHECK(vs::required_resolution(plain, days(1), litres_per_day(1e8)) == metres(1));
  vs::leak_test_plan rough = plain;
  rough.scatter = millimetres(10);
  CHECK_FALSE(vs::required_resolution(rough, days(1), litres_per_day(0.001)));
  const std::array depths{metres(0.2), metres(0.5)};
  const auto stages = vs::leak_test_stages(plain, depths, litres_per_day(2));
  REQUIRE(stages.size() == 2);
  TW_CHECK(second("leak_test_stages"), stages[0].leak, litres_per_day(2 * std::sqrt(0.4)), near);
  CHECK(stages[0].depth == metres(0.2));
  CHECK(stages[0].required == vs::required_duration(plain, stages[0].leak));
  CHECK(stages[1].leak == litres_per_day(2));
  TW_CHECK(second("leak_through_hole"),
           vs::leak_through_hole({.diameter = millimetres(0.5), .depth = metres(0.7)}).value(),
           0.62 * 3.14159265358979323846 / 4 * 0.25e-6 * std::sqrt(2 * 9.80665 * 0.7), relative(1e-12));
}

TEST_CASE("leak test formulas: covered and open") {
  const auto covered = zigzag(1.0, 0.05), open = zigzag(3.0, 0.2, 9);
  const auto pair = [&](double low, double f, double high) {
    return vs::compare_covered({.covered = covered,
                                .open = open,
                                .let_through = estimate<proportion>{fraction(low), fraction(f), fraction(high), ""}});
  };
  for (const auto& [low, f, high] : {std::array{0.0, 0.0, 0.0}, {0.1, 0.2, 0.35}}) {
    const auto [c_slope, c_scatter, c_sxx] = line_of(covered);
    const auto [o_slope, o_scatter, o_sxx] = line_of(open);
    const double sc = c_scatter / std::sqrt(c_sxx), so = o_scatter / std::sqrt(o_sxx), part = 1 - f,
                 uf = (high - low) / std::sqrt(12.0);
    const double e = (-o_slope + c_slope) / part, leak = (-c_slope + f * o_slope) / part;
    const double a = sc / part, b = f * so / part, squares = a * a + b * b;
    const double freedom = squares * squares / (std::pow(a, 4) / 11 + std::pow(b, 4) / 7);
    const double u = std::sqrt(squares + std::pow(e * uf / part, 2)), half = u * t_of(0.95, freedom);
    const double u_e = std::sqrt((sc * sc + so * so) / (part * part) + std::pow(e * uf / part, 2));
    const auto r = pair(low, f, high);
    const auto what = second("compare_covered");
    TW_CHECK(what, r.leak.central, litres_per_day(2 * leak), near);
    TW_CHECK(what, r.leak.low, litres_per_day(2 * (leak - half)), near);
    TW_CHECK(what, r.leak.high, litres_per_day(2 * (leak + half)), near);
    TW_CHECK(what, r.evaporation.low, mm_a_day(e - u_e), near);
    TW_CHECK(what, r.evaporation.central, mm_a_day(e), near);
    TW_CHECK(what, r.evaporation.high, mm_a_day(e + u_e), near);
    TW_CHECK(what, r.chance_without_leak, fraction(above(leak / u, freedom)), near);
    CHECK(r.caution.text == vs::leak_test_caution.text);
  }
  check_edges("z: part that the cover lets through", "", {0.0, 0.9}, [&](double x) { return pair(x, x, x); });
  auto pan = open;
  for (auto& r : pan.readings) r.pan = metres(0.1);
  CHECK_THROWS_WITH_AS(
      (void)vs::compare_covered({.covered = covered, .open = pan, .let_through = estimate<proportion>{fraction(0.1)}}),
      doctest::Contains("has its evaporation given or a pan"), invalid_input);
  auto none = covered;
  none.readings.clear();
  CHECK_THROWS_WITH_AS(
      (void)vs::compare_covered({.covered = none, .open = open, .let_through = estimate<proportion>{fraction(0.1)}}),
      doctest::Contains("is too few"), invalid_input);
}
