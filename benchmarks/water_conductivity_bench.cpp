// SPDX-License-Identifier: BSL-1.0
#include <vector>

#include <tankwright/water/conductivity.hpp>

#include "bench.hpp"

namespace tw = tankwright;

namespace {

constexpr std::size_t size = 4096;

// `fresh` of every hundred samples have a salinity below 2.
struct samples {
  std::vector<tw::practical_salinity> s;
  std::vector<tw::temperature> t;
  std::vector<tw::electrical_conductivity> c;
  explicit samples(std::size_t fresh = 0) {
    for (std::size_t i = 0; i < size; ++i) {
      const double part = static_cast<double>(i) / static_cast<double>(size);
      s.emplace_back(i * 7919 % 100 < fresh ? 1.0 : 30.0 + 10.0 * part);
      t.push_back(tw::celsius(15.0 + 15.0 * part));
      c.push_back(tw::water::conductivity_from_salinity(s.back(), t.back()));
    }
  }
};

void salinity_scalar(benchmark::State& state) {
  const samples in;
  for (auto _ : state) {
    double sum = 0.0;
    for (std::size_t i = 0; i < size; ++i) sum += tw::water::salinity_from_conductivity(in.c[i], in.t[i]).value();
    benchmark::DoNotOptimize(sum);
  }
  tw::bench::per_value(state, size);
}
BENCHMARK(salinity_scalar);

void salinity_batch(benchmark::State& state) {
  const samples in{static_cast<std::size_t>(state.range(0))};
  std::vector<tw::practical_salinity> out(size, tw::practical_salinity{0.0});
  for (auto _ : state) {
    tw::water::salinity_from_conductivity(in.c, in.t, out);
    benchmark::DoNotOptimize(out.data());
    benchmark::ClobberMemory();
  }
  tw::bench::per_value(state, size);
}
BENCHMARK(salinity_batch)->ArgName("fresh_percent")->Arg(0)->Arg(1)->Arg(100);

void conductivity_scalar(benchmark::State& state) {
  const samples in;
  for (auto _ : state) {
    tw::electrical_conductivity sum = tw::siemens_per_metre(0.0);
    for (std::size_t i = 0; i < size; ++i) sum += tw::water::conductivity_from_salinity(in.s[i], in.t[i]);
    benchmark::DoNotOptimize(sum);
  }
  tw::bench::per_value(state, size);
}
BENCHMARK(conductivity_scalar);

void conductivity_batch(benchmark::State& state) {
  const samples in{static_cast<std::size_t>(state.range(0))};
  std::vector<tw::electrical_conductivity> out(size);
  for (auto _ : state) {
    tw::water::conductivity_from_salinity(in.s, in.t, out);
    benchmark::DoNotOptimize(out.data());
    benchmark::ClobberMemory();
  }
  tw::bench::per_value(state, size);
}
BENCHMARK(conductivity_batch)->ArgName("fresh_percent")->Arg(0)->Arg(1)->Arg(100);

}  // namespace

BENCHMARK_MAIN();
