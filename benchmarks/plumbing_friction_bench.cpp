// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <tankwright/plumbing/friction.hpp>
#include <vector>

#include "bench.hpp"

namespace tw = tankwright;
namespace twp = tankwright::plumbing;

namespace {

constexpr std::size_t size = 4096;

struct flows {
  std::vector<twp::reynolds_number> re;
  std::vector<twp::relative_roughness> e;
  flows() {
    for (std::size_t i = 0; i < size; ++i) {
      re.emplace_back(4e3 * std::pow(10.0, 3.0 * static_cast<double>(i) / static_cast<double>(size)));
      e.emplace_back(1e-5 * static_cast<double>(1 + i % 7));
    }
  }
};

void scalar(benchmark::State& state) {
  const flows in;
  for (auto _ : state) {
    double sum = 0.0;
    for (std::size_t i = 0; i < size; ++i) {
      sum += twp::friction_factor(in.re[i], in.e[i]).value();
      benchmark::DoNotOptimize(sum);  // one call at a time
    }
  }
  tw::bench::per_value(state, size);
}
BENCHMARK(scalar);

void batch(benchmark::State& state) {
  const flows in;
  std::vector<twp::darcy_factor> out(size, twp::darcy_factor{0.0});
  for (auto _ : state) {
    twp::friction_factor(in.re, in.e, out);
    benchmark::DoNotOptimize(out.data());
    benchmark::ClobberMemory();
  }
  tw::bench::per_value(state, size);
}
BENCHMARK(batch);

void head_loss_of_a_run(benchmark::State& state) {
  const auto sea = tw::water::seawater(tw::practical_salinity{35.0}, tw::celsius(25.0));
  const twp::pipe_run run{.label = "return A",
                          .bore = twp::pipe_bore{tw::millimetres(34.0)},
                          .length = tw::metres(2.0),
                          .fittings = twp::known_loss(4.0)};
  double litres_per_hour = 3000.0;
  for (auto _ : state) {
    tw::head h = twp::head_loss(run, tw::litres_per_hour(litres_per_hour), sea);
    benchmark::DoNotOptimize(h);
    litres_per_hour = litres_per_hour < 8000.0 ? litres_per_hour + 1.0 : 3000.0;
  }
  tw::bench::per_value(state, 1);
}
BENCHMARK(head_loss_of_a_run);

}  // namespace

BENCHMARK_MAIN();
