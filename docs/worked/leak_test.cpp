// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/leak_test.hpp>
#include <vector>

#include "worked.hpp"

WORKED_EXAMPLE(leak_test, "leak_test", "Four days with a pan: is it holding?") {
  using namespace tankwright;
  const double a = s.given("A", "water surface of the tank", 2.40, 2, "m2");
  const double r = s.given("r", "the gauge is read to", 0.5, 1, "mm");
  s.given(
      "Tank, once a day: 800.0, 796.5, 793.0, 790.0, 786.5 mm. Pan with the same water: 60.0, 57.0, 54.0, 51.5, 48.5 "
      "mm.");
  s.wanted("The leak, and what may hide behind the reading.");
  vessel::leak_test test{.surface = square_metres(a), .depth = metres(0.80), .resolution = millimetres(r)};
  const double levels[]{800.0, 796.5, 793.0, 790.0, 786.5}, pans[]{60.0, 57.0, 54.0, 51.5, 48.5};
  for (int i = 0; i < 5; ++i) {
    vessel::level_reading reading{.at = days(i), .level = millimetres(levels[i])};
    reading.pan = millimetres(pans[i]);
    test.readings.push_back(reading);
  }
  const auto found = vessel::read_leak_test(test);
  s.step("b", "fall of tank less pan, by least squares", in_millimetres_per_day(found.leak_fall.central), 2, "mm/d");
  s.step("sb", "standard error, not below r/sqrt(6 x 10 d^2)", in_millimetres_per_day(found.standard_error), 3, "mm/d");
  s.result("leak", "leak = A b", in_litres_per_day(found.leak.central), 1, "L/d");
  s.result("low", "at least = A (b - 2.35 sb)", in_litres_per_day(found.leak.low), 1, "L/d");
  s.result("high", "at most = A (b + 2.35 sb)", in_litres_per_day(found.leak.high), 1, "L/d");
  s.means(found.answer == vessel::leak_answer::proven
              ? "The low limit is above zero: it leaks. Most of the fall was evaporation, and without the pan nobody "
                "could have told. Dry paper "
                "under every seam shows where."
              : "No leak is proven.");
  s.caution(found.caution);
}
