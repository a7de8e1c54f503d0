// SPDX-License-Identifier: BSL-1.0
#include <vector>

#include <tankwright/core/units.hpp>
#include <tankwright/vessel/compound.hpp>

#include "bench.hpp"

namespace tw = tankwright;
namespace vs = tankwright::vessel;

namespace {

vs::inside m(double x) { return vs::inside{tw::metres(x)}; }

vs::shape chambers() {
  const auto box = [](double l, double h) { return vs::box({.length = m(l), .width = m(0.5), .height = m(h)}); };
  return vs::side_by_side({{.what = box(0.4, 0.6)},
                           {.what = box(0.3, 0.5), .floor = tw::metres(0.1)},
                           {.what = box(0.5, 0.55), .floor = tw::metres(0.05)}});
}

vs::shape tub_on_a_cone() {
  return vs::stacked({vs::frustum({.bottom_diameter = m(0.1), .top_diameter = m(1.0), .height = m(0.3)}),
                      vs::upright_cylinder({.diameter = m(1.0), .height = m(0.6)})});
}

vs::shape drum_in_a_box() {
  return vs::side_by_side(
      {{.what = vs::lying_cylinder({.diameter = m(0.6), .length = m(1.0), .head_depth = m(0.1)})},
       {.what = vs::box({.length = m(1.0), .width = m(0.5), .height = m(0.7)}), .floor = tw::metres(0.1)}});
}

void depth_of(benchmark::State& state, vs::shape (*make)()) {
  const vs::shape shape = make();
  std::vector<tw::volume> volumes;
  for (int i = 1; i < 64; ++i) volumes.push_back(shape.capacity() * (i / 64.0));
  for (auto _ : state) {
    for (const auto& v : volumes) benchmark::DoNotOptimize(vs::depth_of(shape, v));
  }
  tw::bench::per_value(state, static_cast<double>(volumes.size()));
}
BENCHMARK_CAPTURE(depth_of, three_chambers, chambers);
BENCHMARK_CAPTURE(depth_of, tub_on_a_cone, tub_on_a_cone);
BENCHMARK_CAPTURE(depth_of, drum_in_a_box, drum_in_a_box);

}  // namespace

BENCHMARK_MAIN();
