// SPDX-License-Identifier: BSL-1.0
// A hydrometer marked 60F/60F floats at 1.0245 in a tank at 26 degC. How salt is that tank, and what must the other
// instruments show in new water that is to match it?
#include <cstdio>

#include <tankwright/water.hpp>

namespace tw = tankwright;
namespace water = tankwright::water;

int main() {
  // [salinity]
  const auto tank = water::salinity_from_hydrometer(
      {.reading = 1.0245, .water = tw::celsius(26.0), .instrument = {.scale = water::scale_60f_60f}});
  std::printf("salinity of the tank: %.1f (%.1f to %.1f)\n", tank.central.value(), tank.low.value(), tank.high.value());
  // [salinity]
  std::printf("because: %.*s\n\n", static_cast<int>(tank.reason.size()), tank.reason.data());

  const tw::practical_salinity target = tank.central;
  const tw::temperature bucket = tw::celsius(24.0);
  std::printf("new water at %.0f degC matches when\n", tw::in_celsius(bucket));
  std::printf("  the same hydrometer shows        %.4f\n",
              water::hydrometer_reading(target, bucket, {.scale = water::scale_60f_60f}));
  std::printf(
      "  a plastic one marked 25/25 shows %.4f\n",
      water::hydrometer_reading(target, bucket, {.scale = water::scale_25_25, .body = water::hydrometer_plastic}));
  std::printf("  a conductivity probe shows       %.2f mS/cm, not compensated\n",
              tw::in_millisiemens_per_centimetre(water::conductivity_from_salinity(target, bucket)));
  const auto meter = water::linearly_compensated(water::conductivity_from_salinity(target, bucket), bucket,
                                                 tw::percent_per_kelvin(2.0));
  std::printf("  a meter set to 2 %%/K shows       %.2f mS/cm\n", tw::in_millisiemens_per_centimetre(meter.shown));
  std::printf("  a seawater refractometer shows   %.1f\n",
              water::refractometer_reading(target, bucket,
                                           {.scale = water::refractometer_scale::seawater,
                                            .compensation = water::temperature_compensation::automatic}));
  std::printf("  a kitchen-salt refractometer     %.1f\n\n",
              water::refractometer_reading(target, bucket,
                                           {.scale = water::refractometer_scale::sodium_chloride,
                                            .compensation = water::temperature_compensation::automatic}));

  std::printf("grams of sea salt in a litre of it: %.2f\n",
              tw::in_grams_per_litre(water::mass_concentration_from_salinity(target, bucket)));

  try {
    (void)water::salinity_from_hydrometer({.reading = 1024.5,  // the point forgotten
                                           .water = tw::celsius(26.0),
                                           .instrument = {.scale = water::scale_60f_60f}});
  } catch (const tw::error& mistake) {
    std::printf("\na slip of the pen: %s\n", mistake.what());
  }
}
