// SPDX-License-Identifier: BSL-1.0
// A whole plan: read, assessed, assessed with its doubts, asked backwards. Ratios to one assessment in the same run.
#include <benchmark/benchmark.h>

#include <string>
#include <tankwright/decisions.hpp>
#include <tankwright/decisions/situation.hpp>
#include <tankwright/exchange.hpp>
#include <tankwright/plan/path.hpp>
#include <tankwright/plan/validate.hpp>

namespace {

namespace tw = tankwright;

const std::string& demo_text() {
  static const std::string text = tw::exchange::read_file(DEMO_PLAN);
  return text;
}

const tw::plan::build& demo() {
  static const tw::plan::build build = tw::exchange::read_plan(demo_text(), tw::exchange::notation::toml).build;
  return build;
}

/// The demo without its forecast of weeks, which costs more than all the rest.
tw::plan::build without_forecast() {
  tw::plan::build build = demo();
  tw::plan::set(build, "life.forecast", "false");
  return build;
}

void read_demo(benchmark::State& state) {
  for (auto _ : state) benchmark::DoNotOptimize(tw::exchange::read_plan(demo_text(), tw::exchange::notation::toml));
}
BENCHMARK(read_demo)->Unit(benchmark::kMicrosecond);

void validate_demo(benchmark::State& state) {
  for (auto _ : state) benchmark::DoNotOptimize(tw::plan::validate(demo()));
}
BENCHMARK(validate_demo)->Unit(benchmark::kMicrosecond);

void assess_demo(benchmark::State& state) {
  const tw::plan::build build = without_forecast();
  for (auto _ : state) benchmark::DoNotOptimize(tw::decisions::assess(build));
}
BENCHMARK(assess_demo)->Unit(benchmark::kMicrosecond);

void assess_demo_with_forecast(benchmark::State& state) {
  for (auto _ : state) benchmark::DoNotOptimize(tw::decisions::assess(demo()));
}
BENCHMARK(assess_demo_with_forecast)->Unit(benchmark::kMicrosecond);

void one_decision(benchmark::State& state, const char* id) {
  const tw::plan::build build = without_forecast();
  for (auto _ : state) benchmark::DoNotOptimize(tw::decisions::assess_one(build, id));
}
BENCHMARK_CAPTURE(one_decision, power_cut, "sump.power_cut")->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(one_decision, running_level, "sump.running_level")->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(one_decision, panels, "vessel.panels")->Unit(benchmark::kMicrosecond);
BENCHMARK_CAPTURE(one_decision, humidity, "room.humidity")->Unit(benchmark::kMicrosecond);

void with_doubts(benchmark::State& state) {
  const tw::plan::build build = without_forecast();
  for (auto _ : state) benchmark::DoNotOptimize(tw::decisions::assess_with_doubts(build));
}
BENCHMARK(with_doubts)->Unit(benchmark::kMillisecond);

void cures(benchmark::State& state, const char* id) {
  const tw::plan::build build = without_forecast();
  for (auto _ : state) benchmark::DoNotOptimize(tw::decisions::what_would_hold(build, id));
}
BENCHMARK_CAPTURE(cures, power_cut, "sump.power_cut")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(cures, lids, "vessel.lids")->Unit(benchmark::kMillisecond);

void text_to_report(benchmark::State& state) {
  for (auto _ : state) {
    const auto read = tw::exchange::read_plan(demo_text(), tw::exchange::notation::toml);
    benchmark::DoNotOptimize(tw::exchange::report_to_json(tw::decisions::assess(read.build), {}, {.indent = 0}));
  }
}
BENCHMARK(text_to_report)->Unit(benchmark::kMicrosecond);

/// What each decision costs where the cases of the sections are there already: its own part of an assessment.
void own_part(benchmark::State& state, const tw::decisions::decision* d, const tw::decisions::situation* s) {
  for (auto _ : state) {
    tw::decisions::answers out;
    out.run(*d, *s);
    benchmark::DoNotOptimize(out.take());
  }
}

/// The cases alone: everything that several decisions share.
void shared_part(benchmark::State& state, const tw::plan::build* build) {
  for (auto _ : state) {
    const tw::decisions::situation s{*build};
    benchmark::DoNotOptimize(s.state());
    if (build->life) benchmark::DoNotOptimize(s.life());
    if (build->room) benchmark::DoNotOptimize(s.room());
    if (build->hold) benchmark::DoNotOptimize(s.hold());
  }
}

/// `each/<plan>/<decision>` for every decision that a plan asks (benchmarks/decision_costs.py makes a table of them).
void register_each_decision() {
  static const tw::plan::build metric = without_forecast();
  static const tw::plan::build wood = [] {
    auto read = tw::exchange::read_plan(tw::exchange::read_file(PLYWOOD_PLAN), tw::exchange::notation::toml).build;
    tw::plan::set(read, "life.forecast", "false");
    return read;
  }();
  static const tw::decisions::situation of_metric{metric}, of_wood{wood};
  const auto add = [](const std::string& plan, const tw::plan::build& build, const tw::decisions::situation& s) {
    benchmark::RegisterBenchmark(("each/" + plan + "/all").c_str(), [&build](benchmark::State& state) {
      for (auto _ : state) benchmark::DoNotOptimize(tw::decisions::assess(build));
    });
    benchmark::RegisterBenchmark(("each/" + plan + "/validate").c_str(), [&build](benchmark::State& state) {
      for (auto _ : state) benchmark::DoNotOptimize(tw::plan::validate(build));
    });
    benchmark::RegisterBenchmark(("each/" + plan + "/shared").c_str(), shared_part, &build);
    for (const tw::decisions::decision* d : tw::decisions::all_decisions()) {
      tw::decisions::answers out;
      out.run(*d, s);
      if (out.take().empty()) continue;
      benchmark::RegisterBenchmark(("each/" + plan + "/" + std::string{d->id}).c_str(), own_part, d, &s);
    }
  };
  add("demo", metric, of_metric);
  add("plywood", wood, of_wood);
}

}  // namespace

int main(int argc, char** argv) {
  register_each_decision();
  benchmark::Initialize(&argc, argv);
  if (benchmark::ReportUnrecognizedArguments(argc, argv)) return 1;
  benchmark::RunSpecifiedBenchmarks();
  return 0;
}
