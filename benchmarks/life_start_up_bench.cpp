// SPDX-License-Identifier: BSL-1.0
#include <tankwright/life.hpp>

#include "bench.hpp"

namespace tw = tankwright;
namespace life = tankwright::life;

namespace {

life::start_up plan(double cells) {
  return {.net = tw::litres(2000.0),
          .temperature = tw::celsius(25.0),
          .oxygen = tw::milligrams_per_litre(6.5),
          .ammonia = tw::water::total_ammonia::from_nitrogen(tw::milligrams_per_litre(2.0)),
          .seedings = {{.when = {.at = tw::days(0.0)}, .added = life::bacteria{tw::grams(cells), tw::grams(cells)}}}};
}

void run(benchmark::State& state, const life::start_up& of) {
  for (auto _ : state) benchmark::DoNotOptimize(life::simulate_start_up(of));
  tw::bench::per_value(state, 1.0);
}

// 60 days, samples every six hours.
void without_animals(benchmark::State& state) { run(state, plan(2e-3)); }
BENCHMARK(without_animals)->Unit(benchmark::kMicrosecond);

// Feeding that grows, daily doses, a weekly culture, weekly water changes.
void eventful(benchmark::State& state) {
  life::start_up of = plan(2e-3);
  of.seedings.push_back({.when = {.at = tw::days(7.0), .every = tw::days(7.0), .times = 8},
                         .added = life::bacteria{tw::milligrams(50.0), tw::milligrams(50.0)}});
  of.loads = {{.from = tw::days(14.0), .load = life::nitrogen_load::from_nitrogen(tw::grams_per_day(1.0))},
              {.from = tw::days(30.0), .load = life::nitrogen_load::from_nitrogen(tw::grams_per_day(2.0))}};
  of.doses = {{.when = {.at = tw::days(1.0), .every = tw::days(1.0), .times = 10},
               .rise = tw::water::total_ammonia::from_nitrogen(tw::milligrams_per_litre(0.5))}};
  of.water_changes = {{.when = {.at = tw::days(7.0), .every = tw::days(7.0), .times = 8}, .part = tw::fraction(0.2)}};
  run(state, of);
}
BENCHMARK(eventful)->Unit(benchmark::kMicrosecond);

// Stiff: far more bacteria than food, as after a whole bottle in a bucket.
void stiff(benchmark::State& state) { run(state, plan(200.0)); }
BENCHMARK(stiff)->Unit(benchmark::kMicrosecond);

// The closed forms, together: what a slider moves.
void closed_forms(benchmark::State& state) {
  const life::loop loops[] = {{.flow = tw::litres_per_hour(8000.0), .efficiency = tw::fraction(0.5)}};
  const life::filter_surface surfaces[] = {{.wet = tw::square_metres(40.0), .seeded = tw::fraction(0.5)}};
  double sum = 0.0;
  for (auto _ : state) {
    auto net = tw::litres(2000.0);
    benchmark::DoNotOptimize(net);
    const auto load = life::nitrogen_from_feed({.food = tw::grams_per_day(40.0), .protein = tw::fraction(0.45)});
    const auto needs = life::needs_of_nitrification(load.ammonia.central);
    const auto level =
        life::steady_ammonia({.load = load.ammonia.central, .surfaces = surfaces, .temperature = tw::celsius(25.0)});
    const auto cut = life::time_to_oxygen_limit({.tank = {.net = net,
                                                          .use = needs.oxygen.central,
                                                          .saturation = tw::milligrams_per_litre(6.8),
                                                          .aeration = tw::per_hour(0.03)},
                                                 .start = tw::milligrams_per_litre(6.5)});
    const auto clear = life::time_to_remove({.net = net, .loops = loops}, tw::fraction(0.9));
    const auto drip =
        life::share_of_tank_water({.start = tw::litres(20.0), .flow = tw::litres_per_minute(0.1)}, tw::hours(2.0));
    sum += level.share_of_capacity.central + (cut.time ? cut.time->value() : 0.0) + clear.turnovers + drip.value();
  }
  benchmark::DoNotOptimize(sum);
  tw::bench::per_value(state, 6.0);  // six calls
}
BENCHMARK(closed_forms);

}  // namespace

BENCHMARK_MAIN();
