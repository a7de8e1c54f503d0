// SPDX-License-Identifier: BSL-1.0
#include <tankwright/plumbing/power_cut_transient.hpp>
#include <tankwright/plumbing/restart.hpp>

#include "bench.hpp"

namespace tw = tankwright;
namespace tp = tankwright::plumbing;

namespace {

tp::pipe_run pipe(const char* label, double bore_mm) {
  return {.label = label,
          .bore = tp::pipe_bore{tw::millimetres(bore_mm)},
          .length = tw::metres(2.0),
          .fittings = tp::known_loss(4.0)};
}

tp::power_cut_input system() {
  return {.display = {.surface = tw::square_metres(2.16),
                      .edge = tp::full_width_edge{.width = tw::metres(0.8), .crest_height = tw::metres(0.55)},
                      .box = tp::overflow_box{.horizontal_area = tw::square_metres(0.06),
                                              .falls_by = tw::millimetres(120.0)},
                      .drains = {pipe("main drain", 40.9)}},
          .sump = {.rim = tw::metres(0.45),
                   .running_level = tw::metres(0.20),
                   .chambers = {{.label = "drains", .horizontal_area = tw::square_metres(0.12)},
                                {.label = "skimmer",
                                 .horizontal_area = tw::square_metres(0.25),
                                 .gear = tw::square_metres(0.02)},
                                {.label = "pump", .horizontal_area = tw::square_metres(0.18)}},
                   .baffles = {{.crest = tw::metres(0.30), .width = tw::metres(0.4)},
                               {.crest = tw::metres(0.25), .width = tw::metres(0.4)}}},
          .returns = {{.label = "return A",
                       .flow = tw::litres_per_hour(5000.0),
                       .outlet_below_edge = tw::millimetres(10.0),
                       .pipe = pipe("return A", 34.0)},
                      {.label = "return B",
                       .flow = tw::litres_per_hour(3000.0),
                       .outlet_below_edge = tw::millimetres(5.0),
                       .pipe = pipe("return B", 26.0)}},
          .edge_above_floor = tw::metres(1.6)};
}

void power_cut(benchmark::State& state) {
  auto in = system();
  for (auto _ : state) {
    benchmark::DoNotOptimize(in);
    benchmark::DoNotOptimize(tp::power_cut(in));
  }
  tw::bench::per_value(state, 1);
}
BENCHMARK(power_cut);

void worst_moment(benchmark::State& state) {
  auto in = system();
  for (auto _ : state) {
    benchmark::DoNotOptimize(in);
    benchmark::DoNotOptimize(tp::worst_moment_of(in));
  }
  tw::bench::per_value(state, 1);
}
BENCHMARK(worst_moment);

void restart(benchmark::State& state) {
  tp::restart_input in{.system = system(),
                       .inlet = {.above_floor = tw::metres(0.05), .bore = tp::pipe_bore{tw::millimetres(40.0)}},
                       .surge = tw::millimetres(40.0)};
  for (auto _ : state) {
    benchmark::DoNotOptimize(&in);
    benchmark::DoNotOptimize(tp::restart(in));
  }
  tw::bench::per_value(state, 1);
}
BENCHMARK(restart);

void ten_minutes(benchmark::State& state) {
  tp::power_cut_transient_input in{.system = system()};
  for (auto _ : state) {
    benchmark::DoNotOptimize(in);
    benchmark::DoNotOptimize(tp::power_cut_transient(in));
  }
  tw::bench::per_value(state, 1);
}
BENCHMARK(ten_minutes)->Unit(benchmark::kMicrosecond);

}  // namespace

BENCHMARK_MAIN();
