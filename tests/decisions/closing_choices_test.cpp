// SPDX-License-Identifier: BSL-1.0
#include <cmath>
#include <tankwright/decisions/closing/cable_gap.hpp>
#include <tankwright/decisions/closing/evaporation.hpp>
#include <tankwright/decisions/closing/heat_week.hpp>
#include <tankwright/decisions/closing/heater_time.hpp>
#include <tankwright/decisions/closing/humidity.hpp>
#include <tankwright/decisions/closing/lid_lift.hpp>
#include <tankwright/decisions/closing/light_heat.hpp>
#include <tankwright/decisions/closing/year_of_room.hpp>
#include <tankwright/decisions/running/consumables.hpp>
#include <tankwright/decisions/running/devices_of_the_year.hpp>
#include <tankwright/decisions/running/water_of_the_year.hpp>
#include <tankwright/plan/validate.hpp>
#include <tankwright/room/heat_balance.hpp>

#include "decisions/some_room.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
using decisions::verdict;

namespace {

evidence by_hand(const char* answer) { return {answer, kind::identity, "worked by hand"}; }
evidence wired(const char* answer) { return {answer, kind::property, "the same formula asked by hand"}; }

}  // namespace

TEST_CASE("lids: weight of a sheet against what one may lift at arm's length") {
  const evidence hand = by_hand("tankwright::decisions::answer_lid_lift");
  plan::build build = lagoon();  // 0.48 m by 8 mm of acrylic, 0.48 m by 6 mm of glass
  give(build, {{"vessel.lid[1].width", "1.2 m"},
               {"vessel.lid[1].above_feet", "1.25 m"},
               {"vessel.lid[2].width", "1.2 m"},
               {"vessel.lid[2].above_feet", "1.25 m"}});
  const auto f = answered(decisions::lid_lift, build);
  TW_CHECK(hand, number(f, "mass", "glass lid"), 0.48 * 1.2 * 0.006 * 2500.0, relative(1e-3));
  const double most = 23.0 * 0.5 * 0.85 * 1.0 * 0.9;
  TW_CHECK(hand, number(f, "most", "glass lid"), most, relative(1e-9));
  TW_CHECK(hand, number(f, "left", "glass lid"), most - number(f, "mass", "glass lid"), relative(1e-9));
  CHECK(f.verdict == verdict::thin_margin);  // 160 g less than one may
  const auto two = answered(decisions::lid_lift, build, {{"vessel.lid[2].lifted_by", "2"}});
  TW_CHECK(hand, number(two, "most", "glass lid"), most * 4.0 / 3.0, relative(1e-9));
  CHECK(two.verdict == verdict::holds);
  judged(answered(decisions::lid_lift, build, {{"vessel.lid[2].width", "1.6 m"}}), verdict::does_not_hold, "left",
         "glass lid");
  CHECK(asked(decisions::lid_lift, lagoon()).empty());
}

TEST_CASE("gaps: as much open water, and its share") {
  plan::build build = some_room();
  give(build, {{"room.display.gap", "0.24 m2"}, {"room.display.covered", "0 %"}});
  const auto f = answered(decisions::cable_gap, build);
  const auto all = answered(decisions::daily_evaporation, build);
  // A tenth of the open display is a tenth of what the display lets out; sump and weir let out more per area.
  const double part = number(f, "share", "display, winter");
  const evidence order{"tankwright::decisions::answer_cable_gap", kind::property,
                       "a tenth of the largest of three surfaces"};
  TW_HOLDS(order, (part > 0.04 && part < 0.1));
  const evidence hand = by_hand("tankwright::decisions::answer_cable_gap");
  TW_CHECK(hand, number(f, "gap", "display, winter"), part * number(all, "evaporation", "winter"), relative(1e-6));
  const auto none = answered(decisions::cable_gap, build, {{"room.display.gap", "0 m2"}});
  TW_CHECK(hand, number(none, "gap", "display, winter"), 0.0, within(0.0));
  CHECK(asked(decisions::cable_gap, some_room()).empty());
}

