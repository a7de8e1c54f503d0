// SPDX-License-Identifier: BSL-1.0
// The whole demo plan, read by the example's own reader: what a front end pays for one assessment.
#include <tankwright/numerics/monte_carlo.hpp>

#include "bench.hpp"
#include "demo_plan.hpp"
#include "plan_file.hpp"

namespace tw = tankwright;

namespace {

tw::commissioning::plan demo() { return plan_file::read_text(demo_plan, "demo plan").build; }

void assess_without_start_up(benchmark::State& state) {
  auto plan = demo();
  plan.life->forecast = false;
  for (auto _ : state) benchmark::DoNotOptimize(tw::commissioning::assess(plan));
  tw::bench::per_value(state, 1.0);
}
BENCHMARK(assess_without_start_up);

void assess_with_start_up(benchmark::State& state) {
  const auto plan = demo();
  for (auto _ : state) benchmark::DoNotOptimize(tw::commissioning::assess(plan));
  tw::bench::per_value(state, 1.0);
}
BENCHMARK(assess_with_start_up);

void draw_the_figures(benchmark::State& state) {
  const auto plan = demo();
  for (auto _ : state) benchmark::DoNotOptimize(tw::commissioning::figures_of(plan));
  tw::bench::per_value(state, 1.0);
}
BENCHMARK(draw_the_figures);

// Where the time of `assess` goes, section by section.
template <class Assess>
void section(benchmark::State& state, Assess assess) {
  auto plan = demo();
  plan.life->forecast = false;
  const auto system = tw::commissioning::state_of(plan);
  for (auto _ : state) benchmark::DoNotOptimize(assess(plan, system));
  tw::bench::per_value(state, 1.0);
}
namespace twc = tw::commissioning;
BENCHMARK_CAPTURE(section, state_of, [](const auto& p, const auto&) { return twc::state_of(p); });
BENCHMARK_CAPTURE(section, first_fill, [](const auto& p, const auto& s) { return assess_first_fill(*p.vessel, s); });
BENCHMARK_CAPTURE(section, hold, [](const auto& p, const auto&) { return assess_hold(*p.hold); });
BENCHMARK_CAPTURE(section, plumbing, [](const auto& p, const auto& s) { return assess_plumbing(*p.plumbing, s); });
BENCHMARK_CAPTURE(section, power_cut, [](const auto& p, const auto& s) { return assess_power_cut(*p.plumbing, s); });
BENCHMARK_CAPTURE(section, bottom, [](const auto& p, const auto& s) { return assess_bottom(*p.vessel, s); });
BENCHMARK_CAPTURE(section, water, [](const auto& p, const auto&) { return assess_water(*p.water); });
BENCHMARK_CAPTURE(section, closing,
                  [](const auto& p, const auto& s) { return assess_closing(twc::closing_of(*p.vessel), s); });
BENCHMARK_CAPTURE(section, room, [](const auto& p, const auto& s) { return assess_room(*p.room, s); });
BENCHMARK_CAPTURE(section, life, [](const auto& p, const auto& s) { return assess_life(*p.life, s); });

// 100 000 simulated power cuts: the margin with the running level and the depth of the outlets drawn anew each time.
void simulated_power_cuts(benchmark::State& state) {
  const auto plan = demo();
  auto input = tw::commissioning::detail::power_cut_of(
      *plan.plumbing, tw::commissioning::detail::solved_circuit(*plan.plumbing, tw::commissioning::state_of(plan)));
  const double depth = input.returns[0].outlet_below_edge->value();
  const auto margin = [&](tw::length level, tw::length deeper) {
    input.sump.running_level = level;
    input.returns[0].outlet_below_edge = tw::metres(depth) + deeper;
    return tw::plumbing::power_cut(input).margin.central;
  };
  for (auto _ : state) {
    benchmark::DoNotOptimize(tw::numerics::simulate({.samples = 100000, .seed = 1}, margin,
                                          tw::rectangular(tw::millimetres(250.0), tw::millimetres(4.0)),
                                          tw::rectangular(tw::millimetres(0.0), tw::millimetres(4.0))));
  }
  tw::bench::per_value(state, 100000.0);
}
BENCHMARK(simulated_power_cuts)->Unit(benchmark::kMillisecond);

}  // namespace

BENCHMARK_MAIN();
