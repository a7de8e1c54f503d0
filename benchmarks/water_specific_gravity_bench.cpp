// SPDX-License-Identifier: BSL-1.0
#include <vector>

#include <tankwright/water/hydrometer.hpp>

#include "bench.hpp"

namespace tw = tankwright;

namespace {

constexpr std::size_t size = 4096;

std::vector<tw::practical_salinity> salinities() {
  std::vector<tw::practical_salinity> s;
  for (std::size_t i = 0; i < size; ++i) s.emplace_back(30.0 + 10.0 * static_cast<double>(i) / size);
  return s;
}

void scalar(benchmark::State& state) {
  const auto s = salinities();
  for (auto _ : state) {
    double sum = 0.0;
    for (const auto& one : s) {
      sum += tw::water::specific_gravity_from_salinity(one, tw::water::scale_25_25).value();
    }
    benchmark::DoNotOptimize(sum);
  }
  tw::bench::per_value(state, size);
}
BENCHMARK(scalar);

void batch(benchmark::State& state) {
  const auto s = salinities();
  std::vector<tw::water::specific_gravity> out(size, {1.0, tw::water::scale_25_25});
  for (auto _ : state) {
    tw::water::specific_gravity_from_salinity(s, tw::water::scale_25_25, out);
    benchmark::DoNotOptimize(out.data());
    benchmark::ClobberMemory();
  }
  tw::bench::per_value(state, size);
}
BENCHMARK(batch);

void salinity_from_specific_gravity(benchmark::State& state) {
  double sg = 1.020;
  for (auto _ : state) {
    benchmark::DoNotOptimize(tw::water::salinity_from_specific_gravity({sg, tw::water::scale_25_25}));
    sg = sg < 1.030 ? sg + 1e-5 : 1.020;
  }
  tw::bench::per_value(state, 1);
}
BENCHMARK(salinity_from_specific_gravity);

void salinity_from_hydrometer(benchmark::State& state) {
  double reading = 1.020;
  for (auto _ : state) {
    benchmark::DoNotOptimize(tw::water::salinity_from_hydrometer(
        {.reading = reading, .water = tw::celsius(26.0), .instrument = {.scale = tw::water::scale_60f_60f}}));
    reading = reading < 1.028 ? reading + 1e-5 : 1.020;
  }
  tw::bench::per_value(state, 1);
}
BENCHMARK(salinity_from_hydrometer);

}  // namespace

BENCHMARK_MAIN();
