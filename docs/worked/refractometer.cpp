// SPDX-License-Identifier: BSL-1.0
#include <tankwright/water/refractive_index.hpp>
#include <tankwright/water/refractometer.hpp>

#include "worked.hpp"

WORKED_EXAMPLE(refractometer, "refractometer", "A plain refractometer shows 32 in a warm room") {
  using namespace tankwright;
  const double r = s.given("r", "reading, seawater scale, no compensation", 32.0, 1, "ppt",
                           worked::range_of(water::refractometer_reading_limits));
  const double t =
      s.given("t", "temperature of the prism", 25, 0, "°C", worked::range_of(water::prism_temperature_limits));
  s.wanted("The salinity of the drop.");
  const auto found =
      water::salinity_from_refractometer({.reading = r,
                                          .prism = celsius(t),
                                          .instrument = {.scale = water::refractometer_scale::seawater,
                                                         .compensation = water::temperature_compensation::none}});
  const double zero = water::refractive_index_millard_seaver({practical_salinity{0.0}, celsius(20.0)}).value();
  s.step("n0", "index of pure water at 20 °C", zero, 5);
  s.step("n", "index of the drop = n0 + 1.828e-4 r", zero + 1.828e-4 * r, 5);
  s.result("S", "salinity that has this index at t", found.central.value(), 1);
  s.result("low", "with half a division less", found.low.value(), 1);
  s.result("high", "with half a division more", found.high.value(), 1);
  s.means(
      "The scale is right at 20 °C only; five kelvin cost three units of salinity. Set the instrument with seawater of "
      "a known "
      "salinity in the room where it is used.");
}
