// SPDX-License-Identifier: BSL-1.0
// Every rule of [room], with a plan that breaks it and one at its edge.
#include "plan/mistakes.hpp"

using namespace tankwright;
using namespace tankwright::testing;

namespace {

/// A room by its sides, with a season, a heated wall, an outage and a reservoir.
plan::build some_room() {
  plan::build build;
  give(build, {{"room.length", "6 m"},
               {"room.width", "4 m"},
               {"room.height", "2.6 m"},
               {"room.winter.indoors", "22 °C"},
               {"room.winter.outdoors", "3 °C"},
               {"room.winter.outdoor_humidity", "85 %"},
               {"room.winter.coldest_night", "-8 °C"},
               {"room.heating.wall[1].label", "sides"},
               {"room.heating.wall[1].area", "6 m2"},
               {"room.heating.wall[1].material", "plywood"},
               {"room.heating.wall[1].thickness", "27 mm"},
               {"room.heating.outage.lasts", "12 h"},
               {"room.heating.outage.lowest", "21 °C"},
               {"room.top_off.reservoir", "60 L"},
               {"room.top_off.lowest_salinity", "33"},
               {"room.top_off.highest_salinity", "36.5"},
               {"room.top_off.free_volume", "75 L"}});
  return build;
}

plan::build in_the_room() {
  plan::build build = lagoon();
  give_overflow(build);
  const plan::build room = some_room();
  build.room = room.room;
  return build;
}

}  // namespace

TEST_CASE("room rules: sound plans pass, alone and round a display") {
  accepted(some_room(), {});
  accepted(in_the_room(), {});
  accepted(some_room(), {{"room.display.area", "2.4 m2"}, {"room.sump.area", "0.6 m2"}});
}

TEST_CASE("room rules: a room has a volume or three sides, and holds its tanks") {
  plan::build build = some_room();
  plan::clear(build, "room.height");
  refused(build, {}, "room.length", "needs height beside it");
  refused(some_room(), {{"room.volume", "60 m3"}}, "room.length", "give one of them, not both", "room.volume");
  build = in_the_room();
  for (const char* side : {"room.length", "room.width", "room.height"}) plan::clear(build, side);
  accepted(build, {{"room.volume", "60 m3"}});
  refused(build, {{"room.volume", "2 m3"}}, "room.volume", "2 m³ does not hold its tanks, 2283 L", "vessel.height");
  refused(in_the_room(), {{"room.length", "1 m"}, {"room.width", "1 m"}}, "vessel.length",
          "of display, corner to corner, is more than the room, 1.41421 m", "room.length");
  refused(in_the_room(), {{"room.length", "20 m"}, {"room.width", "0.1 m"}}, "vessel.length",
          "2.4 m² of display is more than the floor of the room, 2 m²", "room.length");
  refused(in_the_room(), {{"room.height", "0.8 m"}}, "vessel.height", "0.85 m is higher than the room, 0.8 m",
          "room.height");
  refused(in_the_room(), {{"vessel.floor.footprint", "25 m2"}}, "vessel.floor.footprint",
          "25 m² is more than the floor of the room, 24 m²", "room.length");
  refused(in_the_room(), {{"plumbing.sump.rim", "4.5 m"}}, "plumbing.sump.rim", "4.5 m is higher than the room, 2.6 m",
          "room.height");
  refused(in_the_room(), {{"plumbing.sump.chamber[1].area", "30 m2"}}, "plumbing.sump.chamber",
          "of chambers is more than the floor of the room, 24 m²", "room.length");
  refused(in_the_room(), {{"plumbing.sump.baffle[1].width", "12.7 m"}}, "plumbing.sump.baffle[1].width",
          "12.7 m is wider than the room, 7.2111 m", "room.length");
}

TEST_CASE("room rules: what the display and the sump give is not given again") {
  refused(in_the_room(), {{"room.display.area", "2.4 m2"}}, "room.display.area", "is what vessel gives; leave it out",
          "vessel");
  plan::build build = in_the_room();
  build.vessel.reset();
  refused(build, {{"room.display.area", "2.4 m2"}}, "room.display.area", "is what plumbing.overflow.surface gives",
          "plumbing.overflow.surface");
  refused(build, {{"room.sump.area", "0.6 m2"}}, "room.sump.area", "is what plumbing.sump.chamber gives",
          "plumbing.sump.chamber");
}

