// SPDX-License-Identifier: BSL-1.0
// What the solvers of the other folders call in their loops: one property of one water, and the whole salting question.
#include <tankwright/water.hpp>

#include "bench.hpp"

namespace tw = tankwright;
namespace water = tankwright::water;

namespace {

constexpr int size = 4096;

tw::temperature warmth(int i) { return tw::celsius(15.0 + 15.0 * i / size); }
tw::practical_salinity salt(int i) { return tw::practical_salinity{30.0 + 10.0 * i / size}; }

/// `property(salinity, temperature)` for many waters.
template <class Property>
void each(benchmark::State& state, Property property) {
  for (auto _ : state) {
    for (int i = 0; i < size; ++i) benchmark::DoNotOptimize(property(salt(i), warmth(i)));
  }
  tw::bench::per_value(state, size);
}

using S = tw::practical_salinity;
using T = tw::temperature;

BENCHMARK_CAPTURE(each, vapour_pressure_raw, [](S, T t) { return water::kernel::saturation_hyland_wexler(t.value()); });
BENCHMARK_CAPTURE(each, vapour_pressure, [](S, T t) { return water::vapour_pressure(t); });
BENCHMARK_CAPTURE(each, vapour_pressure_of_seawater, [](S s, T t) { return water::vapour_pressure(s, t); });
BENCHMARK_CAPTURE(each, water_activity, [](S s, T t) { return water::water_activity(s, t); });
BENCHMARK_CAPTURE(each, viscosity, [](S s, T t) { return water::viscosity(s, t); });
BENCHMARK_CAPTURE(each, seawater, [](S s, T t) { return water::seawater(s, t); });
BENCHMARK_CAPTURE(each, specific_heat, [](S s, T t) { return water::specific_heat(s, t); });
BENCHMARK_CAPTURE(each, latent_heat, [](S s, T t) { return water::latent_heat(s, t); });
BENCHMARK_CAPTURE(each, thermal_conductivity, [](S s, T t) { return water::thermal_conductivity_of(s, t); });
BENCHMARK_CAPTURE(each, surface_tension, [](S s, T t) { return water::surface_tension_of(s, t); });
BENCHMARK_CAPTURE(each, oxygen, [](S s, T t) { return water::oxygen_saturation_concentration(s, t); });
BENCHMARK_CAPTURE(each, free_ammonia, [](S s, T t) { return water::free_ammonia_fraction(water::ph_nbs{8.2}, s, t); });
BENCHMARK_CAPTURE(each, how_much_salt, [](S s, T t) {
  return water::salt_for_new_water(
      {.volume = tw::litres(2150.0), .target = s, .temperature = t, .mix_yield = tw::fraction(0.87)});
});

}  // namespace

BENCHMARK_MAIN();
