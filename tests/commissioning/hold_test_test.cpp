// SPDX-License-Identifier: BSL-1.0
#include <array>
#include <boost/math/distributions/students_t.hpp>
#include <random>
#include <tankwright/commissioning/hold_test.hpp>
#include <vector>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace twc = tankwright::commissioning;

namespace {

evidence about(std::string_view function, kind rests_on, std::string_view source) {
  return {"tankwright::commissioning::" + std::string{function}, rests_on, std::string{source}};
}

/// A tank of 2 m2 and 1500 L whose level falls by `fall` [mm/d], read every `every` hours, with normal scatter [mm].
twc::hold_test simulated(double fall, double days_long, double every, double scatter, std::mt19937_64& random) {
  twc::hold_test test{.surface = square_metres(2.0),
                      .capacity = litres(1500.0),
                      .depth = metres(0.75),
                      .resolution = millimetres(0.0001)};
  std::normal_distribution<double> noise{0.0, scatter};
  for (double h = 0.0; h <= days_long * 24.0 + 1e-9; h += every) {
    test.readings.push_back({.at = hours(h), .level = millimetres(750.0 - fall * h / 24.0 + noise(random))});
  }
  return test;
}

}  // namespace

TEST_CASE("hold test: a straight fall is found exactly, and evaporation and the pan are taken out") {
  const auto exact = about("read_hold_test", kind::identity, "a straight line with known slope");
  twc::hold_test test{
      .surface = square_metres(2.0), .capacity = litres(1500.0), .depth = metres(0.75), .resolution = millimetres(0.1)};
  for (int i = 0; i <= 18; ++i) {
    test.readings.push_back({.at = hours(4.0 * i), .level = millimetres(750.0 - 3.0 * 4.0 * i / 24.0)});
  }
  test.evaporation =
      estimate<velocity>{millimetres_per_day(1.5), millimetres_per_day(2.0), millimetres_per_day(2.5), ""};
  auto result = twc::read_hold_test(test);
  TW_CHECK(exact, result.fall.central, millimetres_per_day(3.0), relative(1e-12));
  TW_CHECK(exact, result.leak_fall.central, millimetres_per_day(1.0), relative(1e-10));
  TW_CHECK(exact, result.leak.central, litres_per_day(2.0), relative(1e-10));
  // u^2 = (0.1 mm / sqrt(12))^2 / Sxx + (1 mm/d)^2 / 12 with Sxx of 19 even readings over 3 days = 9 * 19 * 20 / (12 *
  // 18).
  const double sxx = 9.0 * 19.0 * 20.0 / (12.0 * 18.0);
  const double u = std::sqrt(0.01 / 12.0 / sxx + 1.0 / 12.0);
  const boost::math::students_t distribution{17.0};
  TW_CHECK(exact, result.leak_fall.high, millimetres_per_day(1.0 + quantile(distribution, 0.95) * u), relative(1e-9));
  TW_CHECK(exact, result.chance_without_leak, fraction(cdf(complement(distribution, 1.0 / u))), relative(1e-8));
  // AWWA D110: 0.05 % of 1500 L a day.
  TW_CHECK(about("read_hold_test", kind::published, "ANSI/AWWA D110-04: 0.05 % of capacity in 24 h"), result.allowed,
           litres_per_day(0.75), relative(1e-12));

  // The same tank with a pan that loses the 2 mm/d: what is left is the leak, without any band of evaporation.
  for (auto& reading : test.readings) reading.pan = millimetres(100.0 - 2.0 * in_days(reading.at));
  result = twc::read_hold_test(test);
  TW_CHECK(exact, result.leak_fall.central, millimetres_per_day(1.0), relative(1e-10));
  CHECK(result.leak_fall.high < millimetres_per_day(1.1));
  CHECK(result.says == twc::verdict::does_not_hold);
}

TEST_CASE("hold test: warming water is not mistaken for a tight tank") {
  // 0.75 m of fresh water warming from 18 to 24 degC swells by 0.75 (rho18/rho24 - 1): the level hides that much of a
  // fall.
  const auto swelling = about("read_hold_test", kind::identity, "constant mass of warming water");
  twc::hold_test test{.surface = square_metres(2.0),
                      .capacity = litres(1500.0),
                      .depth = metres(0.75),
                      .resolution = millimetres(0.01)};
  const double rho18 = in_kilograms_per_cubic_metre(water::density(practical_salinity{0.0}, celsius(18.0)));
  for (int i = 0; i <= 12; ++i) {
    const temperature t = celsius(18.0 + 0.5 * i);
    const double rho = in_kilograms_per_cubic_metre(water::density(practical_salinity{0.0}, t));
    const double level = 750.0 + 750.0 * (rho18 / rho - 1.0) - 1.0 * i / 4.0;  // 1 mm/d leak, four readings a day
    test.readings.push_back({.at = hours(6.0 * i), .level = millimetres(level), .water = t});
  }
  TW_CHECK(swelling, twc::read_hold_test(test).leak_fall.central, millimetres_per_day(1.0), relative(1e-9));
}

