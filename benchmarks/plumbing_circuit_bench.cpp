// SPDX-License-Identifier: BSL-1.0
#include <string>
#include <tankwright/plumbing/circuit_tuning.hpp>

#include "bench.hpp"

namespace tw = tankwright;
namespace twp = tankwright::plumbing;

namespace {

const tw::water::liquid sea{.density = tw::kilograms_per_cubic_metre(1023.0), .viscosity = tw::pascal_seconds(0.97e-3)};

twp::pump_curve three(double h0, double q1, double h1, double q2, double h2) {
  return twp::curve_from_three_points({.label = "pump",
                                       .shutoff_head = tw::metres(h0),
                                       .middle = {.flow = tw::cubic_metres_per_hour(q1), .head = tw::metres(h1)},
                                       .last = {.flow = tw::cubic_metres_per_hour(q2), .head = tw::metres(h2)}});
}

twp::pipe_run run(std::string label, std::string from, std::string to, double length, double bore, double k) {
  return {.label = std::move(label),
          .from = std::move(from),
          .to = std::move(to),
          .bore = twp::pipe_bore{tw::millimetres(bore)},
          .length = tw::metres(length),
          .fittings = twp::known_loss(k)};
}

/// One pump, a trunk and two returns.
twp::circuit two_returns() {
  return {.sources = {{.label = "sump", .level = tw::metres(0.0)}},
          .pumps = {{.label = "pump", .from = "sump", .to = "J1", .curve = three(6.0, 8.0, 4.5, 14.0, 1.0)}},
          .runs = {run("trunk", "J1", "J2", 3.0, 45.2, 5.0), run("A", "J2", "T1", 2.0, 34.0, 3.0),
                   run("B", "J2", "T2", 3.5, 26.2, 4.5)},
          .outlets = {{.label = "T1", .kind = twp::outlet_kind::submerged, .level = tw::metres(2.0)},
                      {.label = "T2", .kind = twp::outlet_kind::submerged, .level = tw::metres(2.0)}}};
}

std::string numbered(const char* name, int i) { return std::string{name}.append(std::to_string(i)); }

/// A manifold with a nozzle at every metre.
twp::circuit manifold(int nozzles) {
  twp::circuit c{.sources = {{.label = "sump", .level = tw::metres(0.0)}},
                 .pumps = {{.label = "pump", .from = "sump", .to = "J0", .curve = three(8.0, 60.0, 6.0, 110.0, 1.0)}}};
  for (int i = 0; i < nozzles; ++i) {
    c.runs.push_back(run(numbered("R", i), numbered("J", i), numbered("N", i), 0.1, 4.0, 2.0));
    c.outlets.push_back({.label = numbered("N", i), .kind = twp::outlet_kind::open, .level = tw::metres(1.0)});
    if (i + 1 < nozzles)
      c.runs.push_back(run(numbered("M", i), numbered("J", i), numbered("J", i + 1), 0.05, 100.0, 0.05));
  }
  return c;
}

void two_returns_cold(benchmark::State& state) {
  const twp::circuit c = two_returns();
  for (auto _ : state) {
    twp::circuit_solution s = twp::operating_point(c, sea);
    benchmark::DoNotOptimize(s.delivered);
  }
  tw::bench::per_value(state, 1);
}
BENCHMARK(two_returns_cold);

// The same without checking the circuit and writing the answer: what a solver that is kept spends on one more solution.
void two_returns_equations_alone(benchmark::State& state) {
  const twp::circuit c = two_returns();
  twp::detail::circuit_equations built{"benchmark", c, sea};
  for (auto _ : state) {
    built.solve();
    double q = built.flow_of_run(0);
    benchmark::DoNotOptimize(q);
  }
  tw::bench::per_value(state, 1);
}
BENCHMARK(two_returns_equations_alone);

void nozzles_cold(benchmark::State& state) {
  const twp::circuit c = manifold(static_cast<int>(state.range(0)));
  for (auto _ : state) {
    twp::circuit_solution s = twp::operating_point(c, sea);
    benchmark::DoNotOptimize(s.delivered);
  }
  tw::bench::per_value(state, static_cast<double>(state.range(0)));
  state.counters["steps"] = twp::operating_point(c, sea).iterations;
}
BENCHMARK(nozzles_cold)->RangeMultiplier(10)->Range(1, 1000);

void valve_for_a_flow(benchmark::State& state) {
  const twp::circuit c = two_returns();
  for (auto _ : state) {
    twp::valve_setting set = twp::valve_for_flow(c, sea, {.run = "A", .flow = tw::cubic_metres_per_hour(4.0)});
    benchmark::DoNotOptimize(set.wide_open);
  }
  tw::bench::per_value(state, 1);
}
BENCHMARK(valve_for_a_flow);

}  // namespace

BENCHMARK_MAIN();
