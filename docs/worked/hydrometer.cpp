// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/density.hpp>
#include <tankwright/water/hydrometer.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(hydrometer, "hydrometer", "The hydrometer shows 1.0236 in the new water: how salt is it?") {
  using namespace tankwright;
  const double r = s.given("R", "reading, scale 60 °F/60 °F, of glass", 1.0236, 4, "",
                           worked::range_of(water::hydrometer_reading_limits));
  const double d = s.given("d", "one division of its scale", 0.0005, 4, "", worked::range_of(water::division_limits));
  const double t = s.given("t", "temperature of the water", 24, 0, "°C");
  s.wanted("The salinity, with what half a division makes of it.");
  const water::hydrometer_observation seen{
      .reading = r, .water = celsius(t), .instrument = {.scale = water::scale_60f_60f, .division = d}};
  const auto found = water::salinity_from_hydrometer(seen);
  const double reference = water::density(practical_salinity{0.0}, fahrenheit(60.0)).value();
  s.step("rho0", "density of pure water at 60 °F", reference, 2, "kg/m3");
  s.step("k", "the glass has grown by 25e-6/K from 60 °F", 1.0 + 25e-6 * (t - in_celsius(fahrenheit(60.0))), 5);
  s.step("rho", "density of this water = R rho0/k", water::density(found.central, celsius(t)).value(), 1, "kg/m3");
  s.result("S", "salinity that has this density at t", found.central.value(), 1);
  s.result("low", "with half a division less", found.low.value(), 1);
  s.result("high", "with half a division more", found.high.value(), 1);
  s.compare("Swrong", "without the temperature it would have been",
            water::salinity_from_specific_gravity({r, water::scale_60f_60f}).value(), 1);
  s.means(
      "Not 31 but 33: warm water is lighter, so an uncorrected reading makes people add too much salt. Read it again "
      "on "
      "another day, and in fresh water, before adding any.");
}