TEST_CASE("room rules: the pump's chamber is the sump's last, and is described once") {
  const key_texts whole = {{"room.top_off.chamber.surface", "0.3 m2"},
                           {"room.top_off.chamber.running_level", "25 cm"},
                           {"room.top_off.chamber.lowest_level", "15 cm"}};
  accepted(some_room(), whole);
  accepted(in_the_room(), {{"room.top_off.chamber.lowest_level", "15 cm"}});
  accepted(in_the_room(), {{"room.top_off.chamber.lowest_level", "25 cm"}});
  refused(in_the_room(), whole, "room.top_off.chamber.running_level", "is that of the sump; leave it out",
          "plumbing.sump.running_level");
  refused(in_the_room(), whole, "room.top_off.chamber.surface", "is that of the sump; leave it out",
          "plumbing.sump.chamber");
  refused(some_room(), {{"room.top_off.chamber.lowest_level", "15 cm"}}, "room.top_off.chamber.running_level",
          "is missing: without [plumbing] nothing else gives it");
  refused(some_room(), {{"room.top_off.chamber.lowest_level", "15 cm"}}, "room.top_off.chamber.surface", "is missing");
  refused(in_the_room(), {{"room.top_off.chamber.lowest_level", "26 cm"}}, "room.top_off.chamber.lowest_level",
          "26 cm is above the running level, 250 mm", "plumbing.sump.running_level");
  refused(in_the_room(),
          {{"room.top_off.chamber.lowest_level", "15 mm"},
           {"plumbing.pump_inlet.above_floor", "20 mm"},
           {"plumbing.pump_inlet.bore", "80 mm"}},
          "room.top_off.chamber.lowest_level", "leaves the inlet of the pump in the air",
          "plumbing.pump_inlet.above_floor");
}

TEST_CASE("room rules: seasons, walls, outage") {
  refused(some_room(), {{"room.winter.coldest_night", "8 °C"}}, "room.winter.coldest_night",
          "is warmer than the mean of the season, 3 °C", "room.winter.outdoors");
  accepted(some_room(), {{"room.winter.coldest_night", "3 °C"}});
  refused(in_the_room(), {{"room.heating.wall[1].area", "59 m2"}}, "room.heating.wall[sides].area",
          "59 m² is more than all of the display, 10.58 m²", "vessel.length");
  refused(in_the_room(), {{"room.heating.wall[1].thickness", "9 m"}}, "room.heating.wall[sides].thickness",
          "of wall is more than the display", "vessel.length");
  refused(some_room(), {{"room.heating.wall[1].transmittance", "3 W/(m2 K)"}}, "room.heating.wall[sides].material",
          "give one of them, not both", "room.heating.wall[sides].transmittance");
  refused(some_room(), {{"water.temperature", "24 °C"}, {"room.heating.outage.lowest", "24 °C"}},
          "room.heating.outage.lowest", "24 °C is not below the water as it runs, 24 °C", "water.temperature");
  refused(some_room(), {{"room.water_temperature", "20 °C"}}, "room.heating.outage.lowest", "is not below the water",
          "room.water_temperature");
  refused(some_room(), {{"room.heating.outage.room_settles_at", "8 °C"}}, "room.heating.outage.room_settles_at",
          "needs room_time_constant beside it");
  refused(some_room(), {{"room.water_volume", "2 m3 +/- 100 %"}}, "room.water_volume",
          "has a doubt that leaves no water");
}

TEST_CASE("room rules: what the animals stand lies on both sides of the water") {
  refused(some_room(), {{"room.top_off.highest_salinity", "33"}}, "room.top_off.highest_salinity",
          "33 is not above lowest_salinity, 33", "room.top_off.lowest_salinity");
  refused(some_room(), {{"room.salinity", "32"}}, "room.top_off.lowest_salinity", "33 is above what the water has, 32",
          "room.salinity");
  refused(some_room(), {{"water.temperature", "24 °C"}, {"water.target", "37"}}, "room.top_off.highest_salinity",
          "36.5 is below what the water has, 37", "water.target");
  refused(some_room(),
          {{"water.temperature", "24 °C"},
           {"water.older_tank.hydrometer", "1.020"},
           {"water.older_tank.temperature", "25 °C"},
           {"water.older_tank.scale", "60F/60F"}},
          "room.top_off.lowest_salinity", "is above what the water has", "water.older_tank");
  plan::build build = some_room();
  plan::clear(build, "room.top_off.lowest_salinity");
  refused(build, {{"room.salinity", "20"}}, "room.top_off.lowest_salinity",
          "30, which is taken where nobody says otherwise, is above", "room.salinity");
  constexpr std::string_view says = "looks like a specific gravity";
  refused(some_room(), {{"room.salinity", "1.025"}}, "room.salinity", says);
  refused(some_room(), {{"room.top_off.lowest_salinity", "1.02"}}, "room.top_off.lowest_salinity", says);
  refused(some_room(), {{"room.top_off.highest_salinity", "1.03"}}, "room.top_off.highest_salinity", says);
  refused(in_the_room(), {{"room.top_off.free_volume", "75 m3"}}, "room.top_off.free_volume",
          "to run into is more than display and sump hold", "vessel.height");
}
