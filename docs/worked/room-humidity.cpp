// SPDX-License-Identifier: BSL-1.0
#include <tankwright/room/humidity.hpp>
#include <tankwright/room/moist_air.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(room_humidity, "room-humidity", "What humidity does the marine room settle at in winter?") {
  using namespace tankwright;
  const double v = s.given("V", "volume of the room, 6 m x 4 m x 2.6 m", 62.4, 1, "m3");
  const double n = s.given("n", "outdoor air, changes in an hour", 0.5, 1, "1/h");
  const double ti = s.given("ti", "temperature of the room", 22, 0, "°C");
  const double to = s.given("to", "outdoors, at 85 % humidity", 3, 0, "°C");
  const double g = s.given("G", "two people", 100, 0, "g/h");
  const double a = s.given("A", "open water, still, 24 °C, salinity 35", 2.40, 2, "m2");
  s.wanted("The humidity at which as much vapour leaves as comes in.");
  const room::tank_room r{
      .room = {.volume = cubic_metres(v),
               .air_changes = per_hour(n),
               .temperature = celsius(ti),
               .outdoor = {.temperature = celsius(to), .humidity = relative_humidity::from_percent(85.0)}},
      .water = {.temperature = celsius(24.0), .salinity = practical_salinity{35.0}},
      .surfaces = {{.label = "display", .area = square_metres(a)}},
      .sources = {{.label = "people", .rate = grams_per_hour(g)}}};
  const auto found = room::humidity_balance(r);
  s.step("Wo", "water in the outdoor air, per kg of dry air",
         in_grams_per_kilogram(room::humidity_ratio_of(r.room.outdoor)), 1, "g/kg");
  s.step("E", "evaporation into the air that results, Shah", in_grams_per_hour(found.central.evaporation), 0, "g/h");
  s.step("Wi", "water in the air of the room", in_grams_per_kilogram(room::humidity_ratio_of(found.central.air)), 1,
         "g/kg");
  s.step("out", "carried out = n V density (Wi - Wo) = E + G", in_grams_per_hour(found.central.ventilation), 0, "g/h");
  s.result("phi", "relative humidity of the room", in_percent(found.central.air.humidity.get()), 0, "%");
  s.result("low", "with the least evaporation of its band", in_percent(found.low.air.humidity.get()), 0, "%");
  s.result("high", "with the most", in_percent(found.high.air.humidity.get()), 0, "%");
  s.means(
      "Too wet for a winter room: cold corners grow mould. Lids over most of the surface come first, because they take "
      "the "
      "moisture away at its source; then more air, then a machine.");
  s.caution(found.caution);
}