TEST_CASE("hold test: false alarms and detections come as often as stated") {
  constexpr int tests = 10000;
  constexpr std::uint64_t seed = 20261125;
  MESSAGE("seed ", seed);
  std::mt19937_64 random{seed};
  int alarms = 0;
  int found = 0;
  for (int i = 0; i < tests; ++i) {
    auto tight = simulated(0.0, 3.0, 3.0, 0.5, random);
    auto leaking = simulated(0.34, 3.0, 3.0, 0.5, random);
    try {
      alarms += twc::read_hold_test(tight).leak.low.value() > 0.0;
    } catch (const invalid_input&) {
      // A tight tank without evaporation may seem to rise, by chance; that is no alarm.
    }
    found += twc::read_hold_test(leaking).leak.low.value() > 0.0;
  }
  // The one-sided 95 % limit is crossed by 5 % of tight tanks.
  TW_CHECK(about("read_hold_test", kind::identity, "the definition of confidence, 10 000 simulated tests"),
           static_cast<double>(alarms) / tests, 0.05, tolerance({.absolute = 0.01}));
  // The chance to find 0.34 mm/d is that of the noncentral t distribution: with n = 25, s = 0.5 mm and Sxx as below,
  // delta = 0.34 sqrt(Sxx) / 0.5; for 23 degrees of freedom the normal approximation is good to 0.01.
  const double sxx = 9.0 * 25.0 * 26.0 / (12.0 * 24.0);
  const double delta = 0.34 * std::sqrt(sxx) / 0.5;
  const double t = 1.7139;
  const double z = (t * (1.0 - 1.0 / (4.0 * 23.0)) - delta) / std::sqrt(1.0 + t * t / (2.0 * 23.0));
  TW_CHECK(about("read_hold_test", kind::identity, "power by the noncentral t distribution (Johnson and Welch)"),
           static_cast<double>(found) / tests, 0.5 * std::erfc(z / std::sqrt(2.0)), tolerance({.absolute = 0.012}));
}

TEST_CASE("hold test: verdicts") {
  std::mt19937_64 random{7};
  auto test = simulated(0.0, 4.0, 2.0, 0.02, random);
  test.criterion = twc::awwa_d110;  // 0.75 L/d, that is 0.375 mm/d
  CHECK(twc::read_hold_test(test).says != twc::verdict::does_not_hold);
  CHECK(twc::read_hold_test(simulated(0.2, 4.0, 2.0, 0.02, random)).says == twc::verdict::thin_margin);
  CHECK(twc::read_hold_test(simulated(1.0, 4.0, 2.0, 0.02, random)).says == twc::verdict::does_not_hold);
  CHECK(twc::read_hold_test(simulated(0.2, 1.0, 2.0, 0.02, random)).says ==
        twc::verdict::not_enough_known);  // too short
  CHECK(twc::read_hold_test(simulated(0.3, 4.0, 12.0, 2.0, random)).says ==
        twc::verdict::not_enough_known);  // too rough
  CHECK_FALSE(twc::read_hold_test(test).before_acting.text.empty());
  test.criterion = twc::bs_5337;
  TW_CHECK(about("read_hold_test", kind::published, "BS 5337: 10 mm in 7 days"), twc::read_hold_test(test).allowed,
           flow_rate::from_value(2.0 * 0.010 / (7.0 * 86400.0)), relative(1e-12));
}

TEST_CASE("hold test: bad input says what is wrong") {
  std::mt19937_64 random{7};
  const auto good = simulated(1.0, 3.0, 6.0, 0.05, random);
  const auto refuses = [&](auto&& change, std::string_view word) {
    twc::hold_test test = good;
    change(test);
    try {
      (void)twc::read_hold_test(test);
      FAIL_CHECK("accepted; expected a refusal with '" << word << "'");
    } catch (const error& e) {
      CHECK_MESSAGE(std::string_view{e.what()}.find(word) != std::string_view::npos, e.what());
    }
  };
  refuses([](auto& t) { t.readings.erase(t.readings.begin() + 2, t.readings.end()); }, "too few");
  refuses([](auto& t) { t.readings[1].level = centimetres(750.0); }, "is more than the depth of the water, 0.75 m");
  refuses(
      [](auto& t) {
        for (auto& r : t.readings) r.pan = millimetres(60.0);
        t.readings[2].pan = metres(6.0);
      },
      "largest change in the pan = 5.94 m is more than the depth of the water, 0.75 m");
  refuses([](auto& t) { t.resolution = metres(1.0); }, "resolution = 1 m is not possible; expected more than 0 and at "
                                                       "most 0.75 m");
  refuses([](auto& t) { t.readings[2].at = t.readings[0].at; }, "not later");
  refuses(
      [](auto& t) {
        for (auto& r : t.readings) r.level = metres(0.7);
      },
      "stuck");
  refuses(
      [](auto& t) {
        for (auto& r : t.readings) r.level = metres(2.0) - r.level.get();
      },
      "rises");
  refuses([](auto& t) { t.readings[3].pan = metres(0.1); }, "for all or for none");
  refuses([](auto& t) { t.readings[3].level = metres(std::nan("")); }, "level = nan");
  refuses([](auto& t) { t.surface = square_metres(0.0); }, "surface = 0 m2");
  refuses([](auto& t) { t.resolution = metres(-0.001); }, "resolution = -0.001 m");
  refuses([](auto& t) { t.confidence = percent(100.0); }, "confidence = 1");
  refuses(
      [](auto& t) {
        t.evaporation = estimate<velocity>{millimetres_per_day(2), millimetres_per_day(1), millimetres_per_day(3), ""};
      },
      "between its own low and high");
}
