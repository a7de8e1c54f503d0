// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life/stocking_steps.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(stocking_steps, "stocking_steps", "Half of the animals are in: may the rest come at once?") {
  using namespace tankwright;
  const double n = s.given("N", "ammonia nitrogen of all animals", 0.90, 2, "g/d");
  const double c = s.given("C0", "what the filter keeps up with, of it", 50, 0, "%",
                           worked::range_of(life::step_share_limits, 100.0));
  const double mu = s.given("mu", "growth of the filter", 0.12, 2, "1/d");
  const double v = s.given("V", "water in the system", 1690, 0, "L", worked::range_of(life::net_volume_limits));
  const double level =
      s.given("S1", "ammonia that a step may leave over", 0.25, 2, "mg/L", worked::range_of(life::step_level_limits));
  const double rest = s.given("r", "rest between two steps", 7, 0, "d", worked::range_of(life::step_rest_limits));
  s.wanted("The ammonia that the whole step leaves over, and the dates of smaller ones.");
  const auto load = [&](double part) { return life::nitrogen_load::from_nitrogen(grams_per_day(part * n)); };
  const auto once =
      life::ammonia_of_step({.before = load(c / 100.0), .after = load(1.0), .growth = per_day(mu), .net = litres(v)});
  const auto dates = life::stocking_dates({.whole = load(1.0),
                                           .start = percent(c),
                                           .step = percent(50.0),
                                           .rest = days(rest),
                                           .growth = per_day(mu),
                                           .net = litres(v),
                                           .below = water::total_ammonia::from_nitrogen(milligrams_per_litre(level))});
  s.step("t", "the filter has caught up after ln(N/C0)/mu", in_days(once.catches_up), 1, "d");
  s.step("S", "left over = (N (ln(N/C0) - 1) + C0)/(mu V)", in_milligrams_per_litre(once.left_over.as_nitrogen()), 2,
         "mg/L");
  s.result("x1", "largest step to this share", in_percent(dates[1].share), 0, "%");
  s.result("x2", "then to this share", in_percent(dates[2].share), 0, "%");
  s.result("last", "the last step on day", in_days(dates.back().on), 0, "d");
  s.result("k", "steps in all", static_cast<double>(dates.size() - 1), 0);
  s.means(
      "No: all at once leaves 0.86 mg/L over. In two steps a week apart it stays below the level. The dates are no "
      "better than the growth, which may be half of that or three times as fast: measure before each step.");
}
