// SPDX-License-Identifier: BSL-1.0
// The air of the room: what evaporates, whether it stays dry, what would dry it, what its window and its wall do; and the
// case that all of them start from.
#include <tankwright/decisions/closing/drying.hpp>
#include <tankwright/decisions/closing/evaporation.hpp>
#include <tankwright/decisions/closing/humidity.hpp>
#include <tankwright/decisions/closing/wall.hpp>
#include <tankwright/decisions/closing/window.hpp>
#include <tankwright/decisions/figures/room_figures.hpp>

#include <algorithm>
#include <tankwright/room/condensation.hpp>
#include <tankwright/room/humidity_control.hpp>
#include <tankwright/water/density.hpp>

#include "decisions/some_room.hpp"
#include "support/check.hpp"

using namespace tankwright;
using namespace tankwright::testing;
namespace td = tankwright::decisions;
using td::verdict;

namespace {

const evidence of_loss{"tankwright::decisions::answer_daily_evaporation", kind::identity, "mass over density"};
const evidence of_humidity{"tankwright::decisions::answer_room_humidity", kind::identity, "the balance closes"};
const evidence of_drying{"tankwright::decisions::answer_drying_methods", kind::wiring, "the same calls by hand"};
const evidence of_window{"tankwright::decisions::answer_dripping_window", kind::identity,
                         "surface temperature t_i - U R_si (t_i - t_o), saturated there"};
const evidence of_wall{"tankwright::decisions::answer_outside_wall", kind::identity,
                       "surface temperature t_i - U R_si (t_i - t_o)"};
const evidence of_figures{"tankwright::decisions::figures_of", kind::property, "order and limits"};

}  // namespace

TEST_CASE("room.evaporation: what the settled air takes, as fresh water a day, with and without covers") {
  const auto f = answered(td::daily_evaporation, some_room());
  const auto winter = room::humidity_balance(winter_by_hand());
  const double fresh = water::density(practical_salinity{0.0}, celsius(20.0)).value();
  TW_CHECK(of_loss, band(f, "evaporation", "winter").central, winter.central.evaporation.value() / fresh,
           relative(1e-12));
  TW_CHECK(of_loss, band(f, "evaporation", "winter").high,
           std::max(winter.low.evaporation, winter.high.evaporation).value() / fresh, relative(1e-12));
  CHECK(band(f, "uncovered", "winter").central > band(f, "evaporation", "winter").central);
  CHECK(f.verdict == verdict::for_information);
  const auto open = answered(td::daily_evaporation, some_room(), {{"room.display.covered", "0 %"}});
  CHECK_FALSE(open.find("uncovered"));
}

TEST_CASE("room.humidity: the balance of moisture closes at the humidity that is told") {
  const auto f = answered(td::room_humidity, some_room());
  for (const char* season : {"winter", "summer"}) {
    const auto r = season == std::string_view{"winter"} ? winter_by_hand() : summer_by_hand();
    const auto b = room::humidity_balance(r).central;
    TW_CHECK(of_humidity, band(f, "humidity", season).central, b.air.humidity.get().value(), relative(1e-13));
    TW_CHECK(of_humidity, (b.evaporation + b.sources).value(), (b.ventilation + b.dehumidified + b.condensing).value(),
             relative(1e-8));
    TW_CHECK(of_humidity, band(f, "below", season).central, 0.6 - b.air.humidity.get().value(), within(1e-12));
  }
}

TEST_CASE("room.humidity: holds, is thin, does not hold, through the whole band of the wetter season") {
  const auto base = answered(td::room_humidity, some_room());
  const double wettest = std::max(band(base, "humidity", "winter").high, band(base, "humidity", "summer").high);
  const double likely = std::max(band(base, "humidity", "winter").central, band(base, "humidity", "summer").central);
  const auto at = [&](double h) {
    return answered(td::room_humidity, changed(some_room(), {{"room.highest_humidity", with_unit(100.0 * h, "%")}}));
  };
  CHECK(at(wettest + 0.0301).verdict == verdict::holds);
  CHECK(at(wettest + 0.0299).verdict == verdict::thin_margin);
  CHECK(at(likely + 0.001).verdict == verdict::thin_margin);
  const auto wet = at(likely);
  CHECK(wet.verdict == verdict::does_not_hold);  // a margin of zero
  CHECK(at(likely - 0.001).happens.find("The room settles at") == 0);
}

