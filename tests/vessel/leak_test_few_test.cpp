// SPDX-License-Identifier: BSL-1.0
// Leak tests of few readings, worked out by hand, and clocks that start anywhere.
#include <cmath>
#include <string>
#include <tankwright/core/units.hpp>
#include <tankwright/vessel/leak_test.hpp>
#include <vector>

#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace vs = tankwright::vessel;

namespace {

const evidence by_hand{"tankwright::vessel::read_leak_test", kind::identity, "least squares by hand"};

struct read {
  double day;
  double millimetre;
  const char* reader = "";
};
vs::leak_test test_of(const std::vector<read>& readings, length resolution = micrometres(1)) {
  vs::leak_test test{.surface = square_metres(1), .depth = metres(0.5), .resolution = resolution};
  for (const read& r : readings)
    test.readings.push_back({.at = days(r.day), .level = millimetres(r.millimetre), .reader = r.reader});
  return test;
}

}  // namespace

TEST_CASE("leak test: three readings of one reader, four of two, and no fewer") {
  // 500.0, 499.0, 497.4 mm on three days: slope -1.3 mm/d, residuals -0.1, 0.2, -0.1, so s = sqrt(0.06) with one degree of
  // freedom; Sxx = 2.
  const auto three = vs::read_leak_test(test_of({{0, 500.0}, {1, 499.0}, {2, 497.4}}));
  TW_CHECK(by_hand, three.fall.central, millimetres_per_day(1.3), relative(1e-10));
  TW_CHECK(by_hand, three.standard_error, millimetres_per_day(std::sqrt(0.06 / 2)), relative(1e-9));
  CHECK(three.degrees_of_freedom == 1);
  CHECK_THROWS_WITH_AS((void)vs::read_leak_test(test_of({{0, 500.0}, {1, 499.0}})),
                       doctest::Contains("number of readings = 2 is too few"), invalid_input);
  // A falls by 2 mm in two days, B by 1 mm: on the average 0.75 mm/d. Each of the four is 0.25 mm off its line: s = 0.5,
  // Sxx = 2 + 2.
  const auto four = vs::read_leak_test(test_of({{0, 500, "A"}, {0, 503, "B"}, {2, 498, "A"}, {2, 502, "B"}}));
  TW_CHECK(by_hand, four.fall.central, millimetres_per_day(0.75), relative(1e-10));
  TW_CHECK(by_hand, four.standard_error, millimetres_per_day(0.25), relative(1e-9));
  CHECK(four.degrees_of_freedom == 1);
  TW_CHECK(by_hand, four.readers[1].higher, millimetres(3.5), relative(1e-9));
  CHECK_THROWS_WITH_AS((void)vs::read_leak_test(test_of({{0, 500, "A"}, {0, 503, "B"}, {2, 498, "A"}})),
                       doctest::Contains("number of readings = 3 is too few"), invalid_input);
}

TEST_CASE("leak test: readings all at one time say nothing of a fall") {
  CHECK_THROWS_WITH_AS(
      (void)vs::read_leak_test(test_of({{1, 500, "A"}, {1, 503, "B"}, {1, 499, "A"}, {1, 502, "B"}, {1, 501, "A"}})),
      doctest::Contains("number of readings = 5 is too few"), invalid_input);
  // However short the time between them, a straight fall is found.
  const auto quick = vs::read_leak_test(test_of({{0, 400}, {1e-7, 399.99}, {2e-7, 399.98}}));
  TW_CHECK(by_hand, quick.fall.central, millimetres_per_day(1e5), relative(1e-9));
}

TEST_CASE("leak test: it does not matter when the clock was started") {
  // A level that does not move is known to d/(sqrt(3) T), T the time that passed.
  for (const double start : {-40.0, 0.0, 100.0}) {
    CAPTURE(start);
    const auto still = vs::read_leak_test(test_of({{start, 500}, {start + 1, 500}, {start + 2, 500}}, millimetres(1)));
    TW_CHECK(by_hand, still.standard_error, millimetres_per_day(1 / (std::sqrt(3.0) * 2)), relative(1e-12));
    CHECK(still.lasted == days(2));
  }
}

TEST_CASE("leak test: who read is told apart by name, whatever the order") {
  // B first, then A, then C, who reads at the same time as A: the first named is B.
  const auto result = vs::read_leak_test(test_of(
      {{0, 500, "B"}, {1, 500, "A"}, {1, 506, "C"}, {2, 498, "B"}, {3, 498, "A"}, {3, 504, "C"}}, micrometres(1)));
  REQUIRE(result.readers.size() == 3);
  const std::vector<std::string> names{"B", "A", "C"};
  const std::vector<double> higher{0, 1, 7};  // all fall by 1 mm/d
  for (std::size_t i = 0; i < 3; ++i) {
    CHECK(result.readers[i].reader == names[i]);
    CHECK(result.readers[i].readings == 2);
    TW_CHECK(by_hand, result.readers[i].higher, millimetres(higher[i]), within(millimetres(1e-9)));
  }
  // The same reader twice at one time, though another one stands between.
  CHECK_THROWS_WITH_AS(
      (void)vs::read_leak_test(test_of({{0, 500, "A"}, {0, 501, "B"}, {1, 500, "B"}, {1, 499, "B"}, {2, 498, "A"}})),
      doctest::Contains("reading 4 is not later than the one before it"), invalid_input);
}

TEST_CASE("leak test: a limit at zero proves nothing and contradicts nothing") {
  const auto answer = [](double low, double high, double matters) {
    const auto flow = [](double q) { return flow_rate::from_value(q); };
    return vs::detail::answer_of({flow(low), flow((low + high) / 2), flow(high), ""}, flow(matters));
  };
  CHECK(answer(0.0, 2.0, 3.0) == vs::leak_answer::excluded);
  CHECK(answer(1e-18, 2.0, 3.0) == vs::leak_answer::proven);
  CHECK(answer(-2.0, 0.0, 3.0) == vs::leak_answer::excluded);
  CHECK(answer(-2.0, -1e-18, 3.0) == vs::leak_answer::contradictory);
  CHECK(answer(-2.0, 3.0, 3.0) == vs::leak_answer::undecided);
}
