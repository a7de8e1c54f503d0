// SPDX-License-Identifier: BSL-1.0
// Where does the heat of a display go, what heater holds it, and how cold is the water after a night without power,
// when the house cools down as well?
#include <cstdio>

#include <tankwright/room.hpp>

namespace tw = tankwright;
namespace room = tankwright::room;

int main() {
  // [tank]
  const auto glass = room::transmittance(
      {.label = "sides", .layers = {{.thickness = tw::millimetres(15), .conductivity = room::glass_conductivity}}});
  const auto base = room::transmittance(
      {.label = "base",
       .layers = {
           {.label = "plywood", .thickness = tw::millimetres(18), .conductivity = room::plywood_conductivity},
           {.label = "foam", .thickness = tw::millimetres(30), .conductivity = room::polystyrene_conductivity}}});
  room::tank_heat tank{.water = {.temperature = tw::celsius(25.0), .salinity = tw::practical_salinity{35.0}},
                       .air = {.temperature = tw::celsius(19.0), .humidity = tw::relative_humidity::from_percent(50.0)},
                       .surfaces = {{.label = "display", .area = tw::square_metres(2.16)},
                                    {.label = "sump", .area = tw::square_metres(0.54)}},
                       .walls = {{.label = "sides", .area = tw::square_metres(4.95), .transmittance = glass},
                                 {.label = "base", .area = tw::square_metres(2.16), .transmittance = base}},
                       .sources = {{.label = "return pump", .heat = tw::watts(85.0)}}};
  const auto heat_capacity = room::heat_capacity_of(tank.water, tw::litres(1810.0));
  // [/tank]

  const auto b = room::heat_balance(tank);
  std::printf(
      "evaporation %.0f W, convection %.0f W, radiation %.0f W, walls %.0f W, make-up %.0f W, less %.0f W of the "
      "pump\n",
      tw::in_watts(b.evaporation.central), tw::in_watts(b.convection.central), tw::in_watts(b.radiation),
      tw::in_watts(b.walls), tw::in_watts(b.make_up.central), tw::in_watts(b.gains));
  const auto heater = room::heater_for(tank);
  std::printf("to be heated: %.0f W (%.0f to %.0f); heater %.0f W\n", tw::in_watts(heater.needed.central),
              tw::in_watts(heater.needed.low), tw::in_watts(heater.needed.high), tw::in_watts(heater.suggested));
  const auto cost = room::running_cost({.heat = heater.needed, .price = room::electricity_price{0.30}});
  std::printf("at 0.30 per kWh: %.2f a day (%.2f to %.2f)\n\n", cost.cost_per_day.central, cost.cost_per_day.low,
              cost.cost_per_day.high);

  // [power_cut]
  tank.sources.clear();
  const room::uncontrolled_tank night{
      .tank = tank,
      .heat_capacity = heat_capacity,
      .room = room::drifting_room{.settles_at = tw::celsius(8.0), .time_constant = tw::hours(24.0)}};
  const auto course = room::temperature_course_of(night, tw::hours(24.0), tw::hours(6.0));
  const auto limit = room::time_to_temperature(night, tw::celsius(20.0));
  // [/power_cut]
  std::printf("hours without power   water, degC\n");
  for (const auto& p : course.points) {
    std::printf("%19.0f   %.1f (%.1f to %.1f)\n", tw::in_hours(p.time), tw::in_celsius(p.water.central),
                tw::in_celsius(p.water.low), tw::in_celsius(p.water.high));
  }
  std::printf("20 degC after %.1f h, at the soonest %.1f h\n", tw::in_hours(*limit.expected),
              tw::in_hours(*limit.soonest));

  tank.air = {.temperature = tw::celsius(18.0), .humidity = tw::relative_humidity::from_percent(50.0)};
  tank.water.temperature = tw::celsius(20.0);
  const auto again = room::warm_up(
      {.tank = tank, .heat_capacity = heat_capacity, .target = tw::celsius(25.0), .heater = heater.suggested});
  std::printf("back from 20 to 25 degC with that heater: %.0f h (%.0f to %.0f)\n", tw::in_hours(again.time.central),
              tw::in_hours(again.time.low), tw::in_hours(again.time.high));
  std::printf("\n%.*s\n", static_cast<int>(course.caution.text.size()), course.caution.text.data());
}
