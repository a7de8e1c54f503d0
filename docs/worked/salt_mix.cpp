// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/density.hpp>
#include <tankwright/water/salt_mix.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(salt_mix, "salt_mix", "How much mix turns the lagoon's fresh water into seawater?") {
  using namespace tankwright;
  s.given("A trial batch in a bucket first, then the whole tank with the yield it showed.");
  const double m1 = s.given("m1", "mix in the trial batch", 420, 0, "g", worked::range_of(water::mix_mass_limits));
  const double w1 =
      s.given("w1", "fresh water in the trial batch", 10.0, 1, "kg", worked::range_of(water::mix_water_limits));
  const double s1 =
      s.given("S1", "salinity it reached, when clear", 34.8, 1, "", worked::range_of(water::practical_salinity_limits));
  const double v = s.given("V", "fresh water poured in", 1850, 0, "L", worked::range_of(water::water_volume_limits));
  const double target =
      s.given("S", "salinity wanted", 35.0, 1, "", worked::range_of(water::practical_salinity_limits));
  const double t = s.given("t", "its temperature", 24, 0, "°C");
  s.wanted("The mix to weigh out, and the volume that it makes.");
  const auto yield = water::measured_yield({.mix = grams(m1),
                                            .fresh_water = kilograms(w1),
                                            .reached = practical_salinity{s1},
                                            .reading_error = practical_salinity{0.5}});
  const auto batch = water::salt_for_new_water({.volume = litres(v),
                                                .target = practical_salinity{target},
                                                .temperature = celsius(t),
                                                .mix_yield = yield.central});
  s.step("y", "yield = S1 (w1 + m1)/(1000 m1), S1 in g/kg", yield.central.value(), 3);
  s.step("SA", "absolute salinity = 35.16504/35 S",
         in_grams_per_kilogram(water::absolute_from_practical(practical_salinity{target})), 2, "g/kg");
  s.step("Mw", "mass of the fresh water = density x V", in_kilograms(batch.fresh_water_mass), 0, "kg");
  s.result("m", "mix = Mw SA/(1000 y - SA)", in_kilograms(batch.mix), 0, "kg");
  s.result("V2", "finished seawater = (Mw + m)/density", in_litres(batch.finished), 0, "L");
  s.means(
      "Buy that much and one bag more, dissolve nine tenths of it, let it clear, measure, and add the rest in steps. "
      "The "
      "trial batch is read to half a unit of salinity, so the mix is known to about one part in seventy.");
  s.caution(batch.caution);
}
