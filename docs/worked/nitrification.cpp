// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life/nitrification.hpp>
#include <vector>

#include "worked.hpp"

WORKED_EXAMPLE(nitrification, "nitrification", "Can the media in the sump take the day's ammonia?") {
  using namespace tankwright;
  const double v = s.given("V", "media", 25, 0, "L");
  const double sv = s.given("a", "their protected surface", 600, 0, "m2/m3");
  const double n = s.given("N", "ammonia level that the tank shall keep", 0.10, 2, "mg/L");
  const double t = s.given("t", "temperature", 26, 0, "°C", worked::range_of(life::film_temperature_limits));
  const double load = s.given("P", "load, as nitrogen", 0.42, 2, "g/d", worked::range_of(life::nitrogen_load_limits));
  s.wanted("What they take when mature, and the surface that the load needs.");
  const double area = v * sv / 1000.0;
  const life::film_water in{.ammonia = water::total_ammonia::from_nitrogen(milligrams_per_litre(n)),
                            .temperature = celsius(t)};
  const auto rate = life::nitrification_rate(in);
  const std::vector<life::filter_surface> surfaces{{.label = "media", .wet = square_metres(area)}};
  const auto capacity = life::capacity_of(surfaces, in);
  const auto need = life::film_area_for(life::nitrogen_load::from_nitrogen(grams_per_day(load)), in);
  s.step("A", "surface = V a", area, 0, "m2");
  s.step("r", "rate = 0.28 (N/1 mg/L) 1.04275^(t - 24)", in_grams_per_square_metre_day(rate.central), 3, "g/(m2 d)");
  s.result("cap", "mature capacity = r A", in_grams_per_day(capacity.mature.central.as_nitrogen()), 2, "g/d");
  s.result("low", "low end of its band", in_grams_per_day(capacity.mature.low.as_nitrogen()), 2, "g/d");
  s.result("need", "surface for the load = P/r", in_square_metres(need.central), 0, "m2");
  s.means(
      "The middle of the band just carries the load, its low end carries a third of it: the media alone are a gamble. "
      "Live rock, the "
      "sand and more media widen it. A tenth of a milligram is a tenth of the rate that catalogues print.");
  s.caution(capacity.caution);
}
