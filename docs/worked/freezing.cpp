// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/freezing.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(freezing, "freezing", "The bucket stands on the balcony in frost: when does it freeze?") {
  using namespace tankwright;
  const double sp = s.given("S", "practical salinity", 35, 0, "", "4 to 40");
  s.wanted("The temperature at which ice forms; and that of brackish water.");
  s.result("tf", "Millero 1978", in_celsius(water::freezing_point(practical_salinity{sp})), 1, "°C");
  s.result("tb", "of salinity 15", in_celsius(water::freezing_point(practical_salinity{15.0})), 1, "°C");
  s.means("Seawater survives a light frost that bursts a pipe of fresh water; the reservoir of the top-off does not.");
}
