// SPDX-License-Identifier: BSL-1.0
#include <tankwright/room/heat_balance.hpp>
#include <tankwright/room/warm_up.hpp>
#include <tankwright/water/heat.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(tank_heat, "tank-heat", "What heats the lagoon on a winter's day, and what heater does it take?") {
  using namespace tankwright;
  const double t = s.given("t", "temperature of the water, salinity 35", 24, 0, "°C");
  const double ta = s.given("ta", "temperature of the room, 50 % humidity", 20, 0, "°C");
  const double a = s.given("A", "open water, still", 0.50, 2, "m2");
  const double w = s.given("Aw", "walls and floor of the tank", 7.8, 1, "m2");
  const double u = s.given("U", "their transmittance", 2.5, 1, "W/(m2 K)");
  const double p = s.given("P", "heat of the pumps that ends in the water", 60, 0, "W");
  s.wanted("What the water loses, part by part, and the heater.");
  const room::tank_heat tank{
      .water = {.temperature = celsius(t), .salinity = practical_salinity{35.0}},
      .air = {.temperature = celsius(ta), .humidity = relative_humidity::from_percent(50.0)},
      .surfaces = {{.label = "gaps between the lids", .area = square_metres(a)}},
      .walls = {{.label = "walls", .area = square_metres(w), .transmittance = watts_per_square_metre_kelvin(u)}},
      .sources = {{.label = "pumps", .heat = watts(p)}}};
  const auto b = room::heat_balance(tank);
  const auto heater = room::heater_for(tank);
  s.step("Qe", "evaporation, Shah, times the latent heat", in_watts(b.evaporation.central), 0, "W");
  s.step("Qc", "convection, Bowen: 67.4 Pa/K (t-ta)/(pw-pa) Qe", in_watts(b.convection.central), 0, "W");
  s.step("Qr", "radiation = 0.95 sigma A (T^4 - Ta^4)", in_watts(b.radiation), 0, "W");
  s.step("Qw", "walls = U Aw (t - ta)", in_watts(b.walls), 0, "W");
  s.step("Qm", "make-up of the room's temperature = E c (t - ta)", in_watts(b.make_up.central), 1, "W");
  s.result("Q", "to be heated = Qe + Qc + Qr + Qw + Qm - P", in_watts(heater.needed.central), -1, "W");
  s.result("H", "heater, 1.25 times the high end of the band", in_watts(heater.suggested), -1, "W");
  s.means(
      "Half of the heat goes through the walls, a third with the vapour from the gaps: with lids on, insulation comes "
      "next. Take two "
      "heaters that share the work, so that one that fails, on or off, neither cooks nor chills the animals.");
  s.caution(heater.caution);
}
