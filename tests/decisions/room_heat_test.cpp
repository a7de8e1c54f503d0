// SPDX-License-Identifier: BSL-1.0
// The heat of the tank: heater, cooling, warm-up, the hours without power, and what it costs to run.
#include <tankwright/decisions/closing/cooling.hpp>
#include <tankwright/decisions/closing/heater.hpp>
#include <tankwright/decisions/closing/outage.hpp>
#include <tankwright/decisions/closing/warm_up.hpp>
#include <tankwright/decisions/running/running_cost.hpp>

#include <tankwright/room/heat_balance.hpp>
#include <tankwright/room/warm_up.hpp>

#include "decisions/some_room.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace td = tankwright::decisions;
using td::verdict;

namespace {

const evidence of_heater{"tankwright::decisions::answer_heater_choice", kind::wiring, "the same calls by hand"};
const evidence of_cooling{"tankwright::decisions::answer_summer_cooling", kind::identity, "the sum of the parts"};
const evidence of_warm_up{"tankwright::decisions::answer_warm_up_time", kind::identity, "C dT / P without losses"};
const evidence of_outage{"tankwright::decisions::answer_heat_outage", kind::identity, "energy balance at the start"};
const evidence of_cost{"tankwright::decisions::answer_running_cost", kind::identity, "power times time times price"};
const evidence of_store{"tankwright::decisions::heat_store_of", kind::identity, "rho c V of each part"};

room::tank_heat heat_by_hand(const room::tank_room& r) {
  room::tank_heat t{.water = r.water, .air = room::humidity_balance(r).central.air, .surfaces = r.surfaces};
  t.walls = {{.label = "sides", .area = square_metres(6.0), .transmittance = watts_per_square_metre_kelvin(3.0)}};
  return t;
}

}  // namespace

TEST_CASE("room.heater: what winter takes less pumps that never stop") {
  const auto f = answered(td::heater_choice, some_room());
  auto t = heat_by_hand(winter_by_hand());
  t.sources = {{.label = "pump", .heat = watts(120.0)}};
  const auto net = room::heat_balance(t).net;
  TW_CHECK(of_heater, band(f, "needed").central, net.central.value(), relative(1e-12));
  TW_CHECK(of_heater, band(f, "fit").central, 1.25 * net.high.value(), relative(1e-12));
  TW_CHECK(of_heater, band(f, "left").low, 900.0 - net.high.value(), relative(1e-12));
}

TEST_CASE("room.heater: on both sides of what is needed; without walls not enough is known") {
  const auto base = answered(td::heater_choice, some_room());
  const amount needed = band(base, "needed");
  const auto with = [](double watt) {
    return answered(td::heater_choice, changed(some_room(), {{"room.heating.heater", with_unit(watt, "W")}}));
  };
  CHECK(with(1.25 * needed.high + 0.01).verdict == verdict::holds);
  CHECK(with(1.25 * needed.high - 0.01).verdict == verdict::thin_margin);
  CHECK(with(needed.central + 0.01).verdict == verdict::thin_margin);
  judged(with(needed.central), verdict::does_not_hold, "left");
  judged(with(needed.central - 10.0), verdict::does_not_hold, "left");
  plan::build no_walls = some_room();
  plan::clear(no_walls, "room.heating.wall");
  for (const auto* d :
       {&td::heater_choice, &td::summer_cooling, &td::warm_up_time, &td::heat_outage, &td::running_cost}) {
    const auto f = answered(*d, no_walls);
    CHECK(f.verdict == verdict::not_enough_known);
    CHECK(f.measure_next.front().find("give the walls of the tank") == 0);
    CHECK(f.margin() == nullptr);
  }
}

TEST_CASE("room.cooling: the sum of the parts with everything on") {
  const auto f = answered(td::summer_cooling, some_room());
  auto t = heat_by_hand(summer_by_hand());
  t.sources = {{.label = "pump", .heat = watts(120.0)}, {.label = "lights", .heat = watts(60.0)}};
  const auto b = room::heat_balance(t);
  const power out =
      b.gains - b.evaporation.central - b.convection.central - b.make_up.central - b.radiation - b.covers - b.walls;
  TW_CHECK(of_cooling, band(f, "needed").central, out.value(), within(1e-9));
  plan::build no_summer = some_room();
  plan::clear(no_summer, "room.summer");
  CHECK(asked(td::summer_cooling, no_summer).empty());
}