TEST_CASE("lights: watts in the mean of the day, and the swing they make") {
  const evidence hand = by_hand("tankwright::decisions::answer_light_heat");
  plan::build build = some_room();  // 200 W, 30 % into the water, on for 40 % of the day, over 2000 L
  give(build, {{"room.appliance[2].over_water", "true"}});
  const auto f = answered(decisions::light_heat, build);
  TW_CHECK(hand, number(f, "mean"), 24.0, relative(1e-9));
  TW_CHECK(hand, number(f, "share"), 24.0 / 144.0, relative(1e-9));
  // 24 W * 0.6 * 86400 s over 2000 L * 1023 kg/m3 * 4.0 kJ/(kg K).
  TW_CHECK(hand, number(f, "swing"), 24.0 * 0.6 * 86400.0 / (2.0 * 1023.3 * 3996.0), relative(0.01));
  CHECK(f.verdict == verdict::holds);
  judged(answered(decisions::light_heat, build, {{"room.appliance[2].power", "2000 W"}}), verdict::does_not_hold,
         "left");
  CHECK(asked(decisions::light_heat, some_room()).empty());
}

TEST_CASE("heater stuck: less time than its power alone would take is not possible") {
  const evidence hand = by_hand("tankwright::decisions::answer_heater_time");
  plan::build build = some_room();
  give(build, {{"room.heating.highest", "29 °C"}, {"room.heating.heater", "3000 W"}});
  const auto f = answered(decisions::heater_time, build);
  // 4 K of 2000 L are 32.7 MJ: with 3 kW three hours, and longer since it loses heat; the pump's and lights' 144 W come on top.
  const double alone = 4.0 * 2.0 * 1023.3 * 3996.0 / (3000.0 + 144.0);
  TW_HOLDS(hand, (number(f, "after") > alone * 0.97 && number(f, "after") < 2.0 * alone));
  judged(f, verdict::does_not_hold, "left");  // looked at every twelve hours
  CHECK(answered(decisions::heater_time, build, {{"room.heating.looked_every", "1 h"}}).verdict == verdict::holds);
  const auto small =
      answered(decisions::heater_time, build, {{"room.heating.heater", "20 W"}, {"room.heating.highest", "40 °C"}});
  CHECK(small.verdict == verdict::holds);
  CHECK(small.note.find("cannot cook") != std::string::npos);
  CHECK(asked(decisions::heater_time, some_room()).empty());
}

TEST_CASE("year: a year of equal months is a season, and a wet month is found") {
  plan::build build = some_room();
  give(build, {{"room.year.outdoors", "3 °C, 3 °C, 3 °C, 3 °C, 3 °C, 3 °C, 3 °C, 3 °C, 3 °C, 3 °C, 3 °C, 3 °C"},
               {"room.year.humidity", "85 %, 85 %, 85 %, 85 %, 85 %, 85 %, 85 %, 85 %, 85 %, 85 %, 85 %, 85 %"},
               {"room.year.indoors", "22 °C"}});
  const auto f = answered(decisions::year_of_room, build);
  const auto winter = answered(decisions::room_humidity, build);
  const auto day = answered(decisions::daily_evaporation, build);
  const evidence same = by_hand("tankwright::decisions::answer_year_of_room");
  TW_CHECK(same, number(f, "evaporation", "May"), number(day, "evaporation", "winter"), relative(1e-9));
  TW_CHECK(same, number(f, "wettest"), number(f, "driest"), relative(1e-9));
  (void)winter;
  plan::build wet = build;
  give(wet,
       {{"room.year.outdoors", "3 °C, 3 °C, 5 °C, 9 °C, 14 °C, 18 °C, 26 °C, 20 °C, 15 °C, 10 °C, 6 °C, 3 °C"},
        {"room.year.indoors", "22 °C, 22 °C, 22 °C, 22 °C, 22 °C, 24 °C, 26 °C, 24 °C, 22 °C, 22 °C, 22 °C, 22 °C"}});
  const auto g = answered(decisions::year_of_room, wet);
  CHECK(g.find("wettest")->label.find("July") != std::string::npos);
  judged(g, verdict::does_not_hold, "left");
  CHECK(answered(decisions::year_of_room, build, {{"room.highest_humidity", "99 %"}}).verdict == verdict::holds);
  plan::build short_of = build;
  give(short_of, {{"room.year.humidity", "85 %, 85 %"}});
  CHECK(!plan::validate(short_of).empty());
}