TEST_CASE("room.humidity and room.drying: one judgement of the room's dryness") {
  // A machine that holds its set point; one that is too small. Only room.humidity judges.
  const auto with = [](const char* litres_a_day) {
    return changed(some_room(), {{"room.dehumidifier.capacity", litres_a_day},
                                 {"room.dehumidifier.set_point", "55 %"},
                                 {"room.dehumidifier.power", "500 W"}});
  };
  const auto held = answered(td::room_humidity, with("60 L/d"));
  CHECK(held.verdict == verdict::holds);
  TW_CHECK(of_humidity, band(held, "humidity", "summer").central, 0.55, relative(1e-9));
  CHECK(band(held, "alone", "summer").central > 0.6);
  const auto small = answered(td::room_humidity, with("2 L/d"));
  CHECK(small.verdict == verdict::does_not_hold);
  for (const char* machine : {"60 L/d", "2 L/d"}) {
    const auto f = answered(td::drying_methods, with(machine));
    CHECK(f.verdict == verdict::for_information);
    CHECK(f.margin() == nullptr);
  }
  const auto limit = relative_humidity::from_percent(60.0);
  const auto f = answered(td::drying_methods, with("60 L/d"));
  TW_CHECK(of_drying, band(f, "spare", "summer").low,
           (60.0 - in_kilograms_per_day(room::dehumidifier_for(summer_by_hand(), limit).rated.high)) * 1e-3 / 86400.0,
           relative(1e-9));
  TW_CHECK(of_drying, band(f, "air_changes", "winter").central,
           room::ventilation_for(winter_by_hand(), limit).air_changes.central.value(), relative(1e-12));
  CHECK_FALSE(f.find("air_changes", "summer"));  // 24 degC and 70 % outdoors is no drier than the limit
  CHECK(f.note.find("In summer the outdoor air is no drier") != std::string::npos);
}

TEST_CASE("room.humidity: no cliff for the dehumidifier where its curve ends") {
  const auto at = [](const char* indoors) {
    const auto f = answered(td::room_humidity, changed(some_room(), {{"room.dehumidifier.capacity", "60 L/d"},
                                                                     {"room.dehumidifier.set_point", "55 %"},
                                                                     {"room.winter.indoors", indoors}}));
    return band(f, "humidity", "winter").central;
  };
  TW_CHECK((evidence{"tankwright::decisions::answer_room_humidity", kind::property, "no jump at 21 degC"}),
           at("20.999 °C"), at("21.001 °C"), within(1e-3));
  CHECK(at("17 °C") < 0.60);
}

TEST_CASE("room.window and room.wall: the humidity of the room against the one that wets a cold face") {
  // Inside face of the pane on the coldest night: 22 - 2.8 * 0.13 * (22 + 8) = 11.08 degC.
  const auto pane = answered(td::dripping_window, some_room());
  TW_CHECK(of_window, band(pane, "face").central, in_kelvins(celsius(22.0 - 2.8 * 0.13 * 30.0)), within(1e-9));
  const double ratio = room::saturation_pressure(celsius(22.0 - 2.8 * 0.13 * 30.0)).value() /
                       room::saturation_pressure(celsius(22.0)).value();
  TW_CHECK(of_window, band(pane, "highest").central, ratio, relative(1e-9));
  const auto wall = answered(td::outside_wall, some_room());
  TW_CHECK(of_wall, band(wall, "face").central, in_kelvins(celsius(22.0 - 0.6 * 0.25 * 19.0)), within(1e-9));
  // On both sides of the limit: better glass holds, a colder night does not.
  CHECK(answered(td::dripping_window, some_room(), {{"room.window.transmittance", "0.5 W/(m2 K)"}}).verdict ==
        verdict::holds);
  const auto drips = answered(td::dripping_window, some_room(), {{"room.winter.coldest_night", "-40 °C"}});
  judged(drips, verdict::does_not_hold, "below");
  CHECK_FALSE(drips.measure_next.empty());
  CHECK(answered(td::outside_wall, some_room(),
                 {{"room.wall.transmittance", "0.2 W/(m2 K)"}, {"room.air_changes", "2 1/h"}})
            .verdict == verdict::holds);
  judged(answered(td::outside_wall, some_room(), {{"room.wall.transmittance", "3 W/(m2 K)"}}), verdict::does_not_hold,
         "below");
}

