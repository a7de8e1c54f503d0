// SPDX-License-Identifier: BSL-1.0
// The reservoir of fresh water: how long it lasts, and its valve stuck shut or open.
#include <tankwright/decisions/closing/reservoir.hpp>
#include <tankwright/decisions/closing/top_off_fails.hpp>
#include <tankwright/decisions/closing/top_off_sticks.hpp>

#include <tankwright/water/density.hpp>

#include "decisions/some_room.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace td = tankwright::decisions;
using td::verdict;

namespace {

const evidence of_reservoir{"tankwright::decisions::answer_reservoir_time", kind::identity, "volume over flow"};
const evidence of_dry{"tankwright::decisions::answer_top_off_fails", kind::identity, "conservation of water and salt"};
const evidence of_stuck{"tankwright::decisions::answer_top_off_sticks", kind::identity, "conservation of salt"};

double density_of(double salinity, double celsius_) {
  return water::density(practical_salinity{salinity}, celsius(celsius_)).value();
}

td::finding with(const td::decision& d, const char* key, const std::string& text) {
  return answered(d, changed(some_room(), {{key, text}}));
}

}  // namespace

TEST_CASE("room.reservoir: its volume over what evaporates in the worse season; on both sides of the time away") {
  const auto f = answered(td::reservoir_time, some_room());
  TW_CHECK(of_reservoir, band(f, "lasts").low, 0.060 / band(f, "top_off").high, relative(1e-12));
  TW_CHECK(of_reservoir, band(f, "lasts").central, 0.060 / band(f, "top_off").central, relative(1e-12));
  const amount lasts = band(f, "lasts");
  const auto away = [](double s) { return with(td::reservoir_time, "room.top_off.unattended", with_unit(s, "s")); };
  CHECK(away(0.999 * lasts.low).verdict == verdict::holds);
  CHECK(away(1.001 * lasts.low).verdict == verdict::thin_margin);
  CHECK(away(0.999 * lasts.central).verdict == verdict::thin_margin);
  judged(away(1.001 * lasts.central), verdict::does_not_hold, "left");
}

TEST_CASE("room.dry: the pump's chamber falls, the salt stays") {
  const auto f = answered(td::top_off_fails, some_room());
  const amount rate = band(answered(td::reservoir_time, some_room()), "top_off");
  TW_CHECK(of_dry, band(f, "until_air").low, 0.3 * (0.26 - 0.15) / rate.high, relative(1e-12));
  // Salt is conserved: M0 S0 = (M0 - m) S, so the highest salinity 37 is reached when m = M0 (1 - 35/37).
  const double mass = density_of(35.0, 25.0) * 2.0 * (1.0 - 35.0 / 37.0);
  TW_CHECK(of_dry, band(f, "until_salty").central, mass / (rate.central * density_of(0.0, 25.0)), relative(1e-12));
  const double lost = rate.central * 3.0 * 86400.0 * density_of(0.0, 25.0);
  TW_CHECK(of_dry, band(f, "salinity").central, 35.0 / (1.0 - lost / (density_of(35.0, 25.0) * 2.0)), relative(1e-12));
  const auto away = [](double s) { return with(td::top_off_fails, "room.top_off.unattended", with_unit(s, "s")); };
  const amount air = band(f, "until_air");
  CHECK(away(0.999 * air.low).verdict == verdict::holds);
  CHECK(away(1.001 * air.low).verdict == verdict::thin_margin);
  judged(away(1.001 * air.central), verdict::does_not_hold, "air_left", "pump");
  CHECK(away(1.001 * air.central).happens.find("The return pump draws air") == 0);
  // Where the chamber is deep, the salinity decides, and its margin is a time too.
  plan::build deep = some_room();
  give(deep, {{"room.top_off.chamber.surface", "30 m2"}});
  const amount salty = band(answered(td::top_off_fails, deep), "until_salty");
  give(deep, {{"room.top_off.unattended", with_unit(1.001 * salty.central, "s")}});
  judged(answered(td::top_off_fails, deep), verdict::does_not_hold, "salt_left", "salinity");
  // Away for ever, the tank is dry.
  CHECK(away(5000.0 * 86400.0).note.find("dry before anybody looks") != std::string::npos);
}

TEST_CASE("room.stuck: the rim, and the salt") {
  const auto f = answered(td::top_off_sticks, some_room());
  const double mass = density_of(35.0, 25.0) * 2.0, in = density_of(0.0, 20.0) * 0.060;
  TW_CHECK(of_stuck, band(f, "salinity").central, 35.0 * mass / (mass + in), relative(1e-12));
  TW_CHECK(of_stuck, band(f, "largest_by_salt").central, mass * (35.0 / 33.0 - 1.0) / density_of(0.0, 20.0),
           relative(1e-12));
  const auto reservoir = [](double litre) {
    return with(td::top_off_sticks, "room.top_off.reservoir", with_unit(litre, "L"));
  };
  CHECK(reservoir(81.0).verdict == verdict::holds);
  CHECK(reservoir(89.0).verdict == verdict::thin_margin);
  judged(reservoir(90.0), verdict::does_not_hold, "rim_left", "rim");
  const auto spills = reservoir(91.0);
  judged(spills, verdict::does_not_hold, "rim_left", "rim");
  TW_CHECK(of_stuck, band(spills, "spilt").central, 1e-3, relative(1e-9));
  CHECK(spills.happens.find("run onto the floor") != std::string::npos);
  const auto fresh = answered(td::top_off_sticks, some_room(), {{"room.top_off.lowest_salinity", "34.9"}});
  judged(fresh, verdict::does_not_hold, "salt_left", "salinity");
}

TEST_CASE("room.stuck and room.dry: what is missing is said") {
  plan::build build = some_room();
  plan::clear(build, "room.top_off.free_volume");
  const auto f = answered(td::top_off_sticks, build);
  CHECK(f.verdict == verdict::not_enough_known);
  CHECK(f.find("salt_left"));  // what can be told is told
  build = some_room();
  plan::clear(build, "room.top_off.chamber");
  CHECK_FALSE(answered(td::top_off_fails, build).measure_next.empty());
  plan::clear(build, "room.water_volume");
  CHECK(answered(td::top_off_fails, build).verdict == verdict::not_enough_known);
  CHECK(answered(td::top_off_sticks, build).verdict == verdict::not_enough_known);
  // Water colder than the dew point: nothing to top off, and nothing that can run dry.
  plan::build cold = some_room();
  give(cold, {{"room.water_temperature", "10 °C"}, {"room.heating.outage.lowest", "5 °C"}});
  plan::clear(cold, "room.winter");
  CHECK(answered(td::reservoir_time, cold).verdict == verdict::not_enough_known);
  CHECK(asked(td::top_off_fails, cold).empty());
  plan::clear(build, "room.top_off");
  for (const auto* d : {&td::reservoir_time, &td::top_off_fails, &td::top_off_sticks}) CHECK(asked(*d, build).empty());
}

TEST_CASE("room.dry: with a sump the chamber is its last, at its running level") {
  plan::build build = some_room();
  for (const char* twice : {"room.display.area", "room.sump.area", "room.top_off.chamber"}) plan::clear(build, twice);
  give_overflow(build);
  give(build, {{"room.top_off.chamber.lowest_level", "15 cm"}});
  const auto f = answered(td::top_off_fails, build);
  const amount rate = band(answered(td::reservoir_time, build), "top_off");
  TW_CHECK(of_dry, band(f, "until_air").low, 0.30 * (0.25 - 0.15) / rate.high, relative(1e-12));
}
