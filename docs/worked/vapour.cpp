// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/vapour.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(vapour, "vapour", "How hard does the lagoon push vapour into the air?") {
  using namespace tankwright;
  const double sp = s.given("S", "practical salinity", 35, 0, "", "0 to 42");
  const double t = s.given("t", "temperature", 24, 0, "°C", "0 to 80");
  const double pa = s.given("pa", "vapour in the air of the room", 1322, 0, "Pa");
  s.wanted("The vapour pressure, and what the salt holds back of the evaporation.");
  const double fresh = water::vapour_pressure(celsius(t)).value(),
               sea = water::vapour_pressure(practical_salinity{sp}, celsius(t)).value();
  s.step("pw0", "over fresh water, Hyland and Wexler", fresh, 0, "Pa");
  s.step("aw", "water activity at S and t, TEOS-10", water::water_activity(practical_salinity{sp}, celsius(t)).value(),
         4);
  s.step("pw", "over seawater = aw pw0", sea, 0, "Pa");
  s.result("less", "less drive = (pw0 - pw)/(pw0 - pa)", 100.0 * (fresh - sea) / (fresh - pa), 1, "%");
  s.means(
      "The salt takes two parts in a hundred off the pressure, and more off the evaporation, because that lives on the "
      "difference.");
}
