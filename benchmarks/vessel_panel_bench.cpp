// SPDX-License-Identifier: BSL-1.0
#include <tankwright/vessel/panel.hpp>

#include "bench.hpp"

namespace tw = tankwright;
namespace vs = tankwright::vessel;

namespace {

// Width over height in hundredths; how the edges are held; level over height in hundredths (0: an even load).
void plate(benchmark::State& state) {
  const vs::panel panel{.width = tw::metres(0.01 * static_cast<double>(state.range(0))),
                        .height = tw::metres(1.0),
                        .thickness = tw::millimetres(19.0),
                        .edges = static_cast<vs::panel_edges>(state.range(1)),
                        .material = vs::annealed_glass};
  const tw::mass_density sea = tw::kilograms_per_cubic_metre(1025.0);
  const double level = 0.01 * static_cast<double>(state.range(2));
  for (auto _ : state) {
    const auto result = level == 0.0 ? vs::uniform_on(panel, tw::kilopascals(1.0))
                                     : vs::water_on(panel, {.level = tw::metres(level), .water_density = sea});
    benchmark::DoNotOptimize(result.utilisation);
  }
  tw::bench::per_value(state, 1);
}
BENCHMARK(plate)
    ->ArgNames({"aspect", "edges", "level"})
    ->ArgsProduct({{50, 100, 200, 300, 500}, {0, 1, 3}, {0, 50, 100}});

}  // namespace

BENCHMARK_MAIN();