TEST_CASE("room.warm_up: no quicker than without losses, and with sand, rock and walls slower") {
  const auto f = answered(td::warm_up_time, some_room());
  const room::tank_water sea{.temperature = celsius(25.0), .salinity = practical_salinity{35.0}};
  const double capacity = room::heat_capacity_of(sea, litres(2000.0)).value();
  const double lossless = capacity * 13.0 / (900.0 + 120.0);
  TW_HOLDS((evidence{"tankwright::decisions::answer_warm_up_time", kind::property, "losses only slow it down"}),
           band(f, "time").central > 0.9 * lossless);
  // Without evaporation, walls or pumps that count, and with a strong heater, it is C dT / P.
  const auto strong = answered(td::warm_up_time, some_room(), {{"room.heating.heater", "900 kW"}});
  TW_CHECK(of_warm_up, band(strong, "time").central, capacity * 13.0 / 900e3, relative(0.01));
  CHECK(f.verdict == verdict::holds);
  const amount needed = band(answered(td::heater_choice, some_room()), "needed");
  const auto weak =
      answered(td::warm_up_time, changed(some_room(), {{"room.heating.heater", with_unit(needed.high - 0.01, "W")}}));
  CHECK(weak.verdict == verdict::thin_margin);
  CHECK_FALSE(weak.find("time"));
  judged(answered(td::warm_up_time, some_room(), {{"room.heating.heater", "25 W"}}), verdict::does_not_hold, "left");
  CHECK_FALSE(answered(td::warm_up_time, some_room(), {{"room.heating.filled_at", "26 °C"}}).note.empty());
}

TEST_CASE("room.warm_up: water colder than the formulas silences itself, not the rest") {
  const auto cold = changed(some_room(), {{"room.heating.filled_at", "5 °C"}});
  const auto f = answered(td::warm_up_time, cold);
  CHECK(f.verdict == verdict::not_enough_known);
  CHECK_FALSE(f.note.empty());
  CHECK(answered(td::heater_choice, cold).verdict == answered(td::heater_choice, some_room()).verdict);
}

TEST_CASE("the heat store: water, stone and half of each sheet") {
  plan::build build = some_room();
  give(build, {{"room.heating.wall[2].label", "front"},
               {"room.heating.wall[2].area", "2 m2"},
               {"room.heating.wall[2].material", "glass"},
               {"room.heating.wall[2].thickness", "19 mm"}});
  const td::situation s{build};
  const room::tank_water sea{.temperature = celsius(25.0), .salinity = practical_salinity{35.0}};
  TW_CHECK(of_store, td::heat_store_of(s.room()).low.value(),
           room::heat_capacity_of(sea, litres(1940.0)).value() + 0.5 * 2500.0 * 840.0 * 2.0 * 0.019, relative(1e-12));
  td::system_state with_sand = s.state();
  with_sand.solids = estimate<volume>{litres(90.0), litres(100.0), litres(110.0), "sand"};
  const auto c = td::case_of(*build.room, with_sand);
  const double stone = td::heat_store_of(c).central.value() - td::heat_store_of(s.room()).central.value();
  // 100 L of calcite or quartz: 0.1 * 1.96 to 2.5 MJ/(m3 K).
  TW_HOLDS(of_store, stone > 0.1 * 1.96e6);
  TW_HOLDS(of_store, stone < 0.1 * 2.50e6);
}

TEST_CASE("room.outage: cools by its losses at first, and is judged by its coldest water") {
  const auto f = answered(td::heat_outage, some_room());
  // In the first minute the water falls by net heat / heat capacity; nothing moves and nothing is on.
  auto dark = heat_by_hand(winter_by_hand());
  for (auto& w : dark.surfaces) w.agitation = room::still_surface;
  const auto first = answered(td::heat_outage, some_room(), {{"room.heating.outage.lasts", "60 s"}});
  auto budget = room::heat_balance(dark);
  const power lost = budget.net.central - budget.make_up.central;  // nothing is topped off
  const room::tank_water sea{.temperature = celsius(25.0), .salinity = practical_salinity{35.0}};
  TW_CHECK(of_outage, 298.15 - band(first, "coldest").central,
           lost.value() * 60.0 / room::heat_capacity_of(sea, litres(2000.0)).value(), relative(2e-3));
  const amount cold = band(f, "coldest");
  const auto lowest = [](double kelvin) {
    return answered(td::heat_outage, changed(some_room(), {{"room.heating.outage.lowest", with_unit(kelvin, "K")}}));
  };
  CHECK(lowest(cold.low - 1.001).verdict == verdict::holds);
  CHECK(lowest(cold.low - 0.999).verdict == verdict::thin_margin);
  judged(lowest(cold.central + 0.001), verdict::does_not_hold, "left");
  CHECK(lowest(cold.central + 0.001).happens.find("The water falls to ") == 0);
  plan::build as_it_is = some_room();
  plan::clear(as_it_is, "room.heating.outage.room_settles_at");
  plan::clear(as_it_is, "room.heating.outage.room_time_constant");
  CHECK_FALSE(answered(td::heat_outage, as_it_is).measure_next.empty());
}

