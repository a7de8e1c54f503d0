// SPDX-License-Identifier: BSL-1.0
// What a formula costs by name beyond its C++ call: by plain numbers, and as JSON.
#include <formulas.hpp>
#include <string>
#include <tankwright/water/salt_mix.hpp>

#include "bench.hpp"

namespace tw = tankwright;
namespace f = tankwright_formulas;

namespace {

double target_of(std::size_t i) { return 34.0 + 1e-3 * static_cast<double>(i % 1000); }

void salt_in_cpp(benchmark::State& state) {
  std::size_t i = 0;
  for (auto _ : state) {
    benchmark::DoNotOptimize(tw::water::salt_for_new_water({.volume = tw::litres(2150),
                                                            .target = tw::practical_salinity{target_of(++i)},
                                                            .temperature = tw::celsius(24.0),
                                                            .mix_yield = tw::fraction(0.87)}));
  }
}
BENCHMARK(salt_in_cpp);

void salt_by_numbers(benchmark::State& state) {
  const int formula = f::find("water.salt_for_new_water");
  double in[4] = {2.15, 35.0, 297.15, 0.87}, out[6];
  std::size_t i = 0;
  for (auto _ : state) {
    in[1] = target_of(++i);
    f::call_numbers(formula, in, out);
    benchmark::DoNotOptimize(out);
  }
}
BENCHMARK(salt_by_numbers);

void salt_by_json(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(f::call("water.salt_for_new_water",
                                     R"({"volume": 2.15, "target": 35, "temperature": 297.15, "mix_yield": 0.87})"));
  }
}
BENCHMARK(salt_by_json);

void salt_by_json_with_units(benchmark::State& state) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(
        f::call("water.salt_for_new_water",
                R"({"volume": "2150 L", "target": 35, "temperature": "24 degC", "mix_yield": "87 %"})"));
  }
}
BENCHMARK(salt_by_json_with_units);

}  // namespace
