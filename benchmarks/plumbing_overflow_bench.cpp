// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/overflow.hpp>

#include "bench.hpp"

namespace tw = tankwright;
namespace tp = tankwright::plumbing;

namespace {

const tp::overflow_edge wall = tp::full_width_edge{.width = tw::metres(0.8), .crest_height = tw::metres(0.55)};

void flow_over(benchmark::State& state) {
  tw::length head = tw::millimetres(12.0);
  for (auto _ : state) {
    benchmark::DoNotOptimize(head);
    benchmark::DoNotOptimize(tp::flow_over(wall, head));
  }
  tw::bench::per_value(state, 1);
}
BENCHMARK(flow_over);

void head_over(benchmark::State& state) {
  tw::flow_rate flow = tw::litres_per_hour(8000.0);
  for (auto _ : state) {
    benchmark::DoNotOptimize(flow);
    benchmark::DoNotOptimize(tp::head_over(wall, flow));
  }
  tw::bench::per_value(state, 1);
}
BENCHMARK(head_over);

}  // namespace

BENCHMARK_MAIN();
