// SPDX-License-Identifier: BSL-1.0
#include <vector>

#include <tankwright/vessel/displacement.hpp>
#include <tankwright/vessel/rock.hpp>

#include "bench.hpp"

namespace tw = tankwright;
namespace vs = tankwright::vessel;

namespace {

constexpr int size = 1000;

void net_volume(benchmark::State& state) {
  std::vector<vs::item> items;
  for (int i = 0; i < size; ++i) items.push_back(vs::rock_by_mass({.dry_mass = tw::grams(100.0 + i)}));
  const tw::mass_density sea = tw::kilograms_per_cubic_metre(1025.0);
  for (auto _ : state) {
    const auto content = vs::water_in({.gross = tw::litres(2000.0), .items = items, .water_density = sea});
    benchmark::DoNotOptimize(content.net.central);
  }
  tw::bench::per_value(state, 1);
}
BENCHMARK(net_volume);

void make_items(benchmark::State& state) {
  for (auto _ : state) {
    for (int i = 0; i < size; ++i) {
      const auto rock = vs::rock_by_mass({.dry_mass = tw::grams(100.0 + i)});
      benchmark::DoNotOptimize(rock.solids.central);
    }
  }
  tw::bench::per_value(state, size);
}
BENCHMARK(make_items);

}  // namespace

BENCHMARK_MAIN();
