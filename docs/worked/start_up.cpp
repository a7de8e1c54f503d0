// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life/start_up.hpp>
#include <vector>

#include "worked.hpp"

WORKED_EXAMPLE(start_up, "start_up", "A new filter is fed ammonia once: when has it taken it up?") {
  using namespace tankwright;
  const double v = s.given("V", "water in the system", 2000, 0, "L", worked::range_of(life::net_volume_limits));
  const double t = s.given("t", "temperature", 25, 0, "°C", worked::range_of(life::nitrifier_temperature_limits));
  const double n = s.given("N", "ammonia at the start, as nitrogen", 2.0, 1, "mg/L");
  const double o = s.given("O", "oxygen", 6.5, 1, "mg/L");
  const double x = s.given("X", "bacteria of each of the two groups", 20, 0, "mg");
  s.wanted("The peak of nitrite, and the day on which both are below 0.1 mg/L.");
  life::start_up plan{.net = litres(v),
                      .temperature = celsius(t),
                      .oxygen = milligrams_per_litre(o),
                      .ammonia = water::total_ammonia::from_nitrogen(milligrams_per_litre(n)),
                      .horizon = days(40.0)};
  plan.seedings = {{.when = {.at = days(0.0)},
                    .added = life::bacteria{.ammonia_oxidisers = milligrams(x), .nitrite_oxidisers = milligrams(x)}}};
  const auto found = life::simulate_start_up(plan).summary;
  s.step("mu", "growth of the first group = 0.90 x 1.072^(t - 20)", 0.90 * std::pow(1.072, t - 20.0), 2, "1/d");
  s.result("peak", "highest nitrite, as nitrogen", in_milligrams_per_litre(found.nitrite.level.as_nitrogen()), 2,
           "mg/L");
  s.result("at", "on day", in_days(found.nitrite.at), 1, "d");
  s.result("clear", "both below 0.1 mg/L from day", in_days(*found.clear_since), 0, "d");
  s.means(
      "This is the shape with the constants of fresh water and with bacteria there from the start. In the sea expect "
      "weeks where it shows "
      "days, and trust the test kit only.");
  s.caution(found.caution);
}
