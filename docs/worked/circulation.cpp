// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life/circulation.hpp>
#include <vector>

#include "worked.hpp"

WORKED_EXAMPLE(circulation, "circulation", "The water is cloudy: how long until the filter has cleared it?") {
  using namespace tankwright;
  const double v = s.given("V", "water in the system", 1940, 0, "L");
  const double q = s.given("Q", "flow through the carbon", 900, 0, "L/h", worked::range_of(life::loop_flow_limits));
  const double e = s.given("eta", "part that one pass removes", 60, 0, "%", "0 to 100");
  const double x = s.given("x", "part that shall be gone", 95, 0, "%", "0 to below 100");
  s.wanted("The hours.");
  const std::vector<life::loop> loops{{.label = "carbon", .flow = litres_per_hour(q), .efficiency = percent(e)}};
  const life::circulation tank{.net = litres(v), .loops = loops};
  const auto found = life::time_to_remove(tank, percent(x));
  s.step("k", "removal rate = eta Q/V", in_per_hour(life::removal_rate(tank)), 3, "1/h");
  s.result("T", "time = ln(1/(1 - x))/k", in_hours(*found.time), 0, "h");
  s.compare("one", "part removed when V has passed once at 100 %", in_percent(life::share_removed(1.0)), 0, "%");
  s.means(
      "One turnover never clears a tank, because clean and cloudy water mix: the rule of Gage and Bidwell for swimming "
      "pools, 63 % after "
      "one turnover.");
  s.caution(found.caution);
}
