// SPDX-License-Identifier: BSL-1.0
// The day of closing the top, and what it costs to run: highest temperatures, rates, hottest days, the plan's pump.
#include <cmath>
#include <tankwright/decisions/closing/cooling.hpp>
#include <tankwright/decisions/closing/heater_sticks.hpp>
#include <tankwright/decisions/closing/outage.hpp>
#include <tankwright/decisions/closing/outage_rate.hpp>
#include <tankwright/decisions/closing/outage_warm.hpp>
#include <tankwright/decisions/closing/warm_up.hpp>
#include <tankwright/decisions/running/running_cost.hpp>
#include <tankwright/room/heat_balance.hpp>

#include "decisions/some_room.hpp"
#include "plan/basin.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace td = tankwright::decisions;
using td::verdict;

namespace {

const evidence sticks{"tankwright::decisions::answer_heater_sticks", kind::identity,
                      "the balance closes where it ends"};
const evidence warm{"tankwright::decisions::answer_outage_warm", kind::property, "between the water and its room"};
const evidence rate_of{"tankwright::decisions::answer_outage_rate", kind::identity, "difference of two courses"};
const evidence hot_air{"tankwright::decisions::hottest_air", kind::identity, "as much vapour: Magnus 1844"};
const evidence cost{"tankwright::decisions::answer_running_cost", kind::identity, "power times time times price"};

}  // namespace

TEST_CASE("a heater that sticks on: where it ends the losses are its power, and the animals' highest decides") {
  const auto f = answered(td::heater_sticks, some_room());
  CHECK(f.verdict == verdict::for_information);  // no highest temperature is given
  const auto ends = band(f, "settles");
  // Where it ends, heater and pump together are what the tank loses in the air of the summer.
  room::tank_heat t{
      .water = {.temperature = temperature::from_value(ends.central), .salinity = practical_salinity{35.0}},
      .air = room::humidity_balance(summer_by_hand()).central.air,
      .surfaces = summer_by_hand().surfaces};
  t.walls = {{.label = "sides", .area = square_metres(6.0), .transmittance = watts_per_square_metre_kelvin(3.0)}};
  t.sources = {{.label = "pump", .heat = watts(120.0)}, {.label = "heater", .heat = watts(900.0)}};
  const auto balance = room::heat_balance(t, extrapolate);
  TW_CHECK(sticks, (balance.net.central - balance.make_up.central).value(), 0.0, within(0.5));  // nothing is topped off
  const auto with = [](const std::string& highest) {
    return answered(td::heater_sticks, changed(some_room(), {{"room.heating.highest", highest}}));
  };
  const auto at = [&](double kelvin) { return with(with_unit(kelvin - 273.15, "°C")); };
  judged(at(ends.central - 0.1), verdict::does_not_hold, "left");
  judged(at(ends.high + 0.5), verdict::thin_margin, "left");
  judged(at(ends.high + 1.1), verdict::holds, "left");
  CHECK(at(ends.central - 2.0).find("reached_soonest") != nullptr);
  plan::build none = some_room();
  plan::clear(none, "room.heating.heater");
  CHECK(asked(td::heater_sticks, none).empty());
}

TEST_CASE(
    "a summer's day without power: warmer than the water, no warmer than the room, against the animals' highest") {
  CHECK(asked(td::outage_warm, some_room()).empty());
  const auto f = answered(
      td::outage_warm, some_room(),
      {{"room.heating.highest", "28 °C"}, {"room.summer.hottest_day", "34 °C"}, {"room.heating.outage.lasts", "48 h"}});
  const auto warmest = band(f, "warmest");
  TW_HOLDS(warm, warmest.low >= 298.15);
  TW_HOLDS(warm, warmest.high < 307.15);
  TW_CHECK(warm, band(f, "left").central, 301.15 - warmest.central, within(1e-9));
  CHECK((f.verdict == verdict::does_not_hold) == !(warmest.central < 301.15));
  const auto cooler = answered(td::outage_warm, some_room(), {{"room.heating.highest", "28 °C"}});
  TW_HOLDS(warm, band(cooler, "warmest").central <= warmest.central);
  CHECK(cooler.verdict == verdict::holds);
}

TEST_CASE("without power the rate counts too, not the lowest temperature alone") {
  const auto f = answered(td::outage_rate, some_room());
  CHECK(f.recommendation);
  const auto course = answered(td::heat_outage, some_room());
  // Twelve hours that only cool: within a day it changes by all of it.
  TW_CHECK(rate_of, band(f, "in_a_day", "a day").central, 298.15 - band(course, "coldest").central, relative(1e-3));
  TW_CHECK(rate_of, band(f, "left_of_a_day", "a day").central, 2.0 - band(f, "in_a_day", "a day").central,
           within(1e-9));
  TW_CHECK(rate_of, band(f, "left_of_an_hour", "an hour").central, 1.0 - band(f, "in_an_hour", "an hour").central,
           within(1e-9));
  const auto fast = answered(td::outage_rate, some_room(), {{"room.water_volume", "200 L"}});
  CHECK(fast.verdict == verdict::does_not_hold);
  CHECK(td::verdict_words(fast) == "past what is recommended");
  CHECK(answered(td::outage_rate, some_room(), {{"room.water_volume", "40000 L"}}).verdict == verdict::holds);
}

TEST_CASE("a chiller is sized on the hottest day, where it is given, with the vapour of the summer") {
  const auto mean = answered(td::summer_cooling, some_room());
  CHECK(mean.note.find("mean of the summer") != std::string::npos);
  const auto hot = answered(td::summer_cooling, some_room(), {{"room.summer.hottest_day", "33 °C"}});
  CHECK(band(hot, "needed").central > band(mean, "needed").central);
  CHECK(hot.note.find("mean of the summer") == std::string::npos);
  plan::build build = some_room();
  plan::set(build, "room.summer.hottest_day", "33 °C");
  const td::situation s{build};
  const auto& summer = s.room().solved(td::season::summer);
  const auto magnus = [](double t) { return 611.2 * std::exp(17.62 * t / (243.12 + t)); };
  const double before = summer.humidity.central.air.humidity.get().value();
  TW_CHECK(hot_air, td::hottest_air(summer).humidity.get().value(), before * magnus(26.0) / magnus(33.0),
           relative(2e-3));
}

TEST_CASE("the running cost takes the pump of the plan, unless an appliance stands for it") {
  plan::build build = some_room();
  const double before = band(answered(td::running_cost, build), "year_cost").central;
  plan::build with_pump = build;
  with_pump.plumbing = basin().plumbing;
  plan::set(with_pump, "plumbing.pump.label", "return pump");
  CHECK(answered(td::running_cost, with_pump).verdict == verdict::not_enough_known);
  plan::set(with_pump, "plumbing.pump.power", "100 W");
  const auto f = answered(td::running_cost, with_pump);
  CHECK(f.verdict == verdict::for_information);
  TW_CHECK(cost, band(f, "year_cost").central - before, 0.1 * 24.0 * 365.25 * 0.30, within(1e-6));
  plan::set(with_pump, "room.appliance[1].label", "return pump");  // 150 W as an appliance: counted once
  TW_CHECK(cost, band(answered(td::running_cost, with_pump), "year_cost").central, before, relative(1e-12));
}