TEST_CASE("week of heat: the balance at the highest temperature, and the best of what may be done") {
  plan::build build = some_room();
  give(build, {{"room.heat_week.indoors", "31 °C"},
               {"room.heat_week.humidity", "60 %"},
               {"room.heat_week.highest", "28 °C"},
               {"room.heat_week.chiller", "600 W"},
               {"room.heat_week.fan", "2 m/s"},
               {"room.heat_week.night", "20 °C"}});
  const auto f = answered(decisions::heat_week, build);
  const evidence hand = by_hand("tankwright::decisions::answer_heat_week");
  TW_CHECK(hand, number(f, "chiller"), number(f, "nothing") + 600.0, relative(1e-9));
  TW_CHECK(hand, number(f, "left"),
           std::max({number(f, "nothing"), number(f, "fan"), number(f, "chiller"), number(f, "windows")}),
           relative(1e-12));
  TW_HOLDS(wired("tankwright::decisions::answer_heat_week"), number(f, "fan") > number(f, "nothing"));
  TW_HOLDS(wired("tankwright::decisions::answer_heat_week"), number(f, "windows") > number(f, "nothing"));
  CHECK(f.verdict == verdict::holds);
  plan::build hot = build;
  for (const char* key : {"room.heat_week.chiller", "room.heat_week.fan", "room.heat_week.night"})
    plan::clear(hot, key);
  give(hot,
       {{"room.heat_week.indoors", "34 °C"}, {"room.heat_week.humidity", "85 %"}, {"room.heat_week.highest", "27 °C"}});
  judged(answered(decisions::heat_week, hot), verdict::does_not_hold, "left");
  CHECK(asked(decisions::heat_week, some_room()).empty());
}

TEST_CASE("running year: water, devices and consumables") {
  plan::build build = some_room();
  give(build, {{"room.running.water_change", "10 %"},
               {"room.running.every", "14 d"},
               {"room.running.price_of_water", "5"},
               {"room.running.price_of_salt", "3"},
               {"room.running.recovery", "25 %"},
               {"room.running.consumable[1].label", "carbon"},
               {"room.running.consumable[1].price", "20"},
               {"room.running.consumable[1].every", "73.05 d"}});
  const auto w = answered(decisions::water_of_the_year, build);
  const evidence hand = by_hand("tankwright::decisions::answer_water_of_the_year");
  TW_CHECK(hand, number(w, "changed"), 0.1 * 2.0 * 365.25 / 14.0, relative(1e-9));
  // 35.165 g/kg of 1023.34 kg/m3 over a usual yield.
  const double mix = number(w, "changed") * 1023.343 * 35.16504e-3 / water::typical_mix_yield.central.value();
  TW_CHECK(hand, number(w, "mix"), mix, relative(1e-5));
  TW_CHECK(hand, number(w, "salt_cost"), 3.0 * mix, relative(1e-5));
  TW_CHECK(hand, number(w, "fed"), 4.0 * number(w, "purified"), relative(1e-9));
  TW_CHECK(hand, number(w, "water_cost"), 5.0 * number(w, "fed"), relative(1e-9));
  const auto all = answered(decisions::daily_evaporation, build);
  TW_CHECK(hand, number(w, "top_off"),
           0.5 * (number(all, "evaporation", "winter") + number(all, "evaporation", "summer")) * 86400.0 * 365.25,
           relative(0.005));  // a kilogram is a litre within that
  const auto c = answered(decisions::consumables, build);
  TW_CHECK(by_hand("tankwright::decisions::answer_consumables"), number(c, "all"), 100.0, relative(1e-9));
  const auto d = answered(decisions::devices_of_the_year, build);
  const evidence devices = by_hand("tankwright::decisions::answer_devices_of_the_year");
  TW_CHECK(devices, number(d, "year", "pump"), 150.0 * 8766.0 * 3600.0, relative(1e-9));
  TW_CHECK(devices, number(d, "cost", "lights"), 0.2 * 0.4 * 8766.0 * 0.30, relative(1e-9));
  const char* most = "pump";
  for (const char* label : {"lights", "heating"}) {
    if (number(d, "year", label) > number(d, "year", most)) most = label;
  }
  CHECK(d.note.find(std::string{"Most goes into "} + most) == 0);
}
