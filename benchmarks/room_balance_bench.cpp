// SPDX-License-Identifier: BSL-1.0
#include <tankwright/room/humidity_course.hpp>
#include <tankwright/room/temperature_course.hpp>

#include "bench.hpp"

namespace tw = tankwright;
namespace room = tankwright::room;

namespace {

std::vector<room::wet_surface> surfaces() {
  return {
      {.label = "display", .area = tw::square_metres(2.16)},
      {.label = "sump", .area = tw::square_metres(0.54), .agitation = room::gently_moving, .covered = tw::percent(60)}};
}
room::tank_water water() { return {.temperature = tw::celsius(25.0), .salinity = tw::practical_salinity{35.0}}; }
room::air air(double t, double humidity) {
  return {.temperature = tw::celsius(t), .humidity = tw::relative_humidity::from_percent(humidity)};
}

/// Low, central and high, with ventilation and a dehumidifier too small to hold its set point.
void coupled_room_balance(benchmark::State& state) {
  const room::tank_room r{
      .room = {.volume = tw::cubic_metres(150.0),
               .air_changes = tw::per_hour(0.5),
               .temperature = tw::celsius(24.0),
               .outdoor = air(28.0, 60.0)},
      .water = water(),
      .surfaces = surfaces(),
      .dehumidifier = room::controlled_dehumidifier{.machine = {.capacity = tw::kilograms_per_day(8.0)},
                                                    .set_point = tw::relative_humidity::from_percent(55.0)}};
  for (auto _ : state) benchmark::DoNotOptimize(room::humidity_balance(r));
  tw::bench::per_value(state, 1);
}
BENCHMARK(coupled_room_balance);

room::uncontrolled_tank tank() {
  return {
      .tank = {.water = water(),
               .air = air(18.0, 50.0),
               .surfaces = surfaces(),
               .walls = {{.area = tw::square_metres(7.0), .transmittance = tw::watts_per_square_metre_kelvin(6.0)}}},
      .heat_capacity = tw::joules_per_kelvin(7.4e6)};
}

void temperature_course_of_of_24_hours(benchmark::State& state) {
  const room::uncontrolled_tank o = tank();
  for (auto _ : state) benchmark::DoNotOptimize(room::temperature_course_of(o, tw::hours(24.0)));
  tw::bench::per_value(state, 1);
}
BENCHMARK(temperature_course_of_of_24_hours);

void temperature_course_of_in_a_cooling_room(benchmark::State& state) {
  room::uncontrolled_tank o = tank();
  o.room = room::drifting_room{.settles_at = tw::celsius(8.0), .time_constant = tw::hours(20.0)};
  for (auto _ : state) benchmark::DoNotOptimize(room::temperature_course_of(o, tw::hours(24.0)));
  tw::bench::per_value(state, 1);
}
BENCHMARK(temperature_course_of_in_a_cooling_room);

}  // namespace

BENCHMARK_MAIN();
