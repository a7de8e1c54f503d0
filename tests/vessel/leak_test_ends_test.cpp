// SPDX-License-Identifier: BSL-1.0
// Leak tests: the ends of every argument, of plans and of readings.
#include <array>
#include <functional>
#include <tankwright/vessel.hpp>
#include <vector>

#include "support/edges.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {

const tolerance near{.absolute = 1e-20, .relative = 1e-8};
evidence second(std::string_view function) {
  return {"tankwright::vessel::" + std::string{function}, kind::identity, "by hand"};
}

/// A fall [mm/d] with a zigzag of +-`scatter` [mm], every six hours.
vs::leak_test zigzag(double fall, double scatter, int n = 13) {
  vs::leak_test test{.surface = square_metres(2), .depth = metres(0.5), .resolution = micrometres(1), .label = "z"};
  for (int i = 0; i < n; ++i) {
    const double bend = (i % 4 == 1 || i % 4 == 2 ? 1 : -1) * scatter;
    test.readings.push_back({.at = hours(6.0 * i), .level = millimetres(400 - fall * i / 4.0 + bend)});
  }
  return test;
}

}  // namespace

TEST_CASE("leak test ends: plans") {
  const auto with = [](auto change) {
    vs::leak_test_plan plan{.surface = square_metres(2), .resolution = millimetres(1)};
    change(plan);
    return vs::minimum_detectable_leak(plan, days(2));
  };
  check_edges("surface", "m2", {1e-12, 1e6},
              [&](double x) { return with([x](auto& p) { p.surface = square_metres(x); }); });
  check_edges("resolution", "m", {1e-9, 1.0},
              [&](double x) { return with([x](auto& p) { p.resolution = metres(x); }); });
  check_edges("readings per day", "1/d", {0.01, 1e6},
              [&](double x) { return with([x](auto& p) { p.readings_per_day = x; }); });
  check_edges("confidence", "", {0.5, 0.999999, edge::open},
              [&](double x) { return with([x](auto& p) { p.confidence = fraction(x); }); });
  check_edges("power", "", {0.5, 0.999999}, [&](double x) { return with([x](auto& p) { p.power = fraction(x); }); });
  check_edges("scatter", "m", {0.0, 1.0}, [&](double x) { return with([x](auto& p) { p.scatter = metres(x); }); });
  check_edges("plan: evaporation", "m/s", {0.0, 1.0}, [&](double x) {
    return with([x](auto& p) { p.evaporation = estimate<velocity>{metres_per_second(x)}; });
  });
  const vs::leak_test_plan plan{.surface = square_metres(2), .resolution = millimetres(1)};
  const flow_rate litre = litres_per_day(1);
  check_edges("duration", "d", {1e-4, 3660.0}, [&](double x) { return vs::minimum_detectable_leak(plan, days(x)); });
  check_edges("duration", "d", {1e-4, 3660.0}, [&](double x) { return vs::required_resolution(plan, days(x), litre); });
  const interval leaks{1e-18, 1e3};
  check_edges("leak", "m3/s", leaks, [&](double x) { return vs::required_duration(plan, cubic_metres_per_second(x)); });
  check_edges("leak", "m3/s", leaks,
              [&](double x) { return vs::required_resolution(plan, days(2), cubic_metres_per_second(x)); });
  const std::array one{metres(1)};
  check_edges("leak", "m3/s", leaks,
              [&](double x) { return vs::leak_test_stages(plan, one, cubic_metres_per_second(x)); });
  check_edges("depth of a stage", "m", {1e-6, 1e3},
              [&](double x) { return vs::leak_test_stages(plan, std::array{metres(x)}, litre); });
  std::vector<length> many;
  for (int i = 1; i <= 1001; ++i) many.push_back(millimetres(i));
  CHECK_THROWS_WITH_AS((void)vs::leak_test_stages(plan, many, litre), doctest::Contains("number of stages"),
                       invalid_input);
  many.pop_back();
  CHECK(vs::leak_test_stages({.surface = square_metres(2), .resolution = metres(1), .readings_per_day = 0.01}, many,
                             cubic_metres_per_second(1e3))
            .size() == 1000);
  CHECK_THROWS_WITH_AS((void)vs::leak_test_stages(plan, std::array{metres(1), metres(1)}, litre),
                       doctest::Contains("depth of stage = 2 is not above"), invalid_input);
  auto bad = plan;
  bad.power = fraction(0.4);
  for (const auto& call : std::vector<std::function<void()>>{
           [&] { (void)vs::minimum_detectable_leak(bad, days(2)); }, [&] { (void)vs::required_duration(bad, litre); },
           [&] { (void)vs::required_resolution(bad, days(2), litre); },
           [&] { (void)vs::leak_test_stages(bad, one, litre); }}) {
    CHECK_THROWS_AS(call(), invalid_input);
  }
}

