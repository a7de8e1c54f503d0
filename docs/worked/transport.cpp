// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life/transport.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(transport, "transport", "A day in the bag: is there oxygen, and what happens at the door?") {
  using namespace tankwright;
  const double v = s.given("V", "water in the bag", 12, 0, "L", worked::range_of(life::bag_water_limits));
  const double g = s.given("G", "pure oxygen over it", 20, 0, "L", worked::range_of(life::bag_gas_limits));
  const double use = s.given("U", "oxygen that the animals use", 60, 0, "mg/h", worked::range_of(life::bag_use_limits));
  const double time = s.given("T", "closed for", 24, 0, "h", worked::range_of(life::bag_time_limits));
  const double t = s.given("t", "temperature", 24, 0, "°C", worked::range_of(water::carbonate_temperature_limits));
  const double sp = s.given("S", "practical salinity", 35, 0, "", worked::range_of(water::carbonate_salinity_limits));
  const double ph = s.given("pH0", "of the tank and of the bag at first", 8.1, 1);
  const double a = s.given("A", "alkalinity", 2.4, 1, "meq/L");
  s.wanted("How long the oxygen lasts, the pH after a day, and the free ammonia before and after opening.");
  const life::closed_bag bag{.water = litres(v),
                             .gas = litres(g),
                             .oxygen = fraction(1.0),
                             .uses = milligrams_per_hour(use),
                             .salinity = practical_salinity{sp},
                             .temperature = celsius(t),
                             .ph = ph,
                             .alkalinity = a};
  const auto then = life::bag_after(bag, hours(time), ph);
  s.step("used", "oxygen used = U T", use * time / 1000.0, 2, "g");
  s.step("N", "ammonia as nitrogen, 0.15 mole for mole", in_milligrams_per_litre(then.ammonia.central.as_nitrogen()), 1,
         "mg/L");
  s.result("left", "oxygen left in gas and water", in_grams(then.oxygen_left), 1, "g");
  s.result("lasts", "oxygen lasts, down to 5 mg/L", in_hours(*life::oxygen_lasts(bag, milligrams_per_litre(5.0))), -1,
           "h");
  s.result("pH", "of the water after that", then.ph, 2);
  s.result("free", "free ammonia in the closed bag, as NH3", in_milligrams_per_litre(then.free_closed.central), 3,
           "mg/L");
  s.result("open", "at the pH of the tank", in_milligrams_per_litre(then.free_opened.central), 2, "mg/L");
  s.means(
      "There is oxygen for days, so a day's delay is no danger. The danger is the opening: air drives the carbon "
      "dioxide off, the pH climbs back and frees the ammonia, many times what it was. Move the animals out of this "
      "water at once.");
  s.caution(life::transport_caution);
}