TEST_CASE("room.running: energy first in its own rows, money in its own; the return pump is not forgotten") {
  plan::build build = some_room();
  plan::clear(build, "room.heating");
  const auto f = answered(td::running_cost, build);
  const double joules = (150.0 + 0.4 * 200.0) * 86400.0;
  TW_CHECK(of_cost, band(f, "day", "winter").central, joules, relative(1e-12));
  TW_CHECK(of_cost, band(f, "day_cost", "summer").central, joules / 3.6e6 * 0.30, relative(1e-12));
  TW_CHECK(of_cost, band(f, "year_cost").central, joules / 3.6e6 * 0.30 * 365.25, relative(1e-12));
  CHECK(f.verdict == verdict::for_information);
  // Lights are on for 40 % of the day, also in the heat balance.
  auto t = heat_by_hand(winter_by_hand());
  t.sources = {{.label = "pump", .heat = watts(120.0)}, {.label = "lights", .heat = watts(24.0)}};
  TW_CHECK(of_cost, band(answered(td::running_cost, some_room()), "heating", "winter").central,
           room::heat_balance(t).net.central.value() * 86400.0, relative(1e-12));
  const auto pump = [](const char* label) {
    return changed(some_room(), {{"plumbing.lift", "1.45 m"},
                                 {"plumbing.overflow.surface", "2.40 m²"},
                                 {"plumbing.overflow.width", "0.80 m"},
                                 {"plumbing.overflow.crest_height", "0.80 m"},
                                 {"plumbing.pump.label", label},
                                 {"plumbing.pump.flows", "0 L/h, 15000 L/h"},
                                 {"plumbing.pump.heads", "4.6 m, 0.6 m"},
                                 {"plumbing.sump.rim", "450 mm"},
                                 {"plumbing.sump.running_level", "250 mm"},
                                 {"plumbing.sump.chamber[1].area", "0.3 m²"}});
  };
  const auto in_plan = [&](const char* label) {
    plan::build whole = pump(label);
    for (const char* twice : {"room.display.area", "room.sump.area", "room.top_off.chamber"}) plan::clear(whole, twice);
    return answered(td::running_cost, whole);
  };
  CHECK(in_plan("pump").verdict == verdict::for_information);
  const auto left_out = in_plan("return pump");
  CHECK(left_out.verdict == verdict::not_enough_known);
  CHECK(left_out.measure_next.front().find("label \"return pump\"") != std::string::npos);
}

TEST_CASE("room: questions of heat that cannot be answered say what they need") {
  plan::build no_winter = some_room();
  plan::clear(no_winter, "room.winter");
  for (const auto* d : {&td::heater_choice, &td::warm_up_time, &td::heat_outage}) {
    const auto f = answered(*d, no_winter);
    CHECK(f.verdict == verdict::not_enough_known);
    CHECK(f.measure_next.front().find("in winter") != std::string::npos);
  }
  plan::build no_water = some_room();
  plan::clear(no_water, "room.water_volume");
  for (const auto* d : {&td::warm_up_time, &td::heat_outage}) {
    CHECK(answered(*d, no_water).measure_next.front().find("volume of the water") != std::string::npos);
  }
  CHECK(answered(td::heater_choice, no_water).verdict != verdict::not_enough_known);
  plan::build no_heating = some_room();
  plan::clear(no_heating, "room.heating");
  for (const auto* d : {&td::heater_choice, &td::summer_cooling, &td::warm_up_time, &td::heat_outage}) {
    CHECK(asked(*d, no_heating).empty());
  }
}
