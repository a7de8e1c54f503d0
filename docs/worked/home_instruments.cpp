// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/brine.hpp>
#include <tankwright/water/density.hpp>
#include <tankwright/water/weighed_volume.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(home_instruments, "home_instruments", "A measuring flask on the kitchen scale: how salt is the water?") {
  using namespace tankwright;
  const double v = s.given("V", "volume of the flask up to its mark", 1000.0, 1, "mL",
                           worked::range_of(water::flask_volume_limits, 1e3));
  const double m = s.given("m", "full less empty", 1022, 0, "g", worked::range_of(water::flask_mass_limits, 1e3));
  const double e = s.given("e", "the flask may be wrong by", 0.04, 2, "%");
  const double d = s.given("d", "the scale by", 0.5, 1, "g");
  const double t =
      s.given("t", "temperature of flask and water", 24, 0, "°C", worked::range_of(water::brine_temperature_limits));
  s.wanted("The salinity by weight, and the salt water that a hydrometer can be checked in.");
  const auto rho = water::density_by_weighing(
      {.volume = millilitres(v), .shown = grams(m), .volume_error = percent(e), .scale_error = grams(d)});
  const auto salinity = [&](mass_density x) { return water::salinity_from_density(x, celsius(t)).value(); };
  const double salt = water::salt_for_standard(practical_salinity{35.0}, celsius(t)).value();
  s.step("rho", "density = m/V (1 - 1.2/8000) + 1.2", rho.central.value(), 2, "kg/m3");
  s.result("S", "salinity of that density at t", salinity(rho.central), 1);
  s.result("low", "with both errors one way", salinity(rho.low), 1);
  s.result("high", "with both the other way", salinity(rho.high), 1);
  s.result("salt", "table salt in 1 kg of water, as dense as 35", 1000.0 * salt, 1, "g");
  s.compare("Swrong", "without the weight of the air it displaces", salinity(mass_density::from_value(m / v * 1000.0)),
            1);
  s.means(
      "Half a gram and half a millilitre are a band of two in salinity: good enough to see whether a hydrometer is "
      "wrong "
      "by five, not to set the last degree. Weigh purified water in the same flask, and the error of the flask "
      "drops out.");
}
