// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life/oxygen.hpp>
#include <tankwright/life/oxygen_use.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(oxygen_balance, "oxygen_balance", "The power fails at night: how long does the oxygen last?") {
  using namespace tankwright;
  const double m = s.given("m", "each of the garden eels", 28, 0, "g");
  const double n = s.given("n", "how many", 40, 0, "", worked::range_of(life::animal_count_limits));
  const double r = s.given("r", "measured on one of 40 g at 25 °C", 180, 0, "mg/(kg h)");
  const double t = s.given("t", "temperature of the water", 24, 0, "°C");
  const double f = s.given("F", "used by sand, rock and filter", 150, 0, "mg/h");
  const double v = s.given("V", "water in the tank", 1690, 0, "L", worked::range_of(life::net_volume_limits));
  const double c0 = s.given("C0", "oxygen when the power fails", 6.5, 1, "mg/L");
  const double c1 = s.given("C1", "alarm", 4.0, 1, "mg/L");
  s.wanted("The hours to the alarm, without any air.");
  const auto use = life::oxygen_use({.label = "garden eels",
                                     .each = grams(m),
                                     .count = n,
                                     .measured = life::specific_oxygen_use::from_milligrams_per_kilogram_hour(r),
                                     .measured_at_mass = grams(40.0),
                                     .measured_at = celsius(25.0)},
                                    celsius(t));
  const mass_flow all = use.use + milligrams_per_hour(f);
  const auto found =
      life::time_to_oxygen_limit({.tank = {.net = litres(v), .use = all, .saturation = milligrams_per_litre(6.9)},
                                  .start = milligrams_per_litre(c0)},
                                 milligrams_per_litre(c1));
  s.step("k", "per kg = r (m/40 g)^(0.80 - 1) 2.5^((t - 25)/10)", life::in_milligrams_per_kilogram_hour(use.per_mass),
         0, "mg/(kg h)");
  s.step("R", "all animals = k m n", in_milligrams_per_hour(use.use), 0, "mg/h");
  s.step("fall", "of the oxygen = (R + F)/V", in_milligrams_per_hour(all) / v, 2, "mg/(L h)");
  s.result("T", "to the alarm = (C0 - C1)/fall", in_hours(*found.time), 0, "h");
  s.result("plan", "plan for half of it: still water does not mix", in_hours(*found.plan_for), 0, "h");
  s.means(
      "A few eels in much water have most of the night; the same sum with ten times the animals is two hours. Have air "
      "on a battery that "
      "starts by itself well before the planned time.");
  s.caution(found.caution);
}
