// SPDX-License-Identifier: BSL-1.0
#include <tankwright/numerics/monte_carlo.hpp>
#include <tankwright/text/measured.hpp>

#include "bench.hpp"

namespace tw = tankwright;

namespace {

tw::volume box(tw::length l, tw::length w, tw::length h) { return l * w * h; }

const auto l = tw::rectangular(tw::metres(2.4), tw::millimetres(5.0));
const auto w = tw::rectangular(tw::metres(0.9), tw::millimetres(5.0));
const auto h = tw::to_the_nearest(tw::metres(0.8), tw::millimetres(10.0));

// One propagation through three inputs, 34 calls of the function.
void propagate_first_order(benchmark::State& state) {
  for (auto _ : state) benchmark::DoNotOptimize(tw::numerics::propagate(box, l, w, h));
  tw::bench::per_value(state, 1);
}
BENCHMARK(propagate_first_order);

// One draw of three inputs, with its part of the sorting.
void simulate_one_draw(benchmark::State& state) {
  constexpr std::size_t samples = 100'000;
  for (auto _ : state) benchmark::DoNotOptimize(tw::numerics::simulate({.samples = samples}, box, l, w, h));
  tw::bench::per_value(state, samples);
}
BENCHMARK(simulate_one_draw)->Unit(benchmark::kMillisecond);

void parse_a_length(benchmark::State& state) {
  for (auto _ : state) benchmark::DoNotOptimize(tw::text::parse<tw::length>("7 ft 10 1/2 in"));
  tw::bench::per_value(state, 1);
}
BENCHMARK(parse_a_length);

void print_a_length(benchmark::State& state) {
  const tw::length size = tw::metres(2.4);
  for (auto _ : state) benchmark::DoNotOptimize(tw::text::of(size, tw::text::unit_system::us));
  tw::bench::per_value(state, 1);
}
BENCHMARK(print_a_length);

}  // namespace

BENCHMARK_MAIN();
