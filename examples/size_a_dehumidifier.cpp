// SPDX-License-Identifier: BSL-1.0
// A display and its sump stand in a room of 150 m3. What humidity does the room settle at, summer and winter, will the
// window drip, and what dehumidifier holds 55 %?
#include <cstdio>

#include <tankwright/room.hpp>

namespace tw = tankwright;
namespace room = tankwright::room;

namespace {

room::air air(double celsius, double humidity) {
  return {.temperature = tw::celsius(celsius), .humidity = tw::relative_humidity::from_percent(humidity)};
}

void report(const char* season, const room::tank_room& r) {
  const auto h = room::humidity_balance(r);
  std::printf("%s: %.0f %% (%.0f to %.0f), evaporation %.1f L a day (%.1f to %.1f)\n", season,
              in_percent(h.central.air.humidity.get()), in_percent(h.low.air.humidity.get()),
              in_percent(h.high.air.humidity.get()), tw::in_kilograms_per_day(h.central.evaporation),
              tw::in_kilograms_per_day(h.low.evaporation), tw::in_kilograms_per_day(h.high.evaporation));
}

}  // namespace

int main() {
  // [room]
  room::tank_room summer{
      .room = {.volume = tw::cubic_metres(150.0),
               .air_changes = tw::per_hour(0.5),
               .temperature = tw::celsius(24.0),
               .outdoor = air(28.0, 60.0)},
      .water = {.temperature = tw::celsius(25.0), .salinity = tw::practical_salinity{35.0}},
      .surfaces = {{.label = "display", .area = tw::square_metres(2.16), .covered = tw::percent(50)},
                   {.label = "sump", .area = tw::square_metres(0.54), .agitation = room::gently_moving},
                   {.label = "overflow weir", .area = tw::square_metres(0.15), .agitation = room::lively}},
      .sources = {{.label = "two people", .rate = tw::grams_per_hour(100.0)}}};
  // [/room]
  room::tank_room winter = summer;
  winter.room.temperature = tw::celsius(22.0);
  winter.room.outdoor = air(-2.0, 85.0);
  report("summer", summer);
  report("winter", winter);

  // [window]
  const auto in_winter = room::humidity_balance(winter).high.air;
  const auto window = room::judge_surface({.transmittance = tw::watts_per_square_metre_kelvin(2.8),
                                           .inside = in_winter.temperature,
                                           .outside = tw::celsius(-2.0)},
                                          in_winter);
  // [/window]
  std::printf("window at -2 degC outside: its face is at %.1f degC, the dew point at %.1f degC: %s\n",
              tw::in_celsius(window.surface), tw::in_celsius(window.dew_point),
              window.drips   ? "it drips"
              : window.mould ? "it can grow mould"
                             : "dry");

  // [size]
  const auto size = room::dehumidifier_for(summer, tw::relative_humidity::from_percent(55.0));
  // [/size]
  summer.dehumidifier = room::controlled_dehumidifier{.machine = {.capacity = size.suggested},
                                                      .set_point = tw::relative_humidity::from_percent(55.0)};
  const auto held = room::humidity_balance(summer).central;
  std::printf(
      "to hold 55 %% in summer: %.1f L a day (%.1f to %.1f), %.1f of it from outdoor air, %.1f from the water\n",
      tw::in_kilograms_per_day(size.load.central), tw::in_kilograms_per_day(size.load.low),
      tw::in_kilograms_per_day(size.load.high), -tw::in_kilograms_per_day(held.ventilation),
      tw::in_kilograms_per_day(held.evaporation));
  std::printf(
      "a label of %.0f L a day (26.7 degC, 60 %%) does it in %.0f %% of the time; the condensed water alone "
      "heats the room with %.0f W\n",
      tw::in_kilograms_per_day(size.suggested), tw::in_percent(held.duty),
      tw::in_watts(size.latent_heat_to_room.central));
  std::printf("\n%.*s\n", static_cast<int>(size.caution.text.size()), size.caution.text.data());
}
