// SPDX-License-Identifier: BSL-1.0
#include <tankwright/room/evaporation.hpp>
#include <tankwright/room/moist_air.hpp>
#include <tankwright/water/vapour.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(evaporation, "evaporation", "How much water leaves the lagoon in a day, open and under its lids?") {
  using namespace tankwright;
  const double t = s.given("t", "temperature of the water, salinity 35", 24, 0, "°C");
  const double a = s.given("A", "its surface", 2.40, 2, "m2");
  const double ta = s.given("ta", "temperature of the room", 22, 0, "°C");
  const double rh = s.given("rh", "relative humidity of the room", 50, 0, "%", "0 to 100");
  const double g = s.given("g", "gently moving water", 1.3, 1, "", "1 still to 2 splashing");
  const double c = s.given("c", "part of the surface under lids", 85, 0, "%", "0 to 100");
  s.wanted("Kilograms a day, which are litres of top-off.");
  room::evaporating_water w{
      .water = {.temperature = celsius(t), .salinity = practical_salinity{35.0}},
      .air = {.temperature = celsius(ta), .humidity = relative_humidity::from_percent(rh)},
      .surfaces = {{.label = "display", .area = square_metres(a), .agitation = room::agitation{g}}}};
  const auto open = room::evaporation(w);
  w.surfaces[0].covered = percent(c);
  const auto covered = room::evaporation(w);
  s.step("pw", "vapour pressure at the water, with its salt",
         water::vapour_pressure(practical_salinity{35.0}, celsius(t)).value(), 0, "Pa");
  s.step("pa", "vapour pressure of the room's air", room::vapour_pressure(w.air).value(), 0, "Pa");
  s.step("e", "Shah's rate for still water", in_kilograms_per_square_metre_hour(open.surfaces[0].per_area.central) / g,
         3, "kg/(m2 h)");
  s.result("E", "open = e g A", in_kilograms_per_day(open.rate.central), 0, "kg/d");
  s.result("low", "low end of its band", in_kilograms_per_day(open.rate.low), 0, "kg/d");
  s.result("high", "high end of its band", in_kilograms_per_day(open.rate.high), 0, "kg/d");
  s.result("Ec", "under lids = E (1 - 0.90 c)", in_kilograms_per_day(covered.rate.central), 1, "kg/d");
  s.means(
      "Lids with small gaps save three quarters of the water, of the heat it takes along, and of the moisture in the "
      "room. Weigh the "
      "top-off of one week: it is worth more than this band.");
}
