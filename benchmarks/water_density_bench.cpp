// SPDX-License-Identifier: BSL-1.0
#include <vector>

#include <tankwright/water/density.hpp>

#include "bench.hpp"

namespace tw = tankwright;

namespace {

constexpr std::size_t size = 4096;

struct samples {
  std::vector<tw::practical_salinity> s;
  std::vector<tw::temperature> t;
  samples() {
    for (std::size_t i = 0; i < size; ++i) {
      const double part = static_cast<double>(i) / static_cast<double>(size);
      s.emplace_back(30.0 + 10.0 * part);
      t.push_back(tw::celsius(15.0 + 15.0 * part));
    }
  }
};

// The same arithmetic on raw doubles: what the quantities must not cost more than.
void raw_double(benchmark::State& state) {
  const samples in;
  for (auto _ : state) {
    double sum = 0.0;
    for (std::size_t i = 0; i < size; ++i) {
      sum += tw::water::detail::density_teos10(35.16504 / 35.0 * in.s[i].value(), in.t[i].value() - 273.15);
    }
    benchmark::DoNotOptimize(sum);
  }
  tw::bench::per_value(state, size);
}
BENCHMARK(raw_double);

void quantity(benchmark::State& state) {
  const samples in;
  for (auto _ : state) {
    tw::mass_density sum = tw::kilograms_per_cubic_metre(0.0);
    for (std::size_t i = 0; i < size; ++i) sum += tw::water::density(in.s[i], in.t[i]);
    benchmark::DoNotOptimize(sum);
  }
  tw::bench::per_value(state, size);
}
BENCHMARK(quantity);

void batch(benchmark::State& state) {
  const samples in;
  std::vector<tw::mass_density> out(size);
  for (auto _ : state) {
    tw::water::density(in.s, in.t, out);
    benchmark::DoNotOptimize(out.data());
    benchmark::ClobberMemory();
  }
  tw::bench::per_value(state, size);
}
BENCHMARK(batch);

}  // namespace

BENCHMARK_MAIN();
