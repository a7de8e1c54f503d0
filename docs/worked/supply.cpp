// SPDX-License-Identifier: BSL-1.0
#include <array>
#include <tankwright/room/supply.hpp>
#include <vector>

#include "worked.hpp"

WORKED_EXAMPLE(supply, "supply", "One socket for the whole cabinet?") {
  using namespace tankwright;
  const double u = s.given("U", "voltage", 230, 0, "V", worked::range_of(room::supply_voltage_limits));
  const double heater = s.given("P1", "heaters", 600, 0, "W", worked::range_of(room::drawn_power_limits));
  const double pump = s.given("P2", "return pump", 85, 0, "W");
  const double factor = s.given("pf", "its power factor", 0.70, 2, "", worked::range_of(room::power_factor_limits));
  const double light = s.given("P3", "lights", 150, 0, "W");
  const double breaker = s.given("Ib", "circuit breaker", 10, 0, "A");
  const double residual = s.given("Ir", "residual-current protection", 30, 0, "mA");
  const double devices = s.given("n", "devices of which nobody knows what they leak", 8, 0);
  const double battery = s.given("C", "battery for the pump, by its label", 1200, 0, "Wh");
  s.given("Half of the battery may be used, and 85 % of that comes out of the inverter.");
  s.wanted("The current, the leakage, and how long the battery feeds the pump.");
  const std::array all{room::plugged_in{.label = "heaters", .draws = watts(heater)},
                       room::plugged_in{.label = "pump", .draws = watts(pump), .power_factor = factor},
                       room::plugged_in{.label = "lights", .draws = watts(light)}};
  const std::vector leaks(static_cast<std::size_t>(devices), room::usual_leakage);
  const auto leakage = room::leakage_of(leaks);
  const auto lasts = room::battery_feeds({.capacity = joules(3600.0 * battery)}, watts(pump));
  s.step("I80", "for hours, 0.8 of the breaker", 0.8 * breaker, 1, "A");
  s.step("I30", "without nuisance, 0.3 of the protection", room::leakage_share * residual, 1, "mA");
  s.result("I", "current = sum of P/(U pf)", in_amperes(room::current_of(all, volts(u))), 2, "A");
  s.result("leak", "leakage, 0.2 mA each", in_milliamperes(leakage.central), 1, "mA");
  s.result("most", "at most, 0.75 mA each", in_milliamperes(leakage.high), 1, "mA");
  s.result("T", "the battery feeds the pump = 0.5 x 0.85 C/P2", in_hours(lasts.central), 1, "h");
  s.result("old", "one of some years", in_hours(lasts.low), 1, "h");
  s.means(
      "The current is half of what the circuit carries. The leakage is small if the devices are good, and two thirds "
      "of the way to nuisance if all are at their limit. The battery has half a night.");
  s.caution(room::supply_caution);
}
