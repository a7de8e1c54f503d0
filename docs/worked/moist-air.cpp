// SPDX-License-Identifier: BSL-1.0
#include <tankwright/room/moist_air.hpp>
#include <tankwright/room/saturation.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(moist_air, "moist-air", "How much water is in the air of the room, and where does it condense?") {
  using namespace tankwright;
  const double t = s.given("t", "temperature of the air", 22, 0, "°C");
  const double rh = s.given("rh", "relative humidity", 55, 0, "%", "0 to 100");
  const double p = s.given("P", "air pressure", 1008, 0, "hPa", worked::range_of(room::air_pressure_limits, 0.01));
  const double v = s.given("V", "volume of the room", 62.4, 1, "m3");
  s.wanted("The water in the air, and the temperature of a surface on which it condenses.");
  const room::air a{.temperature = celsius(t),
                    .humidity = relative_humidity::from_percent(rh),
                    .pressure = absolute_pressure{hectopascals(p)}};
  s.step("ps", "vapour pressure when saturated, Hyland and Wexler", room::saturation_pressure(celsius(t)).value(), 0,
         "Pa");
  s.step("pv", "vapour pressure = rh ps", room::vapour_pressure(a).value(), 0, "Pa");
  s.step("W", "humidity ratio = 0.621945 pv/(P - pv)", in_grams_per_kilogram(room::humidity_ratio_of(a)), 1, "g/kg");
  s.result("m", "water in the air of the room", room::absolute_humidity(a).value() * v, 2, "kg");
  s.result("td", "dew point: ps(td) = pv", in_celsius(room::dew_point(a)), 1, "°C");
  s.means(
      "Two thirds of a litre is all that the air of the room holds; the tank gives that off in a few hours. A window "
      "pane colder "
      "than the dew point runs with water.");
}
