// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/conductivity.hpp>
#include <tankwright/water/conductivity_meter.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(conductivity, "conductivity", "The probe shows 53.2 mS/cm, compensated: how salt is the water?") {
  using namespace tankwright;
  const double c = s.given("c", "shown, referred to 25 °C by the meter", 53.2, 1, "mS/cm",
                           worked::range_of(water::conductivity_limits));
  const double a =
      s.given("a", "coefficient that is set in the meter", 2.0, 1, "%/K", worked::range_of(water::compensation_limits));
  const double t = s.given("t", "temperature of the water", 20, 0, "°C");
  s.wanted("The salinity.");
  const water::compensated_reading seen{
      .shown = millisiemens_per_centimetre(c), .water = celsius(t), .coefficient = percent_per_kelvin(a)};
  const auto raw = water::raw_conductivity(seen);
  s.step("C", "what the water conducts = c (1 + a (t - 25))", in_millisiemens_per_centimetre(raw), 2, "mS/cm");
  s.step("R", "ratio to standard seawater = C/42.914", in_millisiemens_per_centimetre(raw) / 42.914, 4);
  s.result("S", "practical salinity, PSS-78 at R and t", water::salinity_from_conductivity(seen).value(), 2);
  s.compare("Swrong", "taken for the true conductivity at 25 °C",
            water::salinity_from_conductivity(millisiemens_per_centimetre(c), celsius(25.0)).value(), 2);
  s.means(
      "Undoing the meter's own straight line is worth a tenth of a unit at 20 °C, and nothing at 25 °C. Find the "
      "coefficient in the "
      "meter's menu; better still, switch the compensation off and read the plain conductivity with the temperature.");
}