TEST_CASE("leak test ends: readings") {
  const auto with = [](auto change) {
    auto test = zigzag(1, 0.1);
    change(test);
    return vs::read_leak_test(test);
  };
  check_edges("z: surface", "m2", {1e-12, 1e6},
              [&](double x) { return with([x](auto& t) { t.surface = square_metres(x); }); });
  check_edges("z: depth", "m", {.high = 1e3}, [&](double x) { return with([x](auto& t) { t.depth = metres(x); }); });
  check_edges("z: resolution", "m", {1e-9}, [&](double x) { return with([x](auto& t) { t.resolution = metres(x); }); });
  check_edges("z: confidence", "", {0.5, 0.999999, edge::open},
              [&](double x) { return with([x](auto& t) { t.confidence = fraction(x); }); });
  check_edges("z: leak that matters", "m3/s", {1e-18, 1e3},
              [&](double x) { return with([x](auto& t) { t.leak_that_matters = cubic_metres_per_second(x); }); });
  check_edges("z: evaporation", "m/s", {0.0, 1.0}, [&](double x) {
    return with([x](auto& t) { t.evaporation = estimate<velocity>{metres_per_second(x)}; });
  });
  check_edges("z: capacity", "m3", {1e-18, 1e9},
              [&](double x) { return with([x](auto& t) { t.capacity = cubic_metres(x); }); });
  const auto shifted = [&](double x, double first) {
    return with([=](auto& t) {
      for (std::size_t i = 0; i < t.readings.size(); ++i)
        t.readings[i].at = seconds(i == 0 ? x : x + first * static_cast<double>(i));
    });
  };
  CHECK_NOTHROW((void)shifted(-1e11, 1e3));
  CHECK_THROWS_WITH_AS((void)shifted(-1.0001e11, 1e3), doctest::Contains("reading 1: time"), invalid_input);
  CHECK_NOTHROW((void)shifted(1e11 - 1.2e4, 1e3));
  CHECK_THROWS_WITH_AS((void)shifted(1e11 - 1.15e4, 1e3), doctest::Contains("reading 13: time"), invalid_input);
  const auto lifted = [&](double x, bool pan) {
    return with([=](auto& t) {
      for (auto& r : t.readings) {
        if (pan) {
          r.pan = metres(x);
        } else {
          r.level = metres(x);
        }
      }
    });
  };
  check_edges("z, reading 1: level", "m", {-1e3, 1e3}, [&](double x) { return lifted(x, false); });
  check_edges("z, reading 1: pan", "m", {-1e3, 1e3}, [&](double x) { return lifted(x, true); });
  // The whole depth may be passed, no more; a gauge may be as coarse as the depth.
  const auto passes = [&](double change, bool pan) {
    return with([=](auto& t) {
      for (std::size_t i = 0; i < t.readings.size(); ++i) {
        const length z = metres(i == 3 ? change : 0.0);
        if (pan) t.readings[i].pan = z;
        if (!pan) t.readings[i].level = z;
      }
    });
  };
  for (const bool pan : {false, true}) {
    CHECK_NOTHROW((void)passes(0.5, pan));
    CHECK_NOTHROW((void)passes(-0.5, pan));
    CHECK_THROWS_WITH_AS((void)passes(0.5001, pan), doctest::Contains("is more than the depth of the water"),
                         invalid_input);
    CHECK_THROWS_WITH_AS((void)passes(-0.5001, pan), doctest::Contains("is more than the depth of the water"),
                         invalid_input);
  }
  CHECK_NOTHROW((void)with([](auto& t) { t.resolution = metres(0.5); }));
  CHECK_THROWS_AS((void)with([](auto& t) { t.resolution = metres(0.5001); }), invalid_input);
  // Twenty readers, each twice; one more is too many.
  const auto crowd = [](int people) {
    vs::leak_test test{.surface = square_metres(2), .depth = metres(0.5), .resolution = millimetres(1)};
    for (int i = 0; i < 2 * people; ++i)
      test.readings.push_back({.at = hours(i), .level = metres(0.4), .reader = std::to_string(i % people)});
    return vs::read_leak_test(test);
  };
  CHECK(crowd(20).readers.size() == 20);
  CHECK(crowd(20).readers[7].readings == 2);
  CHECK_THROWS_WITH_AS((void)crowd(21), doctest::Contains("number of readers = 21 is more than 20"), invalid_input);
  // Two readers may read at the same time, one may not.
  CHECK_NOTHROW((void)with(
      [](auto& t) { t.readings[1].at = t.readings[0].at, t.readings[1].reader = "B", t.readings[2].reader = "B"; }));
  CHECK_THROWS_WITH_AS((void)with([](auto& t) { t.readings[1].at = t.readings[0].at; }),
                       doctest::Contains("is not later"), invalid_input);
  CHECK_THROWS_WITH_AS((void)with([](auto& t) { t.readings[3].water = celsius(20); }),
                       doctest::Contains("give it for all or for none"), invalid_input);
  const auto criterion = [&](double share, double fall, double lasts) {
    return with([=](auto& t) {
      t.capacity = litres(1000);
      vs::tightness_criterion c = vs::awwa_d110;
      c.least_duration = seconds(lasts);
      if (share != -1e9) c.share_per_day = fraction(share);
      if (share == -1e9) c.share_per_day.reset(), c.total_fall = metres(fall);
      c.name = "c";
      t.criterion = c;
    });
  };
  check_edges("c: duration", "s", {1e-3, 1e11}, [&](double x) { return criterion(0.1, 0, x); });
  check_edges("c: share a day", "", {0.0, 1.0}, [&](double x) { return criterion(x, 0, 100); });
  check_edges("c: fall", "m", {0.0, 1e3}, [&](double x) { return criterion(-1e9, x, 100); });
  const auto outcome = *criterion(0.01, 0, 1e6).against_criterion;
  TW_CHECK(second("read_leak_test"), outcome.allowed, litres_per_day(10), near);
  TW_CHECK(second("read_leak_test"), outcome.missing, seconds(1e6 - 72 * 3600), near);
  TW_CHECK(second("read_leak_test"), outcome.room, outcome.allowed - criterion(0.01, 0, 1e6).leak.high, near);
  TW_CHECK(second("read_leak_test"), criterion(-1e9, 0.01, 1e5).against_criterion->allowed.value(), 2 * 0.01 / 1e5,
           relative(1e-12));
}
