// SPDX-License-Identifier: BSL-1.0
#include <limits>
#include <stdexcept>
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

// The same arithmetic and the same checks on raw doubles: what the quantities must not cost more than.
double raw_density(double s, double t) {
  if (!(s >= 0.0 && s <= std::numeric_limits<double>::max())) throw std::invalid_argument{"salinity"};
  if (!(s <= 42.0)) throw std::out_of_range{"salinity"};
  if (!(t > -273.15 && t <= std::numeric_limits<double>::max())) throw std::invalid_argument{"temperature"};
  if (!(t >= -6.0 - 1e-9 && t <= 80.0 + 1e-9)) throw std::out_of_range{"temperature"};
  if (t < 0.0) throw std::out_of_range{"ice"};
  return tw::water::kernel::density_teos10(35.16504 / 35.0 * s, t);
}

void raw_double(benchmark::State& state) {
  const samples in;
  std::vector<double> s, t;
  for (std::size_t i = 0; i < size; ++i) {
    s.push_back(in.s[i].value());
    t.push_back(in.t[i].value());
  }
  for (auto _ : state) {
    double sum = 0.0;
    for (std::size_t i = 0; i < size; ++i) sum += raw_density(s[i], t[i] - 273.15);
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
