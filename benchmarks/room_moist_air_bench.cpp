// SPDX-License-Identifier: BSL-1.0
#include <vector>

#include <tankwright/room/wet_bulb.hpp>

#include "bench.hpp"

namespace tw = tankwright;
namespace room = tankwright::room;

namespace {

constexpr std::size_t size = 1024;

/// Air of 5 to 35 degC and 10 to 95 %, in no particular order.
struct samples {
  std::vector<tw::temperature> t;
  std::vector<room::air> air;
  samples() {
    for (std::size_t i = 0; i < size; ++i) {
      t.push_back(tw::celsius(5.0 + 30.0 * static_cast<double>((i * 37) % size) / static_cast<double>(size)));
      const double h = 0.1 + 0.85 * static_cast<double>((i * 131) % size) / static_cast<double>(size);
      air.push_back({.temperature = t.back(), .humidity = tw::relative_humidity::from_fraction(h)});
    }
  }
};

template <class F>
void over_air(benchmark::State& state, F f) {
  const samples in;
  for (auto _ : state) {
    double sum = 0.0;
    for (const room::air& a : in.air) sum += f(a).value();
    benchmark::DoNotOptimize(sum);
  }
  tw::bench::per_value(state, size);
}

void saturation_pressure(benchmark::State& state) {
  over_air(state, [](const room::air& a) { return room::saturation_pressure(a.temperature); });
}
BENCHMARK(saturation_pressure);

void saturation_pressure_batch(benchmark::State& state) {
  const samples in;
  std::vector<tw::pressure> out(size);
  for (auto _ : state) {
    room::saturation_pressure(in.t, out);
    benchmark::DoNotOptimize(out.data());
    benchmark::ClobberMemory();
  }
  tw::bench::per_value(state, size);
}
BENCHMARK(saturation_pressure_batch);

void dew_point(benchmark::State& state) {
  over_air(state, [](const room::air& a) { return room::dew_point(a); });
}
BENCHMARK(dew_point);

void wet_bulb(benchmark::State& state) {
  over_air(state, [](const room::air& a) { return room::wet_bulb(a); });
}
BENCHMARK(wet_bulb);

}  // namespace

BENCHMARK_MAIN();
