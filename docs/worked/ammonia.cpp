// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/ammonia.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(ammonia, "ammonia", "The kit shows 0.25 mg/L: how much of it is poisonous?") {
  using namespace tankwright;
  const double n =
      s.given("N", "total ammonia, as nitrogen", 0.25, 2, "mg/L", worked::range_of(water::total_ammonia_limits));
  const double ph = s.given("pH", "on the total scale (probe set with Tris)", 8.0, 1);
  const double sp = s.given("S", "practical salinity", 35, 0, "", worked::range_of(water::ammonia_salinity_limits));
  const double t = s.given("t", "temperature", 24, 0, "°C", worked::range_of(water::ammonia_temperature_limits));
  s.wanted("The free part, as NH3, which harms from about 0.05 mg/L.");
  const auto found = water::free_ammonia_in({.total = water::total_ammonia::from_nitrogen(milligrams_per_litre(n)),
                                             .ph = water::ph_total{ph},
                                             .salinity = practical_salinity{sp},
                                             .temperature = celsius(t)});
  s.step("pK", "pK* of ammonium, Clegg and Whitfield",
         water::ammonium_pka_total(practical_salinity{sp}, celsius(t)).value(), 3);
  s.step("f", "free part = 1/(1 + 10^(pK - pH))", in_percent(found.fraction.central), 1, "%");
  s.result("free", "free ammonia as NH3 = f N 17.03/14.01",
           in_milligrams_per_litre(found.concentration.central.as_ammonia()), 3, "mg/L");
  s.result("at83", "the same water at pH 8.3",
           in_milligrams_per_litre(
               water::free_ammonia_in({.total = water::total_ammonia::from_nitrogen(milligrams_per_litre(n)),
                                       .ph = water::ph_total{ph + 0.3},
                                       .salinity = practical_salinity{sp},
                                       .temperature = celsius(t)})
                   .concentration.central.as_ammonia()),
           3, "mg/L");
  s.compare("fresh", "free part in fresh water of this pH",
            in_percent(water::free_ammonia_fraction_fresh(water::ph_nbs{8.0}, celsius(t))), 1, "%");
  s.means(
      "Below the level of harm, but not by much, and a pH that climbs during the day doubles it. The kit alone may be "
      "a fifth off: "
      "stop feeding, and look again tomorrow at the hour of the highest pH.");
  s.caution(found.caution);
}