TEST_CASE("room: what is missing is said; what is not asked is not answered") {
  plan::build bare;
  plan::set(bare, "room.volume", "60 m3");
  for (const auto* d : {&td::daily_evaporation, &td::room_humidity, &td::drying_methods}) {
    const auto f = answered(*d, bare);
    CHECK(f.verdict == verdict::not_enough_known);
    CHECK(f.measure_next.front().find("surface of the display") != std::string::npos);
    const auto no_season = answered(*d, bare, {{"room.display.area", "2 m2"}});
    CHECK(no_season.measure_next.front().find("in winter and in summer") != std::string::npos);
  }
  CHECK(asked(td::dripping_window, bare).empty());
  CHECK(asked(td::outside_wall, bare).empty());
  const auto window = answered(
      td::dripping_window, changed(bare, {{"room.window.transmittance", "2 W/(m2 K)"}, {"room.display.area", "2 m2"}}));
  CHECK(window.measure_next.front().find("in winter") != std::string::npos);
}

TEST_CASE("room: a season outside a formula's range silences itself alone") {
  // Evaporation was measured from 6 degC of air on; this winter's cellar has 5.
  const auto cellar = changed(some_room(), {{"room.winter.indoors", "5 °C"}});
  const auto f = answered(td::room_humidity, cellar);
  CHECK(f.verdict >= verdict::not_enough_known);
  CHECK(f.find("humidity", "summer"));
  CHECK_FALSE(f.find("humidity", "winter"));
  CHECK(std::any_of(f.measure_next.begin(), f.measure_next.end(),
                    [](const std::string& s) { return s.find("in winter: ") == 0; }));
  const auto window = answered(td::dripping_window, cellar);
  CHECK(window.verdict == verdict::not_enough_known);
  CHECK_FALSE(window.note.empty());
}

TEST_CASE("room: the figures belong to findings and end where the numbers say") {
  const auto build = some_room();
  const td::situation s{build};
  const auto figures = td::figures_of(s.room());
  REQUIRE(figures.size() == 2);
  for (const td::figure& f : figures) {
    for (const td::curve& c : f.curves) {
      CHECK(c.x.size() == c.y.size());
      CHECK(std::is_sorted(c.x.begin(), c.x.end()));
    }
  }
  CHECK(figures[0].id == "room.humidity");
  CHECK(figures[0].curves.size() == 5);  // two seasons, covers on and off, and the limit
  TW_CHECK(of_figures, figures[0].curves[0].y.front(), 0.60, relative(1e-12));
  CHECK(figures[1].id == "room.outage");
  REQUIRE(figures[1].curves[0].x.size() == 49);
  TW_CHECK(of_figures, figures[1].curves[0].y.front(), 298.15, relative(1e-14));
  TW_CHECK(of_figures, figures[1].curves[0].x[24], 12.0 * 3600.0, relative(1e-12));
  plan::build bare;
  plan::set(bare, "room.volume", "60 m3");
  const td::situation nothing{bare};
  CHECK(td::figures_of(nothing.room()).empty());
}
