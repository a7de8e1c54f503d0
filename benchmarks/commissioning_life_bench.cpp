// SPDX-License-Identifier: BSL-1.0
#include <tankwright/commissioning/life_plan.hpp>

#include "bench.hpp"

using namespace tankwright;
using namespace tankwright::commissioning;

namespace {

life_plan plan() {
  life_plan p;
  p.filter.food = {{.label = "shrimp",
                    .fed = {.food = grams_per_day(24.0), .protein = percent(11.0)},
                    .kind = food_kind::wet},
                   {.label = "granulate",
                    .fed = {.food = grams_per_day(4.0), .protein = percent(48.0)},
                    .kind = food_kind::dry}};
  p.filter.rock = {.proven = load_of(p.filter.food), .moved = fraction(0.75)};
  p.filter.surfaces = {{.label = "sand", .wet = square_metres(26.0), .seeded = fraction(0.02)},
                       {.label = "media", .wet = square_metres(15.0)}};
  p.weeks.animals = {{.on = days(0.0), .share = fraction(0.5)}, {.on = days(28.0), .share = fraction(1.0)}};
  p.weeks.cultures = {{.when = {.at = days(0.0), .every = days(7.0), .times = 6},
                       .oxidises = life::nitrogen_load::from_nitrogen(grams_per_day(0.02))}};
  p.ph = water::ph_nbs{8.1};
  p.alkalinity = {.now = water::alkalinity::from_degrees_kh(8.0), .lowest = water::alkalinity::from_degrees_kh(7.0)};
  p.animals = {{.label = "garden eels",
                .breathing = {.each = grams(28.0),
                              .count = 40.0,
                              .measured = life::specific_oxygen_use::from_milligrams_per_kilogram_hour(180.0),
                              .measured_at_mass = grams(40.0),
                              .measured_at = celsius(25.0)},
                .swims = swimmer{.adult = centimetres(38.0), .speed = centimetres_per_second(5.0)}}};
  p.power_cut = {.help_within = hours(8.0), .battery = battery_air{.bubbles = per_hour(0.3), .runs = hours(10.0)}};
  p.arrivals = {.bag = {.total = water::total_ammonia::from_nitrogen(milligrams_per_litre(1.2)),
                        .ph = water::ph_nbs{7.2},
                        .salinity = practical_salinity{32.5},
                        .temperature = celsius(22.5)},
                .vessel = litres(12.0),
                .salinity_per_hour = 1.0};
  p.room = {.run = metres(2.0), .width = metres(0.8)};
  return p;
}

void assessed(benchmark::State& state, bool forecast) {
  life_plan of = plan();
  of.forecast = forecast;
  const system_state system{
      .water = celsius(24.0),
      .display_water = estimate<volume>{litres(1550.0), litres(1600.0), litres(1650.0), "rock and sand"},
      .display_surface = square_metres(2.4),
      .flow = litres_per_hour(6000.0)};
  for (auto _ : state) benchmark::DoNotOptimize(assess_life(of, system));
  bench::per_value(state, 1.0);
}

void without_the_weeks(benchmark::State& state) { assessed(state, false); }
BENCHMARK(without_the_weeks)->Unit(benchmark::kMicrosecond);

// Three simulations of 60 days.
void with_the_weeks(benchmark::State& state) { assessed(state, true); }
BENCHMARK(with_the_weeks)->Unit(benchmark::kMicrosecond);

}  // namespace

BENCHMARK_MAIN();
