// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/exchange.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(exchange, "exchange", "A tenth of the water every week: what does it do?") {
  using namespace tankwright;
  const double f = s.given("f", "part that is changed each time", 10, 0, "%", "above 0 to 100");
  const double n = s.given("n", "times", 7, 0, "", worked::range_of(water::number_of_changes_limits));
  const double v = s.given("V", "water", 1690, 0, "L");
  const double p = s.given("P", "nitrate that is made, as nitrogen", 0.42, 2, "g/d");
  const double i = s.given("T", "between two changes", 7, 0, "d");
  s.wanted("What is left of the old water, and where nitrate settles.");
  const auto left = water::left_after_changes({.part = percent(f), .times = static_cast<int>(n)});
  const auto saw =
      water::settled_saw_tooth({.volume = litres(v), .every = days(i), .part = percent(f), .made = grams_per_day(p)});
  s.step("x", "left = (1 - f)^n", in_percent(left), 1, "%");
  s.step("rise", "of nitrate between changes = P T/V", p * i / v * 1000.0, 2, "mg/L");
  s.result("high", "before a change it settles at rise/f", in_milligrams_per_litre(saw.before_change), 1, "mg/L");
  s.result("low", "and after it at (1 - f) rise/f", in_milligrams_per_litre(saw.after_change), 1, "mg/L");
  s.result("ion", "the kit shows NO3: high times 62.00/14.01",
           in_milligrams_per_litre(saw.before_change) * 62.0049 / 14.0067, 0, "mg/L");
  s.means(
      "Changing a tenth a week does not remove nitrate, it holds it at ten weeks' production. Changing twice as much "
      "halves it; feeding "
      "half as much does too.");
}
